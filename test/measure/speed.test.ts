import { headings } from '../../src/base/geometry/index.js';
import { expect, test } from 'vitest';
import { measureHouse } from '../../src/core/measure/index.js';
import { usualLocale } from '../../src/base/units/index.js';
import type { Records } from '../../src/core/model/index.js';
import { box, flat, len, opening, outline, pitch, room, size } from './room-record.js';
import { atMost, processorTime } from '../processor-time.js';

/** Seventeen rooms of a house: gables with breasts and stairs, an L in two parts, plain rooms with doors and windows. */
function houseOf(copies: number): Records {
  const rooms = Array.from({ length: copies }, (_, i) => {
    const slug = `room-${i}`;
    const openings = [
      opening(`D${i}`, 'door', 'south', `1'`, `3' x 7'`),
      opening(`W${i}`, 'window', 'west', `3'`, `5' x 4'`, { sill: len(`2'-6"`) }),
    ];
    const breast = {
      kind: 'chimney-breast',
      id: 'breast',
      name: 'Breast',
      wall: 'north',
      at: `8'`,
      width: `7'`,
      depth: `2'`,
      hearth: { width: `8'`, depth: `1'-8"` },
    };
    const stair = {
      kind: 'stair',
      id: 'stair',
      name: 'Stair',
      rise: `10'-6"`,
      risers: 17,
      going: `10"`,
      width: `3'-6"`,
      x: `18'`,
      y: `2'`,
      go: 'north',
    };
    const gable = { form: 'gable', ridge: headings.east, plate: len(`9'`), pitch: pitch('8/12') } as const;
    if (i % 4 === 0)
      return room({
        slug,
        shape: size(`24'`, `18'`),
        ceiling: { form: gable, cut: len(`14'`) },
        openings,
        features: [breast, stair],
      });
    if (i % 4 === 1) {
      const shape = outline([`0'`, `12'`], [`12'`, `12'`], [`12'`, `7'`], [`20'`, `7'`], [`20'`, `0'`], [`0'`, `0'`]);
      const parts = [
        { name: 'Main', form: gable, over: box(`0'`, `0'`, `12'`, `12'`) },
        { name: 'Bay', form: flat(`8'`), over: box(`12'`, `0'`, `8'`, `7'`) },
      ];
      return room({ slug, shape, ceiling: parts });
    }
    return room({ slug, shape: size(`12'`, `10'`), ceiling: flat(`8'`), openings });
  });
  return { house: usualLocale, rooms } as unknown as Records;
}

function milliseconds(records: Records): number {
  const times = Array.from({ length: 9 }, () =>
    processorTime(() => expect(measureHouse(records).problems).toEqual([])),
  );
  return Math.min(...times);
}

test('17 rooms in milliseconds, ten times as many in about ten times as long', () => {
  milliseconds(houseOf(17));
  const [small, large] = [milliseconds(houseOf(17)), milliseconds(houseOf(170))];
  expect(small).toBeLessThan(atMost(50, small));
  expect(large / small).toBeLessThan(25);
  if (process.env['SHOW_TIMES']) console.log({ small, large });
});
