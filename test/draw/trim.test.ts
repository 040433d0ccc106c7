import { describe, expect, it } from 'vitest';
import type { SeenFinish } from '../../src/core/book/index.js';
import type { OwnOpening, RoomMeasure } from '../../src/core/model/index.js';
import type { SvgNode } from '../../src/base/svg/index.js';
import { drawElevation, printPalette } from '../../src/draw/index.js';
import { dashes, pens } from '../../src/draw/pen.js';
import { base, seenTrim } from './every-drawing.js';
import { ft, measured, size } from './fixtures.js';
import { nodesOf, pathCorners } from './reading.js';

/** A door 3' by 7', four feet from the left of a wall of sixteen feet, and what is asked for in its place. */
const room = (more: Partial<OwnOpening> = {}): RoomMeasure =>
  measured({
    slug: 'hall',
    shape: size(16, 12),
    ceiling: { form: 'flat', height: ft(9) } as never,
    openings: [{ mark: 'X1', wall: 'south', at: ft(4), ...more }],
  });

interface Drawn {
  readonly nodes: readonly SvgNode[];
  /** Points for an inch of the house. */
  readonly inch: number;
}

function south(measure: RoomMeasure, seen: readonly SeenFinish[] = []): Drawn {
  const wall = measure.walls.find(({ id }) => id === 'south')!;
  const { svg, ratio } = drawElevation(measure, wall, { ...base, id: 'wall', seen });
  return { nodes: nodesOf(svg), inch: 72 / ratio };
}

/** Boxes in inches from the wall's lower left corner, of lines and figures of one look. */
function boxes({ nodes, inch }: Drawn, look: Partial<Record<string, string | number>>) {
  return nodes
    .filter(
      ({ name, attributes }) =>
        name === 'path' && Object.entries(look).every(([key, value]) => attributes[key] === value),
    )
    .map(({ attributes }) => {
      const corners = pathCorners(String(attributes['d'])).map(([x, y]) => [x / inch, -y / inch] as const);
      const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
      return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].map(
        (one) => Math.round(one * 10) / 10 + 0,
      );
    });
}

const hairline = { stroke: printPalette.ink, 'stroke-width': pens.hair };
const casings = (drawn: Drawn) => boxes(drawn, { ...hairline, fill: printPalette.paper });

describe('casing', () => {
  it('is as wide as the record of the chosen option says', () => {
    // The door stands from 48" to 84", 84" high.
    expect(casings(south(room(), [seenTrim('trim', ['X1'], 4.5, 'flat')]))).toEqual([[43.5, 0, 88.5, 88.5]]);
    expect(casings(south(room(), [seenTrim('trim', ['X1'], 2.5, 'flat')]))).toEqual([[45.5, 0, 86.5, 86.5]]);
  });

  it('is none where the option has no width, as a return of board, where no trim is asked for, and around a plain opening', () => {
    expect(casings(south(room(), [seenTrim('trim', ['X1'], undefined, 'return')]))).toEqual([]);
    expect(casings(south(room()))).toEqual([]);
    expect(casings(south(room({ kind: 'open' }), [seenTrim('trim', ['X1'], 4.5, 'flat')]))).toEqual([]);
  });

  it('is dashed while nobody chose it', () => {
    const open = south(room(), [seenTrim('trim', ['X1'])]);
    expect(boxes(open, { ...hairline, 'stroke-dasharray': dashes.fine })).toEqual([[44.5, 0, 87.5, 87.5]]);
    const chosen = south(room(), [seenTrim('trim', ['X1'], 3.5, 'flat')]);
    expect(boxes(chosen, { ...hairline, 'stroke-dasharray': dashes.fine })).toEqual([]);
  });
});

describe('the joint of a casing', () => {
  const cased = (joint: SeenFinish['joint'], more: Partial<OwnOpening> = {}) =>
    south(room(more), [{ ...seenTrim('trim', ['X1'], 4, 'flat'), ...(joint && { joint }) }]);
  // As wide as the casing, and as fine: a sash is wider.
  const joints = (drawn: Drawn) =>
    boxes(drawn, { ...hairline, fill: 'none' }).filter(([left = 0, , right = 0]) => right - left === 4);

  it('runs from the opening to the casing’s corner where it is mitered', () => {
    expect(joints(cased('mitered'))).toEqual([
      [44, 84, 48, 88],
      [84, 84, 88, 88],
    ]);
  });

  it('lies on the legs where the head does', () => {
    expect(joints(cased('head over legs'))).toEqual([
      [44, 84, 48, 84],
      [84, 84, 88, 84],
    ]);
  });

  it('is at all four corners of a window that is mitered', () => {
    const window = { kind: 'window', sill: ft(3), to: 'outside', height: ft(4) } as const;
    expect(joints(cased('mitered', window))).toHaveLength(4);
    expect(joints(cased('head over legs', window))).toHaveLength(2);
  });

  it('is not drawn where nobody recorded it, where the casing has no such corner, and around a curve', () => {
    expect(joints(cased(undefined))).toEqual([]);
    expect(joints(cased('mitered', { at: ft(0) }))).toEqual([]);
    expect(joints(cased('mitered', { shape: { is: 'arch', rise: ft(1) } as never }))).toEqual([]);
  });
});

describe('a base', () => {
  const bases = (drawn: Drawn) => boxes(drawn, { ...hairline, fill: 'none' }).filter(([, , , top]) => top === 6);
  const base6 = seenTrim('base', ['south'], 6, 'flat');

  it('runs along the foot of its wall as high as its record says, and stops at casings', () => {
    expect(bases(south(room(), [base6, seenTrim('trim', ['X1'], 4.5, 'flat')]))).toEqual([
      [0, 0, 43.5, 6],
      [88.5, 0, 192, 6],
    ]);
  });

  it('runs on under a window, and is none where it is not chosen', () => {
    const window = { kind: 'window', sill: ft(3), to: 'outside', height: ft(4) } as const;
    expect(bases(south(room(window), [base6]))).toEqual([[0, 0, 192, 6]]);
    expect(bases(south(room(window)))).toEqual([]);
  });
});

describe('glass', () => {
  const window = {
    kind: 'window',
    sill: ft(2),
    to: 'outside',
    width: ft(10),
    height: ft(5),
    operation: 'fixed',
  } as const;
  // Bars are fine, and lie over the glass.
  const bars = (more: Partial<OwnOpening>) =>
    boxes(south(room({ ...window, ...more })), { fill: 'none', 'stroke-width': pens.fine, stroke: printPalette.ink });

  it('has no mullion however wide it is, where its record divides it into no lights', () => {
    expect(bars({})).toEqual([]);
  });

  it('has the lights of its record', () => {
    // From 48" to 168" and from 24" to 84", in a frame of 2".
    expect(bars({ division: { across: 2, up: 1 } })).toEqual([[108, 26, 108, 82]]);
    expect(bars({ division: { across: 1, up: 3 } })).toEqual([
      [50, 44, 166, 44],
      [50, 64, 166, 64],
    ]);
  });
});

it.each(['open', 'cased'] as const)('an opening of kind %s is not of the tone of its wall', (kind) => {
  const measure = room({ kind });
  const wall = measure.walls.find(({ id }) => id === 'south')!;
  const finishes = wall.regions.map((region) => ({ label: 'Tallow', region }));
  const { svg, ratio } = drawElevation(measure, wall, { ...base, id: 'wall', finishes });
  const drawn = { nodes: nodesOf(svg), inch: 72 / ratio };
  expect(boxes(drawn, { fill: printPalette.paper, 'stroke-width': pens.object })).toContainEqual([48, 0, 84, 84]);
  expect(boxes(drawn, { fill: printPalette.tone, 'stroke-width': pens.object })).toEqual([]);
});
