import type { Model } from '../model.js';
import { draftOpenings, holeTitle, marker, type DraftOpening, type Question } from '../opening/draft.js';
import type { Hole } from '../opening/hole.js';
import { isInLine } from '../opening/place.js';
import { thicknessLines } from '../opening/thickness.js';
import { attempt } from '../refused.js';
import { useNamed } from '../../record/use.js';
import { asksOf } from './ask.js';
import { apartFrom } from './joined.js';
import { levelsOf, type DraftLevel } from './level.js';
import { proveRooms, type Drafted } from './prove-rooms.js';
import type { Taken } from './read-spaces.js';
import { roomText, type RoomText } from './record.js';
import type { Space } from './space.js';
import { readFlights } from './stair.js';
import type { Turn } from './turn.js';
import { wallsOf, type Wall } from './wall.js';

export interface DraftRooms {
  readonly levels: readonly DraftLevel[];
  readonly texts: ReadonlyMap<Space, string>;
  readonly asks: ReadonlyMap<Space, readonly string[]>;
  readonly leftOut: ReadonlyMap<Space, string>;
  /** Of the model as a whole. */
  readonly told: readonly string[];
}

interface Given {
  readonly spaces: readonly Space[];
  readonly holes: readonly Hole[];
  readonly turn: Turn;
}

/** Drafts that do not hold together after so many tries are left out. */
const mostTries = 12;

/** Drafts every space, and reads and measures the drafts as records are. What is an error there is left out, an opening or a flight alone if
 *  it is the cause, and so is a room whose volume is not its body's; then the rest is drafted again without it. */
export function draftRooms(model: Model, { spaces, holes, turn }: Given, taken: Taken): DraftRooms {
  const levels = levelsOf(spaces, taken);
  const leftOut = new Map<Space, string>();
  for (const space of spaces) {
    const why = stairThrough(space, levels);
    if (why !== undefined) leftOut.set(space, why);
  }
  const dropped = new Map<number, Question>();
  for (let tries = 1; ; tries += 1) {
    const kept = spaces.filter((space) => !leftOut.has(space));
    const given = { spaces: kept, holes: holes.filter(({ entity }) => !dropped.has(entity.id)), turn };
    const draft = draftOnce(model, given, { levels, taken, dropped });
    const wrong = draft.refused.size > 0 ? { rooms: draft.refused, items: [] } : proveRooms(draft.drafted, levels);
    if (wrong.rooms.size === 0 && wrong.items.length === 0) {
      const texts = new Map(draft.drafted.map(({ space, record }) => [space, record.text]));
      const questions = [...draft.questions, ...dropped.values()];
      const asks = new Map(draft.drafted.map((room) => [room.space, asksOf(room, { levels, questions })]));
      return { levels, texts, asks, leftOut, told: draft.told };
    }
    for (const { item, why } of wrong.items) {
      const space = 'hole' in item ? item.own.space : item.space;
      const what = 'hole' in item ? holeTitle(item.hole) : `stair flight #${item.entity.id}`;
      dropped.set('hole' in item ? item.hole.entity.id : item.entity.id, {
        space,
        asks: `${what} is left out: ${why}`,
      });
    }
    for (const [space, why] of wrong.rooms) leftOut.set(space, why);
    if (tries < mostTries) continue;
    for (const space of kept) if (!leftOut.has(space)) leftOut.set(space, 'the rooms drafted do not hold together');
  }
}

/** A stair that goes on through the level above is two rooms of a house, which no space tells apart. */
function stairThrough({ name, storey, shape }: Space, levels: readonly DraftLevel[]): string | undefined {
  if (useNamed(name) !== 'stair') return undefined;
  const above = levels.find(({ floor }) => floor > shape.height + 1);
  if (!above || shape.top < above.floor + 1) return undefined;
  return `it is a stair from ${storey.name} through ${above.storey.name}: record it by hand, its well as open-above`;
}

interface Once {
  readonly drafted: readonly Drafted[];
  readonly refused: ReadonlyMap<Space, string>;
  readonly questions: readonly Question[];
  readonly told: readonly string[];
}

function draftOnce(
  model: Model,
  { spaces, holes, turn }: Given,
  context: {
    readonly levels: readonly DraftLevel[];
    readonly taken: Taken;
    readonly dropped: ReadonlyMap<number, Question>;
  },
): Once {
  const walls = wallsOf(spaces, (from, to) => holes.some((hole) => isInLine(hole, from, to)));
  const markOf = marker(holes, new Set(context.taken.marks));
  const { openings, questions, nowhere } = draftOpenings(holes, walls, markOf);
  const { flights, told } = readFlights(model, spaces, turn);
  const places = apartFrom(spaces, walls, openings);
  const refused = new Map<Space, string>();
  const drafted = spaces.flatMap((space): Drafted[] => {
    const level = context.levels.find(({ storey }) => storey.id === space.storey.id)?.id ?? '';
    const from = places.get(space);
    const use = useNamed(space.name);
    const parts = {
      space,
      level,
      walls: walls.get(space) as readonly Wall[],
      openings: openings.filter((opening) => isIn(opening, space)),
      flights: flights.filter((flight) => flight.space === space && !context.dropped.has(flight.entity.id)),
      ...(from && { place: { from } }),
    };
    const record = attempt((): RoomText => roomText({ ...parts, ...(use && { use }) }));
    const proof = attempt((): RoomText => roomText({ ...parts, use: use ?? 'utility' }));
    if ('value' in record && 'value' in proof) return [{ ...parts, record: record.value, proof: proof.value }];
    refused.set(space, 'why' in record ? record.why : '');
    return [];
  });
  return {
    drafted,
    refused,
    questions,
    told: [
      ...thicknessLines(openings),
      ...nowhere.map((hole) => `${holeTitle(hole)} is in no wall of a room that is drafted`),
      ...told,
    ],
  };
}

function isIn({ own, other }: DraftOpening, space: Space): boolean {
  return own.space === space || other?.space === space;
}
