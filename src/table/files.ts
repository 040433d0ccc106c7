import type { LookUp } from '../book/index.js';
import type { HouseBlock } from '../sheet/index.js';
import { backing } from './backing.js';
import { doors } from './doors.js';
import { finishes, finishKeys, finishRemarks } from './finish.js';
import { hardware } from './hardware.js';
import { insulation } from './insulation.js';
import { openings } from './openings.js';
import { railings } from './railings.js';
import { soundWalls } from './sound-walls.js';
import { stone } from './stone.js';

/** Tables that are written as files of data, by name, in the order of the book. */
const files = {
  finish: finishes,
  'finish-keys': finishKeys,
  'finish-remarks': finishRemarks,
  doors,
  openings,
  hardware,
  railings,
  stone,
  insulation,
  'sound-walls': soundWalls,
  backing,
} as const;

export const tableNames: readonly string[] = Object.keys(files);

/** Each with its rows; one without rows is left out. */
export function dataTables(look: LookUp): ReadonlyMap<string, HouseBlock> {
  return new Map(
    Object.entries(files)
      .map(([name, { lay }]) => [name, lay(look)] as const)
      .filter(([, { groups }]) => groups.length > 0),
  );
}
