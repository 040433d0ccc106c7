import { describe, expect, it } from 'vitest';
import { readRecords } from '../../src/core/records/index.js';
import { told, withFiles } from './small-house.js';

/** Problems of a house with one more file. */
function toldOfFile(path: string, text: string): readonly string[] {
  return told(readRecords(withFiles({ [path]: text })));
}

const attic = 'content/rooms/attic.md';
const shape = 'a record begins with --- on its first line, YAML, and --- again';

describe('a file that is no record', () => {
  it.each([
    ['empty', '', `rooms/attic.md:1:1 file-empty the file is empty | ${shape}`],
    [
      'without front matter',
      '# Attic\n',
      `rooms/attic.md:1:1 front-matter-missing the file has no front matter | ${shape}`,
    ],
    [
      'a line of dashes',
      '----\nname: x\n---\n',
      `rooms/attic.md:1:1 front-matter-missing the file has no front matter | ${shape}`,
    ],
    [
      'binary',
      '---\nname: \0\n---\n',
      'rooms/attic.md:1:1 file-binary the file is not text | a record is Markdown in UTF-8',
    ],
    [
      'of five megabytes',
      `---\nname: x\n---\n${'x'.repeat(5_000_000)}`,
      'rooms/attic.md:1:1 file-too-large the file has 5.0 MB; a record has 1 MB at most | keep drawings and long papers outside content/',
    ],
    [
      'a program',
      '---js\n{ name: process.exit(7) }\n---\n',
      `rooms/attic.md:1:1 front-matter-language front matter is YAML here, not 'js' | write --- alone in place of ---js`,
    ],
    [
      'JSON',
      '---json\n{}\n---\n',
      `rooms/attic.md:1:1 front-matter-language front matter is YAML here, not 'json' | write --- alone in place of ---json`,
    ],
    [
      'unended',
      '---\nname: x\n',
      'rooms/attic.md:2:1 front-matter-open the front matter does not end | write --- on a line of its own after the last key',
    ],
    [
      'with words after the last dashes',
      '---\nname: x\n--- end\n',
      'rooms/attic.md:3:1 front-matter-open the front matter does not end | write --- on a line of its own after the last key',
    ],
    [
      'of nothing but a remark',
      '---\n# later\n---\n',
      'rooms/attic.md:1:1 front-matter-empty the front matter is empty | write at least a name',
    ],
    [
      'a list',
      '---\n- name\n---\n',
      'rooms/attic.md:2:1 front-matter-shape the front matter is a list or a single value | write keys and values, such as name: Great room',
    ],
    [
      'indented by tabs',
      '---\na:\n\tb: c\n---\n',
      'rooms/attic.md:3:1 yaml-tab a tab stands where YAML wants spaces | indent with two spaces',
    ],
    [
      'with a key twice',
      '---\na: 1\nb: 2\na: 3\n---\n',
      `rooms/attic.md:4:1 key-duplicate the key 'a' is written twice | keep one of the two`,
    ],
    [
      'with an open quote',
      '---\na: "x\n---\n',
      'rooms/attic.md:2:4 yaml-broken the YAML cannot be read: a text begins with " and never ends | close it with "',
    ],
    [
      'with a colour without quotes',
      '---\na: [#b98a5a]\n---\n',
      'rooms/attic.md:2:5 yaml-broken the YAML cannot be read: # begins a remark | a text that begins with # goes inside quotes, such as "#b98a5a"',
    ],
    [
      'of nothing but brackets',
      `---\na: ${'['.repeat(300_000)}\n---\n`,
      'rooms/attic.md:2:63 yaml-too-deep the YAML is nested too deeply to be read | close each [ and {; no record needs more than a few levels',
    ],
    [
      'of nothing but dashes',
      `---\n${'- '.repeat(100_000)}\n---\n`,
      'rooms/attic.md:2:1 yaml-too-deep the YAML is nested too deeply to be read | close each [ and {; no record needs more than a few levels',
    ],
  ])('%s', (_what, text, expected) => {
    expect(toldOfFile(attic, text)).toEqual([expected]);
  });

  it('has no anchors and no aliases', () => {
    expect(toldOfFile(attic, '---\na: &x [1]\nb: *x\n---\n')).toEqual([
      `rooms/attic.md:2:7 yaml-anchor '&x' is a YAML anchor, which records do without | write the value out in each place; a text that begins with & or * goes inside quotes`,
      `rooms/attic.md:3:4 yaml-anchor '*x' is a YAML anchor, which records do without | write the value out in each place; a text that begins with & or * goes inside quotes`,
    ]);
  });

  it('may come from any editor: a byte order mark and Windows line ends are read', () => {
    const text = withFiles({})
      .find(({ path }) => path === 'content/rooms/study.md')
      ?.text.replaceAll('\n', '\r\n');
    expect(toldOfFile('content/rooms/study.md', `\uFEFF${text ?? ''}`)).toEqual([]);
  });
});

describe('a file in the wrong place', () => {
  it.each([
    ['content/hous.md', `hous.md:1:1 file-unknown no record is named hous.md | did you mean 'house.md'?`],
    [
      'content/rooms/plan.jpg',
      `rooms/plan.jpg:1:1 file-unknown 'plan.jpg' is not a record | a record is a Markdown file: its name ends in .md`,
    ],
    [
      'content/rooms/Great Room.md',
      `rooms/Great Room.md:1:1 slug-form 'Great Room' is not a slug | name it great-room.md`,
    ],
    ['content/rooms/Café.md', `rooms/Café.md:1:1 slug-form 'Café' is not a slug | name it cafe.md`],
    [
      'content/options/board.md',
      `options/board.md:1:1 file-misplaced 'board.md' is in the wrong folder | options live in content/options/<category>/`,
    ],
    [
      'content/trades/a/b.md',
      `trades/a/b.md:1:1 file-misplaced 'b.md' is in the wrong folder | these records live in content/trades/ itself`,
    ],
  ])('%s', (path, expected) => {
    expect(toldOfFile(path, 'anything')).toEqual([expected]);
  });

  it('is told once for a wrong folder', () => {
    const files = withFiles({ 'content/room/a.md': 'x', 'content/room/b.md': 'x' });
    expect(told(readRecords(files))).toEqual([
      `room/a.md:1:1 folder-unknown content/ has no folder 'room' | did you mean 'rooms'?`,
    ]);
  });

  it('is a house without house.md', () => {
    expect(told(readRecords([]))).toEqual([
      'house.md:1:1 house-missing there is no content/house.md | a house folder holds content/house.md',
    ]);
  });

  it('does not make every reference to a broken record a problem', () => {
    const broken = toldOfFile('content/house.md', '---\nname: [\n---\n');
    expect(broken).toHaveLength(1);
    expect(broken[0]).toMatch(/^house\.md:2:\d+ yaml-broken /u);
    expect(toldOfFile('content/categories/ceiling-board.md', '')).toHaveLength(1);
    expect(toldOfFile('content/rooms/foyer.md', '')).toHaveLength(1);
  });
});
