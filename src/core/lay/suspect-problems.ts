import { lengthOf } from '../../base/geometry/index.js';
import { feet, joinWords, printLength } from '../../base/units/index.js';
import { problemAt, type Path, type Problem } from '../../base/problem/index.js';
import { disagreementsOf } from './disagree.js';
import { fitOf, type Fit } from './fit.js';
import type { LayRoom } from './laid-room.js';
import type { Laying } from './lay-rooms.js';
import { findSuspects, isSameTape, named, withTape, type Suspect } from './suspect.js';
import { inText, sidePath, theWall } from './words.js';

/** So many wrong tapes are looked for at most: each with the likeliest of those before it put right. */
const rounds = 3;

/** Tapes that would explain what does not fit, each at its own line; who reads one reads which others are as likely, and whether the house fits
 *  with it. What is left then is looked at in its turn. */
export function suspectProblems(laying: Laying, fit: Fit, disagreeing: readonly Problem[]): readonly Problem[] {
  let told: readonly Told[] = [];
  const mended: Suspect[] = [];
  let here = { laying, fit, left: disagreeing };
  while (mended.length < rounds && here.left.length > 0) {
    const suspects = findSuspects(here.laying, here.fit);
    const [first, ...others] = suspects;
    if (!first || mended.some(({ tape }) => isSameTape(tape, first.tape))) break;
    const next = stateWith(here.laying, first);
    // What one more tape does not explain, it is not blamed for.
    if (!next || (mended.length > 0 && next.left.length >= here.left.length)) break;
    const after = [next, ...others.slice(0, named - 1).map((suspect) => stateWith(here.laying, suspect))];
    const now = roundProblems(suspects, here.left, mended, (index) => after[index]?.left.length === 0);
    // A tape that is as likely in one round and found in the next is told by the latter, which knows better by how much.
    told = [...told.filter(({ suspect }) => !now.some((one) => isSameTape(one.suspect.tape, suspect.tape))), ...now];
    mended.push(first);
    here = next;
  }
  return told.map(({ problem }) => problem);
}

interface Told {
  readonly suspect: Suspect;
  readonly problem: Problem;
}

function stateWith(
  laying: Laying,
  { tape, by }: Suspect,
): { laying: Laying; fit: Fit; left: readonly Problem[] } | undefined {
  const changed = withTape(laying, tape, by);
  if (!changed) return undefined;
  const fit = fitOf(changed);
  return { laying: changed, fit, left: disagreementsOf(changed, fit) };
}

function roundProblems(
  suspects: readonly Suspect[],
  left: readonly Problem[],
  mended: readonly Suspect[],
  fits: (index: number) => boolean,
): readonly Told[] {
  const severity = left.every((problem) => problem.severity === 'notice') ? 'notice' : 'warning';
  const more = suspects.length - named;
  const before = mended.map((suspect) => describe(suspect).what);
  const mending = before.length === 0 ? 'that' : `${joinWords([...before, 'that'])} put right`;
  const described = suspects.slice(0, named).map((suspect) => ({ suspect, ...describe(suspect) }));
  return described.map((one, index) => {
    const others = described
      .filter((other) => other !== one)
      .map(({ what, room, path }) => `${what} (${room.record.origin.file}:${room.record.origin.at(path).line})`);
    const all = more > 0 ? [...others, `${more} more`] : others;
    const fix =
      all.length === 0
        ? 'measure it again'
        : `measure it again; ${all.length === 1 ? 'as likely is' : 'as likely are'} ${joinWords(all)}`;
    const message = `${one.words}: with ${mending}, the house fits${fits(index) ? '' : ' better'}`;
    const problem = problemAt(one.room.record.origin, one.path, 'tape-suspect', message, { fix, severity });
    return { suspect: one.suspect, problem };
  });
}

interface Described {
  readonly room: LayRoom;
  readonly path: Path;
  /** The tape, and what it may be instead. */
  readonly what: string;
  readonly words: string;
}

function describe({ tape, by }: Suspect): Described {
  const { room } = tape;
  if (tape.of === 'side') {
    const what = theWall(tape.side, room);
    const words = `${what} may stand ${inText(Math.abs(by))} farther ${by > 0 ? 'out' : 'in'}`;
    return { room, path: sidePath(tape.side, room), what, words };
  }
  if (tape.of === 'place') {
    const what = `${tape.way} in the place of ${room.record.name}`;
    const { place } = room.record;
    const at = lengthOf((place ? feet(place.at[tape.way]) : 0) + by);
    return { room, path: ['place', tape.way], what, words: `${what} may be ${printLength(at)}` };
  }
  const opening = room.measure.openings.find(({ mark }) => mark === tape.mark);
  const path = [...(opening?.record.path ?? []), 'at'];
  const what = `${tape.mark} in ${room.record.name}`;
  const at = lengthOf((opening ? feet(opening.at) : 0) + by);
  return { room, path, what, words: `${what} may lie at ${printLength(at)}` };
}
