import type { WalkedWall } from '../../core/model/index.js';
import { misclosureOf, type RawRoom } from '../../core/records/index.js';
import {
  compass,
  joinWords,
  parseLength,
  read,
  unread,
  type CompassBearing,
  type Reading,
} from '../../base/units/index.js';

/** A walk as it is written, and as it is measured; the same walls in the same order. */
export interface Walk {
  readonly walls: NonNullable<RawRoom['walls']>;
  readonly walked: readonly WalkedWall[];
}

/** Going clockwise as seen from above, a wall stands to the left: it is named by that side. */
function sideOf(go: CompassBearing): CompassBearing {
  return compass.at(compass.indexOf(go) - 2) ?? go;
}

/** `n` is north, `sw` south-west. */
const short = new Map(
  compass.map((go) => [
    go
      .split('-')
      .map(([letter = '']) => letter)
      .join(''),
    go,
  ]),
);

/** Reads walls as they were walked with a tape, clockwise as seen from above, one on a line: `east 14' 2"`, `s 3.6 m`. A wall has the name of
 *  its side, or the one that stands before it: `window wall: south 12'`. */
export function readWalk(lines: readonly string[]): Reading<Walk> {
  const names = new Set<string>();
  const walls: Walk['walls'] = [];
  const walked: WalkedWall[] = [];
  for (const [index, line] of lines.entries()) {
    const wall = readWall(line, index, names);
    if (!wall.ok) return wall;
    walls.push(wall.value.raw);
    walked.push(wall.value.walked);
  }
  return read({ walls, walked });
}

/** How walls as they were written do not close, and what mends it; each wall by its number and the words it was written in, since the side that names
 *  it stands nowhere there. Undefined where they close. */
export function openWords(lines: readonly string[], { walked }: Pick<Walk, 'walked'>): string | undefined {
  const wall = (index: number): string => `wall ${index + 1} (${lines[index]?.trim() ?? ''})`;
  const open = misclosureOf(walked.map((one, index) => ({ ...one, name: String(index) })));
  if (!open) return undefined;
  const fix = open.fix.replaceAll(/'(\d+)'/gu, (_, index: string) => wall(Number(index)));
  return `${open.message}. At ${wall(open.index)}: ${fix}.`;
}

function readWall(
  line: string,
  index: number,
  names: Set<string>,
): Reading<{ readonly raw: Walk['walls'][number]; readonly walked: WalkedWall }> {
  const [, given, way = '', run = ''] = /^(?:([^:]+):\s*)?([a-z-]+)[\s,]+(.+)$/iu.exec(line.trim()) ?? [];
  const word = way.toLowerCase();
  const go = compass.find((one) => one === word) ?? short.get(word);
  const where = `wall ${index + 1}, '${line.trim()}'`;
  if (go === undefined)
    return unread(
      `${where}: which way it goes cannot be told`,
      `write the way and the length: east 14' 2"; ways are ${joinWords(compass)}`,
    );
  const length = parseLength(run.trim());
  if (!length.ok) return unread(`${where}: ${length.why}`, length.fix);
  if (length.value <= 0) return unread(`${where}: a wall has a length`, 'leave it out');
  const name = freshName(given?.trim().toLowerCase() ?? sideOf(go), names);
  return read({ raw: { name, go, run: run.trim() }, walked: { name, go, run: length.value } });
}

function freshName(name: string, taken: Set<string>): string {
  const others = [name, ...Array.from({ length: taken.size + 1 }, (_, i) => `${name}-${i + 2}`)];
  const found = others.find((one) => !taken.has(one)) ?? name;
  taken.add(found);
  return found;
}
