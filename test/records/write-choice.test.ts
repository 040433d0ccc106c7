import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readFrontMatter, setKeys, writeChoices } from '../../src/core/records/index.js';

const choice = { path: ['selections', 1], option: 'fir', on: '2026-04-20', by: 'The owners' };

function room(selection: string): string {
  return `---\nname: Study # the small one\nselections:\n  - at: floor\n    category: floor\n${selection}---\n\nBody.\n`;
}

const dataOf = (text: string): unknown => readFrontMatter({ path: 'content/rooms/x.md', text }).value?.data;

describe('a choice is written down', () => {
  test('after what is considered, before what follows; remarks stay', () => {
    const before = room(
      '  - at: ceiling # boards\n    category: board\n    considering: [fir, pine] # both are here\n    # ask again\n    note: Across.\n',
    );
    const after = before.replace(
      'both are here\n',
      'both are here\n    chosen: fir\n    chosen-on: 2026-04-20\n    chosen-by: The owners\n',
    );
    expect(writeChoices(before, [choice])).toBe(after);
  });

  test('in place of another choice', () => {
    const before = room(
      '  - at: ceiling\n    category: board\n    chosen: pine # so far\n    chosen-by: Project manager\n    chosen-on: 2026-03-01\n',
    );
    const after = before
      .replace('pine # so', 'fir # so')
      .replace('Project manager', 'The owners')
      .replace('03-01', '04-20');
    expect(writeChoices(before, [choice])).toBe(after);
  });

  test('between braces, where the selection stands on one line', () => {
    const before = room('  - { at: ceiling, category: board, considering: [fir, pine], note: "Across, not along" }\n');
    const after = before.replace(
      'pine],',
      'pine], chosen: fir, chosen-on: 2026-04-20, chosen-by: "Owner, and owner" ,'.replace(' ,', ','),
    );
    const written = writeChoices(before, [{ ...choice, by: 'Owner, and owner' }]);
    expect(written).toBe(after);
    expect(dataOf(written)).toMatchObject({ selections: [{}, { 'chosen-by': 'Owner, and owner' }] });
  });

  test('after a list, a folded text, and with the line ends of the file', () => {
    const list = room(
      '  - at: ceiling\n    category: board\n    considering:\n      - fir\n      - pine\n    note: >-\n      Across\n      the short way.\n',
    );
    const after = list.replace(
      '- pine\n',
      '- pine\n    chosen: fir\n    chosen-on: 2026-04-20\n    chosen-by: The owners\n',
    );
    expect(writeChoices(list, [choice])).toBe(after);
    const windows = `\uFEFF${list.replaceAll('\n', '\r\n')}`;
    expect(writeChoices(windows, [choice])).toBe(`\uFEFF${after.replaceAll('\n', '\r\n')}`);
    const folded = setKeys(list, [{ in: ['selections', 1], values: { waste: '12 %' }, after: ['note'] }]);
    expect(folded).toBe(list.replace('the short way.\n', 'the short way.\n    waste: 12 %\n'));
  });

  test('with the slip that handed it over; the next choice without one takes it away', () => {
    const open = room('  - at: ceiling\n    category: board\n    note: Across.\n');
    const handed = writeChoices(open, [{ ...choice, slip: '4F2A-91C0-77BE' }]);
    expect(handed).toContain('    chosen-by: The owners\n    slip: 4F2A-91C0-77BE\n    note: Across.\n');
    expect(writeChoices(handed, [choice])).toBe(writeChoices(open, [choice]));
  });

  test('refuses a path that is no selection: a fault of the program', () => {
    expect(() => writeChoices(room(''), [choice])).toThrow('no map');
  });
});

describe('a choice is taken away', () => {
  const away = { ...choice, option: null };
  const chosen = '    chosen: fir\n    chosen-on: 2026-03-01\n    chosen-by: The owners\n    slip: 4F2A-91C0-77BE\n';

  test.each<[string, string, string]>([
    [
      'with its lines',
      `  - at: ceiling\n    category: board\n${chosen}    note: Across.\n`,
      '  - at: ceiling\n    category: board\n    note: Across.\n',
    ],
    [
      'at the end of a record',
      `  - at: ceiling\n    category: board\n${chosen}`,
      '  - at: ceiling\n    category: board\n',
    ],
    [
      'and its remarks stay',
      '  - at: ceiling\n    category: board\n    chosen: fir   # hook 7\n    # as they saw it\n    chosen-on: 2026-03-01\n    note: Across.\n',
      '  - at: ceiling\n    category: board\n    # hook 7\n    # as they saw it\n    note: Across.\n',
    ],
    [
      'where it is the first that is said',
      '  - chosen: fir\n    chosen-on: 2026-03-01\n    at: ceiling\n    category: board\n',
      '  - at: ceiling\n    category: board\n',
    ],
    [
      'where a remark is behind the first that is said',
      '  - chosen: fir # hook 7\n    at: ceiling\n    category: board\n',
      '  - # hook 7\n    at: ceiling\n    category: board\n',
    ],
    [
      'between braces',
      '  - { at: ceiling, chosen: fir, chosen-on: 2026-03-01, category: board, slip: 4F2A-91C0-77BE }\n',
      '  - { at: ceiling, category: board }\n',
    ],
    [
      'between braces from the beginning',
      '  - { chosen: fir, chosen-by: The owners, at: ceiling, category: board }\n',
      '  - { at: ceiling, category: board }\n',
    ],
    ['that was never made', '  - at: ceiling\n    category: board\n', '  - at: ceiling\n    category: board\n'],
  ])('%s', (_, before, after) => {
    expect(writeChoices(room(before), [away])).toBe(room(after));
    const windows = (text: string): string => room(text).replaceAll('\n', '\r\n');
    expect(writeChoices(windows(before), [away])).toBe(windows(after));
  });
});

test('a choice for each selection of the demo is written in lines of its own, and reads as meant', () => {
  const folder = join(import.meta.dirname, '..', '..', 'content', 'rooms');
  let written = 0;
  for (const file of readdirSync(folder)) {
    const text = readFileSync(join(folder, file), 'utf8');
    const data = dataOf(text) as { readonly selections?: readonly Readonly<Record<string, unknown>>[] };
    // Nothing is selected in a garage.
    if (!data.selections) continue;
    const all = data.selections.map((_, index) => ({ ...choice, path: ['selections', index] }));
    const open = all.filter((_, index) => data.selections?.[index]?.['chosen'] === undefined);
    const away = open.map((one) => ({ ...one, option: null }));
    expect(writeChoices(writeChoices(text, open), away), file).toBe(text);
    const after = writeChoices(text, all);
    const chosen = { chosen: 'fir', 'chosen-on': '2026-04-20', 'chosen-by': 'The owners' };
    const selections = data.selections.map((one) => ({ ...one, ...chosen }));
    expect(dataOf(after), file).toEqual({ ...data, selections });
    // Each line that was there is there, but those of a choice that gave way.
    const kept = after.split('\n');
    const gone = text.split('\n').filter((line) => !kept.includes(line));
    expect(
      gone.filter((line) => !/chosen(-on|-by)?: /u.test(line)),
      file,
    ).toEqual([]);
    written += all.length;
  }
  expect(written).toBeGreaterThan(200);
});
