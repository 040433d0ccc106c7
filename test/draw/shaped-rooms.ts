import { headings } from '../../src/base/geometry/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { ft, measured, size } from './fixtures.js';

/** A parlor with a bowed window wall, a door in a wall that bows into the room, and a roof over it. */
export const bowed = (): RoomMeasure =>
  measured({
    slug: 'bowed',
    shape: {
      by: 'walk',
      walls: [
        { name: 'north', go: 'east', run: ft(14), arc: { bows: 'out', rise: ft(2.5) } },
        { name: 'east', go: 'south', run: ft(11) },
        { name: 'south', go: 'west', run: ft(8) },
        { name: 'corner', go: 'north-west', run: ft(6 * Math.SQRT2), arc: { bows: 'in', radius: ft(8) } },
        { name: 'west', go: 'north', run: ft(5) },
      ],
    },
    ceiling: { form: 'shed', low: { x: 0, y: 1 }, plate: ft(8), pitch: { rise: 3, run: 12 } },
    openings: [
      {
        mark: 'W41',
        kind: 'window',
        wall: 'north',
        at: ft(2),
        width: ft(4),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
      },
      {
        mark: 'W42',
        kind: 'window',
        wall: 'north',
        at: ft(9),
        width: ft(4),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
      },
      { mark: 'D41', wall: 'corner', at: ft(3), width: ft(3), height: ft(7), hinge: 'left', swing: 'hall' },
    ],
  });

/** A den with a pit, a dais along its north wall with a door on it, and a ramp down to a door. */
export const stepped = (): RoomMeasure => {
  const rectangle = (x: number, y: number, width: number, depth: number) =>
    [
      [x, y],
      [x + width, y],
      [x + width, y + depth],
      [x, y + depth],
    ].map(([east = 0, north = 0]) => ({ x: ft(east), y: ft(north) }));
  return measured({
    slug: 'stepped',
    shape: {
      by: 'walk',
      walls: [
        { name: 'north', go: 'east', run: ft(20) },
        { name: 'east', go: 'south', run: ft(15) },
        { name: 'south', go: 'west', run: ft(20) },
        { name: 'west', go: 'north', run: ft(15) },
      ],
    },
    ceiling: { form: 'flat', height: ft(9) },
    floor: [
      { name: 'Pit', height: ft(-14 / 12), over: rectangle(2, 5, 8, 5), path: ['floor', 0] },
      { name: 'Dais', height: ft(7 / 12), over: rectangle(0, 12, 20, 3), path: ['floor', 1] },
      {
        name: 'Ramp',
        height: ft(-8 / 12),
        over: rectangle(12, 0, 8, 4),
        ramp: { low: { x: 1, y: 0 }, pitch: { rise: 1, run: 12 } },
        path: ['floor', 2],
      },
    ],
    openings: [
      { mark: 'D51', wall: 'north', at: ft(3), width: ft(3), height: ft(7), hinge: 'left' },
      { mark: 'W51', kind: 'window', wall: 'east', at: ft(1), width: ft(4), height: ft(4), sill: ft(3), to: 'outside' },
    ],
  });
};

/** An attic room between two walls that lean, with a window in one of them. */
export const attic = (): RoomMeasure =>
  measured({
    slug: 'attic',
    shape: {
      by: 'walk',
      walls: [
        { name: 'north', go: 'east', run: ft(14), leans: { by: ft(3), at: ft(7) } },
        { name: 'east', go: 'south', run: ft(12) },
        { name: 'south', go: 'west', run: ft(14), leans: { by: ft(1), at: ft(4) } },
        { name: 'west', go: 'north', run: ft(12) },
      ],
    },
    ceiling: { form: 'flat', height: ft(8) },
    openings: [
      {
        mark: 'W61',
        kind: 'window',
        wall: 'north',
        at: ft(4),
        width: ft(3),
        height: ft(4),
        sill: ft(3),
        to: 'outside',
      },
      { mark: 'D61', wall: 'west', at: ft(4), hinge: 'left' },
    ],
  });

/** Openings that are no rectangles: round, arched and raked, under a gable that one of them follows. */
export const chapel = (): RoomMeasure =>
  measured({
    slug: 'chapel',
    shape: size(16, 14),
    ceiling: { form: 'gable', ridge: headings.north, plate: ft(8), pitch: { rise: 6, run: 12 } },
    openings: [
      {
        mark: 'W51',
        kind: 'window',
        wall: 'north',
        at: ft(6.5),
        width: ft(3),
        height: ft(3),
        sill: ft(7),
        to: 'outside',
        shape: { is: 'round' },
      },
      {
        mark: 'W52',
        kind: 'window',
        wall: 'north',
        at: ft(1),
        width: ft(4),
        height: ft(7),
        sill: ft(2),
        to: 'outside',
        shape: { is: 'rake', low: 'left', to: ft(5) },
      },
      {
        mark: 'W53',
        kind: 'window',
        wall: 'north',
        at: ft(11),
        width: ft(3),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
        shape: { is: 'arch', radius: ft(2.5) },
      },
      {
        mark: 'D51',
        wall: 'south',
        at: ft(6),
        width: ft(4),
        height: ft(8),
        operation: 'double',
        to: 'outside',
        swing: 'chapel',
        shape: { is: 'arch', rise: ft(2) },
      },
      {
        mark: 'D52',
        wall: 'east',
        at: ft(2),
        width: ft(3),
        height: ft(7),
        to: 'hall',
        hinge: 'left',
        swing: 'hall',
        shape: { is: 'arch', rise: ft(8 / 12) },
      },
      {
        mark: 'O51',
        kind: 'open',
        wall: 'west',
        at: ft(3),
        width: ft(5),
        height: ft(7.5),
        to: 'hall',
        shape: { is: 'arch', rise: ft(1.25) },
      },
    ],
    features: [
      {
        kind: 'skylight',
        id: 'sky',
        name: 'Skylight',
        x: `3'-0"`,
        y: `8'-0"`,
        width: `2'-0"`,
        length: `3'-10"`,
        depth: `10"`,
        head: 'level',
        foot: 'plumb',
      },
    ],
  });

export const shapedRooms = { attic, bowed, chapel, stepped };
