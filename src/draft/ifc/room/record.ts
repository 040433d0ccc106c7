import type { RoomUse } from '../../../core/model/index.js';
import { bounds } from '../../../base/geometry/index.js';
import { openingLine, type DraftOpening } from '../opening/draft.js';
import { quotedText } from '../name.js';
import { ceilingLines } from './ceiling.js';
import { boxKeys, placeFrom, placeKeys, planOf, shapeLines, type RoomPlan } from './plan.js';
import type { Space } from './space.js';
import { flightLine, type Flight } from './stair.js';
import type { Wall } from './wall.js';

/** What stands in a room on a line of its own, and may be left out alone. */
export type Item = DraftOpening | Flight;

/** A room's record, with the items of its lines, which count from 1. */
export interface RoomText {
  readonly text: string;
  readonly items: ReadonlyMap<number, Item>;
}

export interface RoomParts {
  readonly space: Space;
  readonly walls: readonly Wall[];
  readonly level: string;
  readonly openings: readonly DraftOpening[];
  readonly flights: readonly Flight[];
  /** Absent where no word of its name says so. */
  readonly use?: RoomUse;
  /** Where nothing joins the room to the others. */
  readonly place?: { readonly from: Space };
}

/** Throws PartRefused where the space is nothing that a record can hold. */
export function roomText({ space, walls, level, openings, flights, use, place }: RoomParts): RoomText {
  const plan = planOf(space, walls);
  const lines = [
    '---',
    `name: ${quotedText(space.name)}`,
    `number: ${quotedText(space.number)}`,
    `level: ${level}`,
    ...(use ? [`use: ${use}`] : []),
    ...shapeLines(plan),
    ...(place ? [placeLine(plan, place.from)] : []),
    ...voidLines(space, plan),
    ...ceilingLines(space.shape),
  ];
  const items = new Map<number, Item>();
  const list = (key: string, entries: readonly { readonly item: Item; readonly line: string }[]): void => {
    if (entries.length === 0) return;
    lines.push(key);
    for (const { item, line } of entries) {
      lines.push(line);
      items.set(lines.length, item);
    }
  };
  list(
    'openings:',
    openings.flatMap((item) => {
      const line = openingLine(item, space, plan);
      return line === undefined ? [] : [{ item, line }];
    }),
  );
  const ids = new Set(walls.map(({ name }) => name));
  list(
    'features:',
    flights.map((item) => ({ item, line: flightLine(item, plan.origin, ids) })),
  );
  const body = `Drafted from the architect's model, space #${space.entity.id}: to be taped before anything is ordered by it.`;
  return { text: [...lines, '---', '', body, ''].join('\n'), items };
}

function placeLine({ origin }: RoomPlan, from: Space): string {
  const { west, south } = bounds(from.shape.floor.outline);
  return `place: { from: ${from.slug}, ${placeKeys(placeFrom({ x: west, y: south }, origin))} }`;
}

/** What the floor leaves out of its outline, up to the ceiling: a shaft, a column, a stair's well. */
function voidLines({ shape }: Space, { origin }: RoomPlan): readonly string[] {
  const { holes } = shape.floor;
  if (holes.length === 0) return [];
  return [
    'voids:',
    ...holes.map((hole, index) => {
      const places = hole.map((corner) => placeFrom(origin, corner));
      const box = bounds(places);
      const isBox =
        places.length === 4 &&
        places.every(({ x, y }) => (x === box.west || x === box.east) && (y === box.south || y === box.north));
      const keys = isBox ? boxKeys(box) : `outline: [${places.map((place) => `{ ${placeKeys(place)} }`).join(', ')}]`;
      return `  - { name: Hole ${index + 1}, ${keys}, ceiling: open }`;
    }),
  ];
}
