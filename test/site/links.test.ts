import { describe, expect, test } from 'vitest';
import { checkPath, relativeLink } from '../../src/site/page.js';
import { choicePaths, recordPath, selectionAnchor, selectionPath } from '../../src/site/paths.js';

describe('relativeLink', () => {
  test.each([
    ['index.html', 'rooms/study.html', 'rooms/study.html'],
    ['rooms/study.html', 'index.html', '../index.html'],
    ['rooms/study.html', 'rooms/loft.html', 'loft.html'],
    ['options/wood-floor/oak.html', 'rooms/study.html#choice-a', '../../rooms/study.html#choice-a'],
    ['options/wood-floor/oak.html', 'options/tile/slate.html', '../tile/slate.html'],
    ['records/options/tile/slate.html', 'assets/type.css', '../../../assets/type.css'],
    ['rooms/study.html', '#L3', '#L3'],
    ['rooms/study.html', 'rooms/study.html', 'study.html'],
  ])('from %s to %s is %s', (from, to, link) => {
    expect(relativeLink(from, to)).toBe(link);
  });
});

describe('checkPath', () => {
  test.each([
    '../x.html',
    '/x.html',
    'a//b.html',
    'a/../b.html',
    'a.b.html',
    'A.html',
    'a b.html',
    'a.exe',
    '-a.html',
    '',
  ])('refuses %j', (path) => {
    expect(() => checkPath(path)).toThrow(/not a safe path/);
  });

  test('lets pages of slugs through', () => {
    expect(checkPath('records/options/wood-floor/white-oak-5.html')).toBe(
      'records/options/wood-floor/white-oak-5.html',
    );
  });
});

describe('paths', () => {
  test('a record is shown under records, with an anchor for its line', () => {
    expect(recordPath('content/rooms/study.md', 14)).toBe('records/rooms/study.html#L14');
  });

  test('each choice has a page of its own, whatever its mark', () => {
    const ids = ['a/door/D1', 'a/door/d1', 'a/door/D.1', 'a/hearth/breast.hearth', 'a/floor/floor'];
    const paths = [...choicePaths(ids.map((id) => ({ id }))).values()];
    expect(paths).toEqual([
      'choices/a/door/d1.html',
      'choices/a/door/d1-2.html',
      'choices/a/door/d-1.html',
      'choices/a/hearth/breast-hearth.html',
      'choices/a/floor/floor.html',
    ]);
    for (const path of paths) expect(checkPath(path)).toBe(path);
  });

  test("a selection is an anchor on its room's page; a feature's face keeps its anchor valid", () => {
    const selection = { room: 'great-room', id: 'great-room/stone/breast/front' };
    expect(selectionAnchor(selection)).toBe('choice-stone_breast_front');
    expect(selectionPath(selection)).toBe('rooms/great-room.html#choice-stone_breast_front');
  });
});
