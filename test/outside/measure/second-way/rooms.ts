import fc from 'fast-check';
import { headings } from '../../../../src/base/geometry/index.js';
import { fromFeet } from '../../../../src/base/units/index.js';
import type { CeilingForm, RoomMeasure, Shape } from '../../../../src/core/model/index.js';
import { measured } from '../../../measure/measured.js';
import {
  cellsOf,
  common,
  heightOf,
  recorded,
  rectangle,
  type Cell,
  type Height,
  type Piece,
  type Spot,
} from './plan.js';

/** Rooms of all shapes under ceilings of up to three parts, side by side from west to east. */
export interface Roofed {
  readonly corners: readonly Spot[];
  readonly pieces: readonly Piece[];
  readonly isBox: boolean;
  readonly measure: RoomMeasure;
  readonly cells: readonly Cell[];
  readonly height: Height;
}

const inches = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: least * 12, max: most * 12 }).map((count) => count / 12);

const boxes = fc.tuple(inches(10, 28), inches(8, 20)).map(([east, north]) => rectangle(0, 0, east, north));

const ells = fc.tuple(inches(14, 28), inches(12, 20), inches(3, 6), inches(3, 6)).map(([east, north, x, y]) => [
  { x: 0, y: 0 },
  { x: east, y: 0 },
  { x: east, y: north - y },
  { x: east - x, y: north - y },
  { x: east - x, y: north },
  { x: 0, y: north },
]);

/** Around a middle, some corners further out than others. */
const stars = fc
  .array(fc.tuple(fc.integer({ min: 15, max: 85 }), inches(4, 13)), { minLength: 5, maxLength: 8 })
  .map((list) =>
    list.map(([turn, far], index): Spot => {
      const angle = ((index + turn / 100) / list.length) * 2 * Math.PI;
      return {
        x: Math.round(12 * (14 + far * Math.cos(angle))) / 12,
        y: Math.round(12 * (10 + far * Math.sin(angle))) / 12,
      };
    }),
  );

/** All corners on one ellipse. */
const rounds = fc.array(fc.integer({ min: 20, max: 80 }), { minLength: 5, maxLength: 7 }).map((list) =>
  list.map((turn, index): Spot => {
    const angle = ((index + turn / 100) / list.length) * 2 * Math.PI;
    return {
      x: Math.round(12 * (14 + 13 * Math.cos(angle))) / 12,
      y: Math.round(12 * (10 + 9 * Math.sin(angle))) / 12,
    };
  }),
);

const bearing = fc.constantFrom(...Object.values(headings));
const plates = inches(4, 9);
const pitches = fc.constantFrom(3, 6, 8, 12).map((rise) => ({ rise, run: 12 }));
const length = fromFeet;

const tilted = fc.tuple(inches(8, 12), inches(-2, 2), inches(-2, 2)).map(([up, east, north]) =>
  [
    [0, 0, up],
    [20, 0, up + east],
    [0, 20, up + north],
  ].map(([x = 0, y = 0, height = 0]) => ({ x: length(x), y: length(y), height: length(height) })),
);

type Form = { readonly form: CeilingForm; readonly cut?: number };
const over = fc.option(inches(1, 4), { nil: undefined });
const cutAt = (form: CeilingForm, plate: number, more: number | undefined): Form => ({
  form,
  ...(more !== undefined && { cut: plate + more }),
});
const forms: fc.Arbitrary<Form> = fc.oneof(
  inches(7, 12).map((height): Form => ({ form: { form: 'flat', height: length(height) } })),
  fc
    .tuple(bearing, plates, pitches, over)
    .map(([low, plate, pitch, more]) => cutAt({ form: 'shed', low, plate: length(plate), pitch }, plate, more)),
  fc
    .tuple(bearing, plates, pitches, over)
    .map(([ridge, plate, pitch, more]) => cutAt({ form: 'gable', ridge, plate: length(plate), pitch }, plate, more)),
  fc.tuple(bearing, plates, inches(2, 8)).map(([ridge, plate, more]): Form => ({
    form: { form: 'gable', ridge, plate: length(plate), ridgeHeight: length(plate + more) },
  })),
  fc.array(tilted, { minLength: 1, maxLength: 3 }).map((planes): Form => ({ form: { form: 'planes', planes } })),
);
const hips: fc.Arbitrary<Form> = fc
  .tuple(plates, pitches, over)
  .map(([plate, pitch, more]) => cutAt({ form: 'hip', plate: length(plate), pitch }, plate, more));

const names = ['West', 'Middle', 'East'];

/** Strips from west to east, the borders at shares of what there is. */
function piecesOf(
  corners: readonly Spot[],
  parts: readonly Form[],
  shares: readonly number[],
  open: number | undefined,
): readonly Piece[] {
  const xs = corners.map(({ x }) => x);
  const [west, east] = [Math.min(...xs), Math.max(...xs)];
  const borders = shares
    .slice(0, parts.length - 1)
    .sort((a, b) => a - b)
    .map((share) => Math.round(12 * (west + ((east - west) * share) / 100)) / 12);
  const stops = [west - 5, ...borders, east + 5];
  return parts.map((part, index) => {
    const over = rectangle(stops[index] ?? 0, -50, stops[index + 1] ?? 0, 50);
    const own = parts.length === 1 ? corners : common(corners, over);
    const cut = part.cut === undefined ? {} : { cut: length(part.cut) };
    const height = heightOf({ form: part.form, ...cut }, own);
    return { name: names[index] ?? '', over, height, ...(open !== undefined && index === 1 && { openAbove: open }) };
  });
}

const roofed = fc
  .record({
    plan: fc.oneof(boxes, boxes, ells, stars, rounds),
    clockwise: fc.boolean(),
    parts: fc.oneof(
      fc.array(forms, { minLength: 1, maxLength: 1 }),
      hips.map((form) => [form]),
      fc.array(forms, { minLength: 2, maxLength: 3 }),
      fc.array(forms, { minLength: 2, maxLength: 3 }),
    ),
    shares: fc.constantFrom([30, 65], [25, 50], [40, 80]),
    open: fc.option(inches(8, 12), { nil: undefined }),
  })
  .map(({ plan, clockwise, parts, shares, open }): Roofed => {
    const corners: readonly Spot[] = clockwise ? [...plan].reverse() : plan;
    const pieces = piecesOf(corners, parts, shares, open);
    const shape: Shape = {
      by: 'outline',
      corners: corners.map((corner, index) => ({ at: recorded(corner), wall: `w${index + 1}` })),
    };
    const ceiling = parts.map(({ form, cut }, index) => {
      const { name = '', over = [], openAbove } = pieces[index] ?? {};
      return {
        name,
        form,
        ...(cut !== undefined && { cut: length(cut) }),
        ...(parts.length > 1 && { over: over.map(recorded) }),
        ...(openAbove !== undefined && { openAbove: { height: length(openAbove), to: 'loft' } }),
      };
    });
    const height: Height = (at) => {
      const found = pieces.find(({ over }) => at.x >= (over[0]?.x ?? 0) && at.x <= (over[1]?.x ?? 0));
      return found?.height(at) ?? NaN;
    };
    const isBox = corners.length === 4;
    const borders = pieces.slice(1).map(({ over }) => over[0]?.x ?? 0);
    const cells = cellsOf(corners, 60, 40, borders);
    return { corners, pieces, isBox, height, measure: measured({ shape, ceiling }), cells };
  });

/** Measured once for all that is asked of them. */
export const rooms = fc.sample(roofed, { numRuns: 50, seed: 1790 });
