import { describe, expect, test } from 'vitest';
import { smallBook, type Edits } from './small-house.js';

const ceiling = 'study/ceiling-board/ceiling';

function issue(number: number, date: string, open: readonly string[], more = ''): Edits {
  const digest = 'a'.repeat(64);
  const front = [
    'purpose: pricing',
    `date: ${date}`,
    `commit: ${'b'.repeat(40)}`,
    `digest: ${digest}`,
    `rooms: { study: ${digest} }`,
    `trades: { carpentry: ${digest} }`,
    ...(open.length === 0 ? [] : [`open: [${open.join(', ')}]`]),
    ...(more === '' ? [] : [more]),
  ];
  return { [`content/issues/00${number}.md`]: `---\n${front.join('\n')}\n---\n\nIssued.\n` };
}

const since = (edits: Edits) => smallBook(edits).selections.find(({ id }) => id === ceiling)?.openSince;

describe('a choice is open since', () => {
  test('no issue while none has it open', () => {
    expect(since({})).toBeUndefined();
    expect(since(issue(1, '2026-03-02', []))).toBeUndefined();
  });

  test('the first issue that has it open, without a break up to the last', () => {
    const [one, two] = [issue(1, '2026-03-02', [ceiling]), issue(2, '2026-04-01', [ceiling])];
    expect(since({ ...one, ...two })).toEqual({ issue: 1, date: '2026-03-02' });
    expect(since({ ...one, ...issue(2, '2026-04-01', []) })).toBeUndefined();
    const again = { ...one, ...issue(2, '2026-03-09', []), ...issue(3, '2026-04-01', [ceiling]) };
    expect(since(again)).toEqual({ issue: 3, date: '2026-04-01' });
  });

  test('whatever an issue says that was taken back', () => {
    const voided = issue(2, '2026-03-09', [], 'void: { on: 2026-03-10, by: The builder, why: Wrong day }');
    const all = { ...issue(1, '2026-03-02', [ceiling]), ...voided, ...issue(3, '2026-04-01', [ceiling]) };
    expect(since(all)).toEqual({ issue: 1, date: '2026-03-02' });
  });

  test('no issue once it is decided', () => {
    const study: Edits = {
      'content/rooms/study.md': [
        [
          '[pine-shiplap-1x8, fir-tg-1x6]\n',
          '[pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6\n    chosen-on: 2026-04-02\n',
        ],
      ],
    };
    expect(since({ ...study, ...issue(1, '2026-03-02', [ceiling]) })).toBeUndefined();
  });
});
