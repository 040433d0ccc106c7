import fc from 'fast-check';
import { expect, test } from 'vitest';
import { measureHouse } from '../../../src/core/measure/index.js';
import type { RoomMeasure } from '../../../src/core/model/index.js';
import { readRecords } from '../../../src/core/records/index.js';
import { feet } from '../../../src/base/units/index.js';
import { composeHouse } from '../../small-house/compose-house.js';
import { houseRecord } from './house-record.js';
import { drafted, extruded, leftOut, metricHouse, modelText } from './model-text.js';

/** A random rectilinear room → text of a model → record → measured: the same area, perimeter and volume. */

type Corner = readonly [number, number];

/** A room between stepped lines: columns of widths and of two depths, north and south of a line that all cross; in whole millimetres. */
const rooms = fc.record({
  columns: fc.array(
    fc.record({
      width: fc.integer({ min: 300, max: 4000 }),
      north: fc.integer({ min: 500, max: 4000 }),
      south: fc.integer({ min: 500, max: 4000 }),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  height: fc.integer({ min: 2000, max: 6000 }),
  turn: fc.constantFrom(0, 0, 30, -17.25, 90, 137),
  start: fc.nat({ max: 30 }),
  isClockwise: fc.boolean(),
  prefix: fc.constantFrom('MILLI', undefined),
});

interface Given {
  readonly outline: readonly Corner[];
  readonly area: number;
  readonly around: number;
}

/** Its corners counter-clockwise in millimetres, and its figures, worked from the columns alone. */
function outlineOf(
  columns: readonly { readonly width: number; readonly north: number; readonly south: number }[],
): Given {
  const [south, north]: [Corner[], Corner[]] = [[], []];
  let x = 0;
  for (const { width, north: up, south: down } of columns) {
    south.push([x, -down], [x + width, -down]);
    north.push([x, up], [x + width, up]);
    x += width;
  }
  const steps = (key: 'north' | 'south'): number =>
    columns.reduce((sum, column, index) => sum + Math.abs(column[key] - (columns[index - 1] ?? column)[key]), 0);
  const [first, last] = [columns[0], columns.at(-1)];
  const ends = [first, last].reduce((sum, column) => sum + (column ? column.north + column.south : 0), 0);
  return {
    outline: [...south, ...north.toReversed()],
    area: columns.reduce((sum, { width, north: up, south: down }) => sum + width * (up + down), 0),
    around: 2 * x + steps('north') + steps('south') + ends,
  };
}

function measured(text: string, metric: boolean): RoomMeasure {
  const house = houseRecord({ metric, levels });
  const records = readRecords([
    { path: 'content/house.md', text: house },
    { path: 'content/rooms/hall.md', text },
  ]);
  const measures = records.value && measureHouse(records.value);
  const problems = [...records.problems, ...(measures?.problems ?? [])];
  const room = measures?.value?.get('hall');
  if (!room || problems.length > 0) throw new Error(JSON.stringify(problems));
  return room;
}

const levels = ['  - { id: level-1, name: Level 1 }'];

const squareFoot = 304.8 ** 2;

test('in a metric house to a tenth of a millimetre', () => {
  fc.assert(
    fc.property(rooms, (given) => {
      const { room, outline } = draftOf(given, true);
      // Coordinates of a turned model are rounded: half a step at each end.
      const slack = given.turn === 0 || given.turn === 90 ? 1e-6 : 0.11;
      const { length } = outline.outline;
      expect(Math.abs(feet(room.perimeter) * 304.8 - outline.around)).toBeLessThanOrEqual(slack * length + 1e-6);
      const edge = slack * outline.around + 1;
      expect(Math.abs(room.floor.gross * squareFoot - outline.area)).toBeLessThanOrEqual(edge);
      const volume = outline.area * given.height;
      expect(Math.abs(room.volume * 304.8 ** 3 - volume)).toBeLessThanOrEqual(
        edge * given.height + outline.area * slack + 1e3,
      );
    }),
    { numRuns: 60 },
  );
});

test('in feet and inches to 1/64"', () => {
  fc.assert(
    fc.property(rooms, (given) => {
      const { room, outline } = draftOf(given, false);
      const slack = 25.4 / 64;
      expect(Math.abs(feet(room.perimeter) * 304.8 - outline.around)).toBeLessThanOrEqual(
        slack * outline.outline.length,
      );
      expect(Math.abs(room.floor.gross * squareFoot - outline.area)).toBeLessThanOrEqual(slack * outline.around);
      expect(Math.abs((room.volume * 304.8 ** 3) / (outline.area * given.height) - 1)).toBeLessThanOrEqual(0.001);
    }),
    { numRuns: 40 },
  );
});

type Rooms = typeof rooms extends fc.Arbitrary<infer Room> ? Room : never;

function draftOf(given: Rooms, metric: boolean): { readonly room: RoomMeasure; readonly outline: Given } {
  const outline = outlineOf(given.columns);
  const scale = given.prefix === 'MILLI' ? 1 : 1000;
  const scaled = outline.outline.map(([x, y]): Corner => [x / scale, y / scale]);
  const shifted = [...scaled.slice(given.start % scaled.length), ...scaled.slice(0, given.start % scaled.length)];
  const ring = given.isClockwise ? shifted.toReversed() : shifted;
  const text = modelText({
    turn: given.turn,
    ...(given.prefix && { prefix: given.prefix }),
    spaces: [{ number: '1', name: 'Hall', body: extruded(ring, given.height / scale), at: [7 / scale, -3 / scale, 0] }],
  });
  const draft = drafted(text, metric ? { locale: metricHouse } : {});
  expect(leftOut(draft)).toEqual([]);
  return { room: measured(draft.files.get('content/rooms/hall.md') ?? '', metric), outline };
}

test('a draft stands in a whole Book', () => {
  const text = modelText({
    spaces: [
      {
        number: '1',
        name: 'Hall',
        body: extruded(
          [
            [0, 0],
            [3.048, 0],
            [3.048, 3.048],
            [0, 3.048],
          ],
          2.4384,
        ),
      },
    ],
  });
  const { files } = drafted(text);
  const book = composeHouse(
    { 'content/house.md': houseRecord({ metric: false, levels }), ...Object.fromEntries(files) },
    '2026-04-20',
  );
  expect(book.rooms.map(({ name, measure }) => [name, measure.floor.gross])).toEqual([['Hall', 100]]);
});
