import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import { smallBook } from './small-house.js';

const study = 'content/rooms/study.md';
const ceiling = `ceiling: flat 9'-0"`;

/** The small house's study, 10' × 12', walked round, with something said of one of its walls or of its floor. */
function studyWith(north: string, more = ''): Book {
  const walls = [
    `walls:`,
    `  - { name: north, go: east, run: 10'-0"${north} }`,
    `  - { name: east, go: south, run: 12'-0" }`,
    `  - { name: south, go: west, run: 10'-0" }`,
    `  - { name: west, go: north, run: 12'-0" }`,
  ].join('\n');
  return smallBook({
    [study]: [
      [`size: 10'-0" x 12'-0"`, walls],
      [ceiling, `${ceiling}\n${more}`],
    ],
  });
}

/** Net of a selection's options, which all cover the same. */
const net = (book: Book, id: string): number => {
  const [first] = book.selections.find((one) => one.id === id)?.alternatives ?? [];
  return first?.takeoff.reduce((sum, takeoff) => sum + takeoff.net, 0) ?? 0;
};

describe('as recorded, a room that is no box', () => {
  test('has the floor and the ceiling that an arc adds', () => {
    const book = studyWith(`, arc: { bows: out, rise: 1'-0" }`);
    // r = 100 / 8 + 1 / 2 = 13, half angle asin (5 / 13), segment 169 × (asin (5 / 13) − 60 / 169).
    const segment = 169 * Math.asin(5 / 13) - 60;
    expect(net(book, 'study/floor/floor')).toBeCloseTo(120 + segment, 5);
    expect(net(book, 'study/ceiling-board/ceiling')).toBeCloseTo(120 + segment, 5);
  });

  test('has less ceiling and all of its floor under a wall that leans', () => {
    const book = studyWith(`, leans: { by: 2'-0", at: 9'-0" }`);
    expect(net(book, 'study/floor/floor')).toBeCloseTo(120, 9);
    expect(net(book, 'study/ceiling-board/ceiling')).toBeCloseTo(100, 9);
  });

  test('has a longer floor up a ramp', () => {
    const floor = [
      'floor:',
      `  - name: Ramp`,
      `    over: { x: 0", y: 6'-0", width: 10'-0", depth: 6'-0" }`,
      `    height: 0"`,
      '    ramp: { low: south, pitch: 1/12 }',
    ].join('\n');
    const book = studyWith('', floor);
    expect(net(book, 'study/floor/floor')).toBeCloseTo(60 + 60 * Math.hypot(1, 1 / 12), 6);
  });
});
