import type { FloorPart, Shape } from '../model/index.js';
import { parseLength, parsePitch } from '../../base/units/index.js';
import { passed, readHeading } from './formats.js';
import type { RawFloor } from './raw/room.js';
import { cornersOver } from './read-ceiling.js';

export function readFloor(parts: RawFloor, shape: Shape): readonly FloorPart[] {
  return parts.map(({ name, over, height, ramp }, index) => ({
    name,
    over: cornersOver(over, shape),
    height: passed(parseLength(height)),
    ...(ramp && { ramp: { low: passed(readHeading(ramp.low)), pitch: passed(parsePitch(ramp.pitch)) } }),
    path: ['floor', index],
  }));
}
