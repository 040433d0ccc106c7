import type { OwnOpening, SeenOpening } from '../../model/index.js';
import { problemAt, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import type { RoomDraft } from '../read-room.js';
import { some, unknown } from './unknown.js';

const rooms = 'Rooms live in content/rooms/';

/** Openings are in walls of their room, lead to known rooms, and are recorded once in the house. */
export function openingReferences(draft: Draft): readonly Problem[] {
  const marks = new Map<string, RoomDraft>();
  return draft.rooms.flatMap((room) =>
    room.openings.flatMap((opening) => {
      if (opening.by === 'seen') return [...wallProblems(opening, room), ...seenProblems(opening, room, draft)];
      const other = marks.get(opening.mark);
      if (!other) marks.set(opening.mark, room);
      const twice = other && other !== room ? [markProblem(opening, room, other)] : [];
      return [...twice, ...wallProblems(opening, room), ...ownProblems(opening, room, draft)];
    }),
  );
}

function markProblem({ mark, path }: OwnOpening, { record }: RoomDraft, other: RoomDraft): Problem {
  const message = `opening ${mark} is recorded in ${other.name} too`;
  const fix = `for the other side of the same opening write { mark: ${mark}, recorded-in: ${other.slug}, wall: …, at: … }`;
  return problemAt(record.origin, [...path, 'mark'], 'mark-duplicate', message, { fix });
}

function wallProblems(
  { mark, wall, path }: OwnOpening | SeenOpening,
  { sides, record }: RoomDraft,
): readonly Problem[] {
  if (!sides) return [];
  const at = [...path, 'wall'];
  const side = sides.find(({ name }) => name === wall);
  if (!side) {
    const among = sides.map(({ name }) => name);
    const message = `opening ${mark} is in a wall '${wall}', which the room does not have`;
    return [
      unknown(record.origin, at, {
        code: 'wall-unknown',
        message,
        name: wall,
        among,
        lives: `Walls here: ${some(among)}`,
      }),
    ];
  }
  if (side.openTo === undefined) return [];
  const message = `opening ${mark} is in '${wall}', where no wall stands: it is open to ${side.openTo}`;
  return [problemAt(record.origin, at, 'wall-open', message, { fix: 'leave the opening out, or the open side' })];
}

function ownProblems({ mark, kind, to, swing, path }: OwnOpening, room: RoomDraft, draft: Draft): readonly Problem[] {
  const { origin } = room.record;
  const problems: Problem[] = [];
  if (to === room.slug) {
    problems.push(
      problemAt(origin, [...path, 'to'], 'opening-to-itself', `opening ${mark} leads to its own room`, {
        fix: 'write the room on the other side, or outside',
      }),
    );
  } else if (to !== 'outside' && !draft.slugs.rooms.has(to)) {
    const message = `opening ${mark} leads to a room '${to}', which there is not`;
    const among = [...draft.slugs.rooms, 'outside'];
    problems.push(unknown(origin, [...path, 'to'], { code: 'room-unknown', message, name: to, among, lives: rooms }));
  } else if (to !== 'outside') {
    const there = draft.roomNamed.get(to);
    // An open way into a room that is open to this one has no wall on the other side to be recorded in.
    const runsOn = kind === 'open' && (there?.sides?.some(({ openTo }) => openTo === room.slug) ?? false);
    if (there?.knowsMarks && !runsOn && !there.marks.has(mark)) {
      const message = `${there.name} does not record the other side of ${mark}, so its wall is measured without it`;
      const fix = `add to ${there.record.origin.file}: { mark: ${mark}, recorded-in: ${room.slug}, wall: …, at: … }`;
      problems.push(problemAt(origin, path, 'opening-one-sided', message, { fix, severity: 'warning' }));
    }
  }
  if (swing !== undefined && swing !== room.slug && swing !== to) {
    const message = `opening ${mark} swings into '${swing}', which is on neither side of it`;
    problems.push(
      unknown(origin, [...path, 'swing'], {
        code: 'swing-unknown',
        message,
        name: swing,
        among: [room.slug, to],
        lives: `It can swing into ${room.slug} or ${to}`,
      }),
    );
  }
  return problems;
}

function seenProblems({ mark, recordedIn, path }: SeenOpening, room: RoomDraft, draft: Draft): readonly Problem[] {
  const { origin } = room.record;
  const at = [...path, 'recorded-in'];
  if (!draft.slugs.rooms.has(recordedIn)) {
    const message = `opening ${mark} is recorded in a room '${recordedIn}', which there is not`;
    return [
      unknown(origin, at, { code: 'room-unknown', message, name: recordedIn, among: draft.slugs.rooms, lives: rooms }),
    ];
  }
  const there = draft.roomNamed.get(recordedIn);
  if (!there?.knowsMarks) return [];
  if (!there.marks.has(mark)) {
    const message = `${there.name} records no opening '${mark}'`;
    const lives = `Openings there: ${some(there.marks)}`;
    return [
      unknown(origin, [...path, 'mark'], { code: 'mark-unknown', message, name: mark, among: there.marks, lives }),
    ];
  }
  const own = there.openings.find((opening) => opening.mark === mark);
  if (!own) return [];
  if (own.by === 'seen') {
    const message = `${there.name} says in its turn that ${mark} is recorded in ${own.recordedIn}`;
    return [problemAt(origin, at, 'opening-unrecorded', message, { fix: 'one of the two rooms gives its size' })];
  }
  if (own.to === room.slug) return [];
  const message = `${there.name} says that ${mark} leads to '${own.to}', not to '${room.slug}'`;
  return [
    problemAt(origin, at, 'opening-elsewhere', message, {
      fix: `write to: ${room.slug} in ${there.record.origin.file}, or leave it out here`,
    }),
  ];
}
