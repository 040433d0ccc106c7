import { headings } from '../../src/base/geometry/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { ft, measured, size } from './fixtures.js';
import { bay, kitchen } from './odd-rooms.js';
import { shapedRooms } from './shaped-rooms.js';

/** Great room with a gable, chimney breast, windows either side, double doors, trusses, open to the kitchen. */
export const greatRoom = (): RoomMeasure =>
  measured({
    slug: 'great-room',
    shape: size(24, 18.5, [{ wall: 'east', to: 'kitchen' }]),
    ceiling: { form: 'gable', ridge: headings.east, plate: ft(9), pitch: { rise: 8, run: 12 } },
    openings: [
      {
        mark: 'D01',
        wall: 'south',
        at: ft(3),
        width: ft(3),
        height: ft(8),
        to: 'foyer',
        hinge: 'left',
        swing: 'great-room',
      },
      {
        mark: 'D02',
        wall: 'south',
        at: ft(12),
        width: ft(6),
        height: ft(8),
        to: 'outside',
        operation: 'double',
        swing: 'outside',
      },
      {
        mark: 'W01',
        kind: 'window',
        wall: 'north',
        at: ft(2),
        width: ft(4),
        height: ft(5),
        sill: ft(2.5),
        to: 'outside',
      },
      {
        mark: 'W02',
        kind: 'window',
        wall: 'north',
        at: ft(18),
        width: ft(4),
        height: ft(5),
        sill: ft(2.5),
        to: 'outside',
      },
      {
        mark: 'W03',
        kind: 'window',
        wall: 'west',
        at: ft(6.25),
        width: ft(6),
        height: ft(5),
        sill: ft(2.5),
        to: 'outside',
      },
    ],
    features: [
      {
        kind: 'chimney-breast',
        id: 'breast',
        name: 'Chimney breast',
        wall: 'north',
        at: `8'-6"`,
        width: `7'-0"`,
        depth: `2'-0"`,
        firebox: { width: `3'-6"`, height: `3'-0"`, sill: `1'-0"` },
        hearth: { width: `7'-0"`, depth: `1'-8"`, thickness: `2"`, height: `1'-0"` },
      },
      {
        kind: 'timber',
        id: 'trusses',
        name: 'Ridge trusses',
        count: 4,
        length: `18'-6"`,
        width: '7 1/2"',
        depth: '11 1/2"',
      },
      {
        kind: 'built-in',
        id: 'bench',
        name: 'Window seat',
        wall: 'west',
        at: `6'-3"`,
        width: `6'-0"`,
        depth: `1'-8"`,
        height: `1'-6"`,
      },
    ],
  });

/** A small bath under a hip with niche, half wall and pocket door. */
export const bath = (): RoomMeasure =>
  measured({
    slug: 'bath',
    shape: size(8.5, 9),
    ceiling: { form: 'hip', plate: ft(8), pitch: { rise: 6, run: 12 } },
    cut: 9,
    openings: [
      {
        mark: 'D11',
        wall: 'south',
        at: ft(1),
        width: ft(2.5),
        height: ft(6.6667),
        to: 'bedroom',
        operation: 'pocket',
        slides: 'right',
      },
      { mark: 'W11', kind: 'window', wall: 'west', at: ft(3), width: ft(2), height: ft(3), sill: ft(4), to: 'outside' },
    ],
    features: [
      {
        kind: 'niche',
        id: 'niche',
        name: 'Shower niche',
        wall: 'east',
        at: `2'-0"`,
        width: `1'-2"`,
        height: `1'-8"`,
        sill: `3'-6"`,
        depth: '3 1/2"',
      },
      {
        kind: 'half-wall',
        id: 'pony',
        name: 'Half wall',
        x: `4'-6"`,
        y: `4'-0"`,
        go: 'east',
        run: `4'-0"`,
        height: `3'-6"`,
        thickness: '4 1/2"',
      },
    ],
  });

/** Gallery with a fall, a void, a stair and a sloping ceiling. */
export const gallery = (): RoomMeasure =>
  measured({
    slug: 'gallery',
    shape: size(20, 14, [{ wall: 'south', to: 'great-room' }]),
    ceiling: { form: 'shed', low: headings.north, plate: ft(7), pitch: { rise: 3, run: 12 } },
    openings: [
      {
        mark: 'D21',
        wall: 'west',
        at: ft(2),
        width: ft(2.6667),
        height: ft(6.6667),
        to: 'bedroom',
        hinge: 'right',
        swing: 'bedroom',
      },
      { mark: 'D22', wall: 'north', at: ft(15), width: ft(3), height: ft(6.6667), kind: 'cased', to: 'study' },
    ],
    voids: [
      {
        name: 'Open to foyer',
        corners: [
          { x: ft(11), y: ft(5) },
          { x: ft(17), y: ft(5) },
          { x: ft(17), y: ft(10) },
          { x: ft(11), y: ft(10) },
        ],
      },
    ],
    features: [
      {
        kind: 'drop-edge',
        id: 'edge',
        name: 'Gallery edge',
        wall: 'south',
        at: `0'-0"`,
        run: `20'-0"`,
        drop: `10'-6"`,
      },
      {
        kind: 'stair',
        id: 'stair',
        name: 'Main stair',
        rise: `10'-6"`,
        risers: 12,
        going: '10 1/2"',
        width: `3'-6"`,
        rails: 1,
        x: `5'-0"`,
        y: `1'-0"`,
        go: 'north',
      },
    ],
  });

export const closet = (): RoomMeasure =>
  measured({
    slug: 'closet',
    shape: size(4, 2.5),
    ceiling: { form: 'flat', height: ft(8) },
    openings: [
      {
        mark: 'D41',
        wall: 'south',
        at: ft(0.5),
        width: ft(2.5),
        height: ft(6.6667),
        to: 'hall',
        hinge: 'left',
        swing: 'hall',
      },
    ],
  });

export const neighbours = new Map([
  ['kitchen', 'Kitchen'],
  ['foyer', 'Foyer'],
  ['hall', 'Hall'],
  ['bedroom', 'Primary bedroom'],
  ['great-room', 'Great room'],
  ['study', 'Study'],
  ['mudroom', 'Mudroom'],
  ['pantry', 'Pantry'],
]);

export const rooms = { 'great-room': greatRoom, bath, gallery, bay, closet, kitchen, ...shapedRooms };
