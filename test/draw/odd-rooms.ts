import type { RoomMeasure } from '../../src/core/model/index.js';
import { ft, measured } from './fixtures.js';

/** A bay at odd angles, walls clockwise. */
export const bay = (): RoomMeasure =>
  measured({
    slug: 'bay',
    shape: {
      by: 'outline',
      corners: [
        { at: { x: ft(0), y: ft(0) }, wall: 'west' },
        { at: { x: ft(0), y: ft(10) }, wall: 'north-west' },
        { at: { x: ft(3), y: ft(13) }, wall: 'north' },
        { at: { x: ft(9), y: ft(13) }, wall: 'north-east' },
        { at: { x: ft(12), y: ft(10) }, wall: 'east' },
        { at: { x: ft(12), y: ft(4) }, wall: 'step' },
        { at: { x: ft(15), y: ft(4) }, wall: 'alcove', openTo: 'hall' },
        { at: { x: ft(15), y: ft(0) }, wall: 'south' },
      ],
    },
    ceiling: { form: 'flat', height: ft(9) },
    openings: [
      {
        mark: 'W31',
        kind: 'window',
        wall: 'north-west',
        at: ft(0.75),
        width: ft(2.5),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
      },
      {
        mark: 'W32',
        kind: 'window',
        wall: 'north',
        at: ft(0.5),
        width: ft(5),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
      },
      {
        mark: 'W33',
        kind: 'window',
        wall: 'north-east',
        at: ft(0.75),
        width: ft(2.5),
        height: ft(5),
        sill: ft(2),
        to: 'outside',
      },
      { mark: 'D31', wall: 'south', at: ft(1), width: ft(6), height: ft(7), to: 'outside', operation: 'sliding' },
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
      { mark: 'D51', wall: 'north', at: ft(3), width: ft(3), height: ft(7), sill: ft(7 / 12), hinge: 'left' },
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

/** An L under a gable with parts. */
export const kitchen = (): RoomMeasure =>
  measured({
    slug: 'kitchen',
    shape: {
      by: 'walk',
      walls: [
        { name: 'north', go: 'east', run: ft(22) },
        { name: 'east', go: 'south', run: ft(18) },
        { name: 'south', go: 'west', run: ft(10) },
        { name: 'step', go: 'north', run: ft(6) },
        { name: 'south-west', go: 'west', run: ft(12) },
        { name: 'west', go: 'north', run: ft(12), openTo: 'great-room' },
      ],
    },
    ceiling: { form: 'hip', plate: ft(9), pitch: { rise: 6, run: 12 } },
    openings: [
      {
        mark: 'W51',
        kind: 'window',
        wall: 'north',
        at: ft(8),
        width: ft(6),
        height: ft(4),
        sill: ft(3.5),
        to: 'outside',
      },
      {
        mark: 'D51',
        wall: 'east',
        at: ft(2),
        width: ft(3),
        height: ft(7),
        to: 'mudroom',
        hinge: 'right',
        swing: 'kitchen',
      },
      {
        mark: 'D52',
        wall: 'step',
        at: ft(1),
        width: ft(2.5),
        height: ft(7),
        to: 'pantry',
        hinge: 'left',
        swing: 'pantry',
      },
    ],
  });

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

export const oddRooms = { attic, bay, bowed, kitchen, stepped };
