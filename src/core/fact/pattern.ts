import type { Length } from '../../base/units/index.js';
import { factOf } from './read.js';

/** How far each row of tile lies aside from the one below: not at all, by half of a piece or by a third. */
export type TileBond = 'stack' | 'half' | 'third';

/** What an option's record says of the pattern that its pieces make on a surface, for drawings. Absent: not recorded. */
export interface PatternFacts {
  /** Of a tile: along its rows, and up. */
  readonly size?: readonly [along: Length, up: Length];
  readonly bond?: TileBond;
  /** Degrees by which tile is turned as it is laid. */
  readonly turn?: 0 | 45 | 90;
  /** Heights of courses of stone. */
  readonly courses?: readonly Length[];
}

const bonds: Readonly<Partial<Record<string, TileBond>>> = {
  stack: 'stack',
  'running half': 'half',
  'running third': 'third',
};

export function patternFacts(option: Parameters<typeof factOf>[0]): PatternFacts {
  const [along, up] = [factOf(option, 'tile', 'length'), factOf(option, 'tile', 'width')];
  const bond = bonds[factOf(option, 'tile', 'bond') ?? ''];
  const turn = factOf(option, 'tile', 'turn');
  const courses = factOf(option, 'stone', 'course-heights') ?? [];
  return {
    ...(along !== undefined && up !== undefined && { size: [along, up] }),
    ...(bond && { bond }),
    ...((turn === 0 || turn === 45 || turn === 90) && { turn }),
    ...(courses.length > 0 && { courses }),
  };
}
