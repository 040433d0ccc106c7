import type { BookRoom } from '../core/book/index.js';
import { isDownToFloor, type OpeningMeasure } from '../core/model/index.js';
import { ref } from '../sheet/index.js';
import { fromOtherSide, otherSideWords } from '../table/index.js';
import type { Area, Length } from '../base/units/index.js';
import type { HandoutOpening, HandoutPlace, HandoutRoom } from './handout.js';
import { drawingsOf } from './room-drawings.js';
import { onlyTrades } from '../core/records/index.js';
import { area, areaBeside, joined, length, lengthBeside, own, shape, told, type Own } from './own.js';
import { placeOf } from './places.js';
import { shapeOf } from './shape.js';
import { sieve, sieveName } from './sieve.js';
import type { Work } from './work.js';

/** The rooms that a trade works in, in order of work: by the first kind of work in each, then by number. */
export function rooms(work: Work): readonly HandoutRoom[] {
  const { look, ownIn } = work;
  const first = ({ slug }: BookRoom): number =>
    Math.min(...ownIn(slug).map(({ category }) => look.category(category)?.sequence ?? 0));
  return look.book.rooms
    .filter(({ slug }) => ownIn(slug).length > 0)
    .toSorted((a, b) => first(a) - first(b))
    .map((room) => roomOf(room, work));
}

function roomOf(room: BookRoom, work: Work): HandoutRoom {
  const { look } = work;
  const selections = work.ownIn(room.slug);
  const places = new Set(selections.flatMap((selection) => selection.places.map(({ id }) => id)));
  return {
    slug: ref(room.slug),
    number: sieveName(room.number),
    name: sieveName(room.name),
    level: sieveName(look.levelName(room.level)),
    notes: sieve(onlyTrades(room.body)),
    facts: factsOf(room, work),
    places: sayOnce(selections.map((selection) => placeOf(selection, work))),
    openings: room.measure.openings
      .filter(({ mark, wall }) => places.has(mark) || places.has(wall))
      .map((opening) => openingOf(opening, room, work, places.has(opening.mark))),
    drawings: drawingsOf(room, selections, places, work),
    shape: shapeOf(room.measure),
  };
}

function factsOf(room: BookRoom, { look }: Work): HandoutRoom['facts'] {
  const { floor, ceiling, walls, wallRun, lowest, highest } = room.measure;
  const others = fromOtherSide(room, look);
  const net = walls.filter(({ openTo }) => openTo === undefined).reduce((sum, wall) => sum + wall.net, 0) as Area;
  const { beside } = look.book.house;
  const ofArea = (label: Own, value: Area) => ({
    label,
    text: area(value),
    ...(beside && { beside: areaBeside(value) }),
  });
  const ofLength = (label: Own, value: Length) => ({
    label,
    text: length(value),
    ...(beside && { beside: lengthBeside(value) }),
  });
  const level = lowest === highest;
  return [
    level
      ? ofLength(own('Ceiling height'), highest)
      : { label: own('Ceiling height'), text: told`${length(lowest)} to ${length(highest)}` },
    ofArea(own('Floor'), floor.net),
    ofArea(level ? own('Ceiling') : own('Ceiling, on the slope'), ceiling.net),
    ofArea(own('Walls less openings'), net),
    ofLength(own('Wall run'), wallRun),
    ...(others.length > 0 ? [{ label: own('Insulated for sound'), text: sieve(otherSideWords(others)) }] : []),
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

/** `isOwn`: the trade works at the opening itself, not only on the wall around it; the plan says the rest. */
function openingOf(opening: OpeningMeasure, room: BookRoom, { look }: Work, isOwn: boolean): HandoutOpening {
  const { mark, kind, wall, at, width, height, sill, to, record } = opening;
  const shaped = opening.shape ? told`, ${shape(opening)}` : own('');
  const wallName = sieveName(room.measure.walls.find(({ id }) => id === wall)?.name ?? wall);
  const raised = isDownToFloor(opening) ? own('') : told`, sill ${length(sill)}`;
  return {
    mark: sieveName(mark),
    kind: kinds[kind],
    at: isOwn ? told`${wallName}, ${length(at)} from the left` : wallName,
    to: to === 'outside' ? own('Outside') : sieveName(look.roomTitle(to)),
    size: told`${length(width)} × ${length(height)}${shaped}${raised}`,
    action: isOwn ? actionOf(opening, room, look.roomTitle) : own(''),
    note: record.by === 'own' ? sieve(record.note ?? '') : sieve(''),
  };
}

const kinds = { door: own('Door'), window: own('Window'), cased: own('Cased opening'), open: own('Opening') } as const;
const sides = { left: own('left'), right: own('right') } as const;

/** How a door moves, said from facts: side of the hinges as seen from this room, and the room that it swings into. */
function actionOf(opening: OpeningMeasure, room: BookRoom, titleOf: (slug: string) => string): Own {
  if (opening.kind !== 'door') return own('');
  const { hinge, slides, swing } = opening;
  if (opening.operation === 'pocket')
    return slides ? told`pocket, slides ${sides[slides]} seen from ${sieveName(room.number)}` : own('pocket');
  if (opening.operation === 'sliding') return own('sliding');
  return joined(
    [
      opening.operation === 'double' ? own('double') : own(''),
      hinge === undefined ? own('') : told`hinges ${sides[hinge]} seen from ${sieveName(room.number)}`,
      swing === undefined
        ? own('')
        : swing === 'outside'
          ? own('swings outside')
          : told`swings into ${sieveName(titleOf(swing))}`,
    ],
    ', ',
  );
}
