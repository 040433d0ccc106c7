import { lengthOf } from '../../base/geometry/index.js';
import type { Path } from '../../base/problem/index.js';
import { printLength } from '../../base/units/index.js';
import { wallPath } from '../model/index.js';
import type { LayRoom, Side } from './laid-room.js';
import type { Laying } from './lay-rooms.js';

export function roomAt({ rooms }: Pick<Laying, 'rooms'>, index: number): LayRoom {
  return rooms[index] as LayRoom;
}

export function theWall({ wall }: Side, { record }: LayRoom): string {
  return `the ${wall.name.toLowerCase()} of ${record.name}`;
}

export function sidePath({ wall }: Side, { record }: LayRoom): Path {
  return wallPath(record.shape, wall.id);
}

export function shapePath({ record }: LayRoom): Path {
  return [{ size: 'size', walk: 'walls', outline: 'outline' }[record.shape.by]];
}

export function inText(value: number): string {
  return printLength(lengthOf(value));
}
