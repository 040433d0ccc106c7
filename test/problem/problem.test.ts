import { describe, expect, it } from 'vitest';
import {
  byCause,
  didYouMean,
  namedAs,
  nearest,
  printProblems,
  problemAt,
  problemIn,
  sortProblems,
  type Origin,
  type Problem,
} from '../../src/base/problem/index.js';

const text = ['---', 'name: Study', '    chosen: pine-shiplp-1x8', '---', ''].join('\n');
const origin: Origin = {
  file: 'content/rooms/study.md',
  text,
  at: () => ({ line: 3, column: 13 }),
  key: () => ({ line: 3, column: 5 }),
};
const slip = problemAt(origin, ['chosen'], 'option-unknown', `ceiling has no option 'pine-shiplp-1x8'`, {
  fix: `did you mean 'pine-shiplap-1x8'? Options live in content/options/ceiling-board/`,
});

describe('printProblems', () => {
  it('says where and what, shows the line, and says what to do', () => {
    expect(printProblems([slip])).toBe(
      [
        `content/rooms/study.md:3:13  option-unknown  error: ceiling has no option 'pine-shiplp-1x8'`,
        `    3 |     chosen: pine-shiplp-1x8`,
        `      |             ^ did you mean 'pine-shiplap-1x8'? Options live in content/options/ceiling-board/`,
        ``,
        `1 error in 1 file. Nothing was written.`,
        ``,
      ].join('\n'),
    );
  });

  it('says in words how grave each is, as colour adds nothing to them', () => {
    const severities = ['error', 'warning', 'notice'] as const;
    for (const severity of severities) {
      const graded: Problem = { ...slip, severity };
      expect(printProblems([graded])).toContain(`option-unknown  ${severity}: ceiling has no option`);
      expect(printProblems([graded], { color: true }).replace(/\u001b\[\d+m/gu, '')).toBe(printProblems([graded]));
    }
  });

  it('counts errors, warnings and files', () => {
    const warning: Problem = { ...slip, file: 'content/house.md', severity: 'warning' };
    expect(printProblems([slip, warning])).toMatch(/\n1 error and 1 warning in 2 files\. Nothing was written\.\n$/u);
    expect(printProblems([warning])).toMatch(/\n1 warning in 1 file\.\n$/u);
    expect(printProblems([warning])).toContain('option-unknown  warning: ceiling');
    expect(printProblems([slip], { outcome: 'The old book stands.' })).toMatch(/ The old book stands\.\n$/u);
    expect(printProblems([])).toBe('');
  });

  it('tells many of one cause by the first and the places of the others', () => {
    const at = (line: number): Problem => ({
      ...slip,
      cause: 'pine',
      at: { line, column: 13 },
      message: `line ${line}`,
    });
    const many = [1, 2, 3, 4, 5, 6, 7, 8].map(at);
    const printed = printProblems([...many, { ...slip, file: 'content/rooms/zoo.md' }]);
    expect(printed.match(/option-unknown/gu)).toHaveLength(2);
    expect(printed).toContain(
      '\n      | the same in 7 more places: content/rooms/study.md:2:13, content/rooms/study.md:3:13, ' +
        'content/rooms/study.md:4:13, content/rooms/study.md:5:13, content/rooms/study.md:6:13 and 2 more\n',
    );
    expect(printed).toContain('9 errors in 2 files.');
    expect(byCause(many)).toHaveLength(1);
    expect(byCause(many.slice(0, 2))).toHaveLength(2);
    expect(byCause(many.map(({ cause: _cause, ...one }) => one))).toHaveLength(8);
    expect(byCause([at(1), { ...at(2), severity: 'warning' }, at(3), at(4)])).toHaveLength(2);
  });

  it('tells the first hundred of one kind, and how many more there are', () => {
    const wrong = Array.from({ length: 10_000 }, (_, index) => ({
      ...slip,
      file: `content/rooms/room-${index}.md`,
      message: `room ${index}`,
    }));
    const other: Problem = { ...slip, code: 'list-short', file: 'content/rooms/zoo.md' };
    const printed = printProblems([...wrong, other]);
    expect(printed.match(/error: room /gu)).toHaveLength(100);
    expect(printed).toContain('list-short');
    expect(printed.split('\n\n').slice(-2)).toEqual([
      'and 9,900 more of option-unknown: bookmatch check --json has all of them',
      '10001 errors in 10001 files. Nothing was written.\n',
    ]);
    expect(printProblems(wrong.slice(0, 100))).not.toContain('more of');
  });

  it('colours only when asked', () => {
    expect(printProblems([slip])).not.toContain('\u001b');
    expect(printProblems([slip], { color: true })).toContain('\u001b[31moption-unknown\u001b[39m');
  });

  it('lets no control character of a record through to the terminal', () => {
    const evil = problemIn(
      { file: 'a.md', text: 'x\u001b[2Jy\tz\u202e' },
      { line: 1, column: 3 },
      'file-empty',
      'm\u0007',
      {
        fix: 'f\u009b',
      },
    );
    const printed = printProblems([evil]);
    expect(printed).toContain('x�[2Jy z�');
    expect([...printed].filter((sign) => sign !== '\n' && /[\u0000-\u001f\u007f-\u009f\u202e]/u.test(sign))).toEqual(
      [],
    );
  });

  it('shows the part of a long line that it speaks of, the caret under it', () => {
    const long = problemIn(
      { file: 'a.md', text: `${'x'.repeat(500)}HERE${'y'.repeat(500)}` },
      { line: 1, column: 501 },
      'file-empty',
      'm',
    );
    const [, line = '', caret = ''] = printProblems([long]).split('\n');
    expect(line.length).toBeLessThan(180);
    expect(line.slice(caret.indexOf('^'), caret.indexOf('^') + 4)).toBe('HERE');
  });
});

describe('problemAt', () => {
  it('takes the line without its line end, and points at the key when asked', () => {
    expect(problemIn({ file: 'a.md', text: 'a\r\nb\r\n' }, { line: 2, column: 1 }, 'file-empty', 'm').excerpt).toBe(
      'b',
    );
    expect(problemAt(origin, [], 'file-empty', 'm', { onKey: true }).at).toEqual({ line: 3, column: 5 });
    expect(problemIn({ file: 'a.md', text: 'a' }, { line: 9, column: 1 }, 'file-empty', 'm').excerpt).toBeUndefined();
  });
});

describe('sortProblems', () => {
  it('goes by file, line and column, and says each thing once', () => {
    const at = (file: string, line: number, column: number): Problem =>
      problemIn({ file, text: 'x\n'.repeat(20) }, { line, column }, 'file-empty', 'm');
    const mixed = [at('b.md', 1, 1), at('a.md', 10, 1), at('a.md', 9, 2), at('a.md', 9, 1), at('b.md', 1, 1)];
    expect(sortProblems(mixed).map(({ file, at: { line, column } }) => `${file}:${line}:${column}`)).toEqual([
      'a.md:9:1',
      'a.md:9:2',
      'a.md:10:1',
      'b.md:1:1',
    ]);
  });
});

describe('nearest', () => {
  it('guesses only when near', () => {
    expect(nearest('pine-shiplp-1x8', ['fir-tg-1x6', 'pine-shiplap-1x8'])).toBe('pine-shiplap-1x8');
    expect(nearest('gabel', ['flat', 'gable', 'hip'])).toBe('gable');
    expect(nearest('North', ['north', 'south'])).toBe('north');
    expect(nearest('dome', ['flat', 'gable', 'hip', 'shed'])).toBeUndefined();
    expect(nearest('oak', ['ash', 'elm'])).toBeUndefined();
    expect(nearest('x', ['y'])).toBeUndefined();
    expect(didYouMean('nort', ['north'])).toBe(`did you mean 'north'?`);
  });
});

describe('namedAs', () => {
  const records = [
    { slug: 'pine-shiplap-1x8', name: 'Pine shiplap, 1 x 8' },
    { slug: 'fir-tg-1x6', name: 'Fir tongue and groove' },
    { slug: 'great-room', name: 'Café hall' },
  ];

  it.each([
    ['Pine shiplap, 1 x 8', 'pine-shiplap-1x8'],
    ['pine SHIPLAP 1x8', 'pine-shiplap-1x8'],
    ['Pine_Shiplap_1x8.md', 'pine-shiplap-1x8'],
    ['ceiling-board/fir-tg-1x6', 'fir-tg-1x6'],
    ['Fir tounge and groove', 'fir-tg-1x6'],
    ['fir-tongue-and-groove', 'fir-tg-1x6'],
    ['cafe hall', 'great-room'],
  ])('%j is %s', (text, slug) => {
    expect(namedAs(text, records)?.slug).toBe(slug);
  });

  it.each(['Oak', '', '…'])('%j is none', (text) => {
    expect(namedAs(text, records)).toBeUndefined();
  });
});
