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
