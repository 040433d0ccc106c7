import type { BookRoom, BookSelection } from '../book/index.js';
import type { OpeningMeasure, RoomMeasure } from '../model/index.js';
import { printArea, printAreaMetric, printLength, printMetric } from '../units/index.js';
import type { Area, Length } from '../units/index.js';
import type { HandoutOpening, HandoutPlace, HandoutRoom } from './handout.js';
import { drawingsOf } from './room-drawings.js';
import { onlyTrades } from './marks.js';
import { placeOf } from './places.js';
import { shapeOf } from './shape.js';
import { sieve } from './sieve.js';
import type { Work } from './work.js';

/** The rooms that a trade works in, in order of work: by the first kind of work in each, then by number. */
export function rooms(work: Work): readonly HandoutRoom[] {
  const { look } = work;
  const first = (room: BookRoom): number =>
    Math.min(...selectionsIn(room, work).map(({ category }) => look.category(category)?.sequence ?? 0));
  return look.book.rooms
    .filter((room) => selectionsIn(room, work).length > 0)
    .toSorted((a, b) => first(a) - first(b))
    .map((room) => roomOf(room, work));
}

function selectionsIn(room: BookRoom, { selections }: Work): readonly BookSelection[] {
  return selections.filter((selection) => selection.room === room.slug);
}

function roomOf(room: BookRoom, work: Work): HandoutRoom {
  const { look } = work;
  const selections = selectionsIn(room, work);
  const places = new Set(selections.flatMap((selection) => selection.places.map(({ id }) => id)));
  return {
    slug: room.slug,
    number: room.number,
    name: room.name,
    level: look.levelName(room.level),
    notes: sieve(onlyTrades(room.body)),
    facts: factsOf(room.measure, work),
    places: sayOnce(selections.map((selection) => placeOf(selection, work))),
    openings: room.measure.openings
      .filter(({ mark, wall }) => places.has(mark) || places.has(wall))
      .map((opening) => openingOf(opening, room, work, places.has(opening.mark))),
    drawings: drawingsOf(room, selections, places, work),
    shape: shapeOf(room.measure),
  };
}

function factsOf(measure: RoomMeasure, { look }: Work): HandoutRoom['facts'] {
  const { floor, ceiling, walls, wallRun, lowest, highest } = measure;
  const net = walls.filter(({ openTo }) => openTo === undefined).reduce((sum, wall) => sum + wall.net, 0) as Area;
  const metric = look.book.house.metric === 'beside';
  const area = (label: string, value: Area) => ({
    label,
    text: printArea(value),
    ...(metric && { metric: printAreaMetric(value) }),
  });
  const length = (label: string, value: Length) => ({
    label,
    text: printLength(value),
    ...(metric && { metric: printMetric(value) }),
  });
  const level = lowest === highest;
  return [
    level
      ? length('Ceiling height', highest)
      : { label: 'Ceiling height', text: `${printLength(lowest)} to ${printLength(highest)}` },
    area('Floor', floor.net),
    area(level ? 'Ceiling' : 'Ceiling, on the slope', ceiling.net),
    area('Walls less openings', net),
    length('Wall run', wallRun),
  ];
}

/** What the trade leaves for others is said once in a room, at the first place that it belongs to. */
function sayOnce(places: readonly HandoutPlace[]): readonly HandoutPlace[] {
  const said = new Set<string>();
  return places.map((place) => ({
    ...place,
    leaves: place.leaves.filter(({ what, for: other }) => {
      const key = `${what} ${other}`;
      return !said.has(key) && said.add(key);
    }),
  }));
}

/** `own`: the trade works at the opening itself, not only on the wall around it; the plan says the rest. */
function openingOf(opening: OpeningMeasure, room: BookRoom, { look }: Work, own: boolean): HandoutOpening {
  const { mark, kind, wall, at, width, height, sill, to, record } = opening;
  const wallName = room.measure.walls.find(({ id }) => id === wall)?.name ?? wall;
  const raised = sill === 0 ? '' : `, sill ${printLength(sill)}`;
  return {
    mark,
    kind: { door: 'Door', window: 'Window', cased: 'Cased opening', open: 'Opening' }[kind],
    at: own ? `${wallName}, ${printLength(at)} from the left` : wallName,
    to: to === 'outside' ? 'Outside' : look.roomTitle(to),
    size: `${printLength(width)} × ${printLength(height)}${raised}`,
    action: own ? actionText(opening, room, look.roomTitle) : '',
    note: record.by === 'own' ? sieve(record.note ?? '') : '',
  };
}

/** How a door moves, said from facts: side of the hinges as seen from this room, and the room that it swings into. */
function actionText(opening: OpeningMeasure, room: BookRoom, titleOf: (slug: string) => string): string {
  if (opening.kind !== 'door') return '';
  if (opening.operation === 'pocket' || opening.operation === 'sliding') return opening.operation;
  const swing = opening.swing === 'outside' ? 'outside' : opening.swing && titleOf(opening.swing);
  return [
    opening.operation === 'double' ? 'double' : '',
    opening.hinge === undefined ? '' : `hinges ${opening.hinge} seen from ${room.number}`,
    swing === undefined ? '' : `swings into ${swing}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
