import { carries } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { selectionsAt } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { joinWords, sideWords } from '../words.js';
import { acrossFrom } from './doors.js';
import type { ExampleRooms } from './example.js';
import type { Finding, Rule } from './rule.js';
import { areCeilingsRunningOn, wallsRunningOn } from './running-on.js';
import { commonPractice } from './source.js';

export const textureBetweenRooms: Rule = {
  id: 'texture-between-rooms',
  title: 'Textures of rooms that are open to one another',
  source: commonPractice('a texture ends at a corner or a bead'),
  limits: () => [
    {
      what: 'Walls, and ceilings where no wall stands',
      text: 'one texture, or a place where it ends: a corner, a step, casing',
    },
  ],
  examples: [
    {
      what: 'A hand-troweled wall that runs through an opening without casing into a smooth one',
      sees: 'Hand trowel against Smooth',
      rooms: throughOpening('Hand trowel', 'Smooth'),
    },
    {
      what: 'The same texture on both sides of the opening',
      sees: null,
      rooms: throughOpening('Hand trowel', 'Hand trowel'),
    },
  ],
  find: (house) => house.rooms.flatMap((room) => [...throughOpenings(house, room), ...overOpenSides(house, room)]),
};

const isTexture = ({ category }: SelectionView): boolean =>
  carries(category, 'texture', 'level') && carries(category, 'texture', 'applied');

/** Openings without casing: one wall runs into the other. Windows, doors and cased openings have trim between. */
function throughOpenings(house: HouseView, room: RoomView): readonly Finding[] {
  return room.measure.openings.flatMap((opening) => {
    const across = acrossFrom(house, opening);
    if (!opening.own || opening.kind !== 'open' || !across) return [];
    const pair = [at(room, [opening.wall]), at(across.room, [across.wall])] as const;
    return differ(room, across.room, { place: opening.mark, placeText: `Opening ${opening.mark}` }, [
      ['walls', ...pair],
    ]);
  });
}

/** Where the layout shows how two rooms stand: only what meets in one plane, for a corner, a step and a fold are places where a texture ends. */
function overOpenSides(house: HouseView, room: RoomView): readonly Finding[] {
  return room.measure.walls.flatMap((side) => {
    const { id, name, openTo } = side;
    const beside = openTo === undefined ? undefined : house.bySlug.get(openTo);
    if (!beside || room.slug > beside.slug) return [];
    const meeting = wallsRunningOn(house, room, side, beside)?.map(({ here, there }) => [[here], [there]] as const);
    const walls = (meeting ?? [[wallsOf(room), wallsOf(beside)] as const]).map(
      ([here, there]) => ['walls', at(room, here), at(beside, there)] as const,
    );
    const areOne = areCeilingsRunningOn(house, room, side, beside);
    const ceilings = areOne ? [['ceilings', ceilingOf(room), ceilingOf(beside)] as const] : [];
    return differ(room, beside, { place: id, placeText: sideWords(name, beside.name) }, [...walls, ...ceilings]);
  });
}

function differ(
  room: RoomView,
  beside: RoomView,
  where: Pick<Finding, 'place' | 'placeText'>,
  kinds: readonly (readonly [string, readonly Textured[], readonly Textured[]])[],
): readonly Finding[] {
  const unlike = kinds.filter(([, here, there]) => here.length > 0 && there.length > 0 && names(here) !== names(there));
  if (unlike.length === 0) return [];
  const both = unlike.flatMap(([, here, there]) => [...here, ...there]);
  return [
    {
      room: room.slug,
      ...where,
      selections: [...new Set(both.map(({ selection }) => selection.id))],
      trades: [...new Set(both.map(({ selection }) => selection.category.trade))],
      seen: [
        ...new Set(
          unlike.map(
            ([kind, here, there]) =>
              `${room.name} and ${beside.name}, ${kind}: ${names(here)} against ${names(there)}.`,
          ),
        ),
      ].join(' '),
      says: 'Where no door or casing parts two rooms, a change of texture shows as a mistake unless it ends at a corner, a bead or a beam.',
      ask: 'the designer where it ends, and the drywall foreman before the first coat',
    },
  ];
}

interface Textured {
  readonly selection: SelectionView;
  readonly option: Option;
}

function at(room: RoomView, places: readonly string[]): readonly Textured[] {
  const selections = new Set(places.flatMap((place) => selectionsAt(room, place).filter(isTexture)));
  return [...selections].flatMap((selection) => (selection.counted ? [{ selection, option: selection.counted }] : []));
}

/** None where a finish covers the ceiling's texture, as boards do. */
function ceilingOf(room: RoomView): readonly Textured[] {
  const covered = selectionsAt(room, 'ceiling').some(
    ({ category, counted }) => counted && category.layer === 'finish' && category.schedule === 'ceiling',
  );
  return covered ? [] : at(room, ['ceiling']);
}

function wallsOf({ measure }: RoomView): readonly string[] {
  return measure.walls.filter(({ openTo }) => openTo === undefined).map(({ id }) => id);
}

function names(textured: readonly Textured[]): string {
  return joinWords([...new Set(textured.map(({ option }) => option.name))].sort());
}

function throughOpening(here: string, there: string): ExampleRooms {
  const facts = { level: 4, applied: 'by hand' };
  const texture = (name: string) => [{ of: 'texture', at: 'north', facts, option: { name } }] as const;
  return {
    hall: { openings: { O1: { kind: 'open', to: 'study' } }, selections: texture(here) },
    study: { selections: texture(there) },
  };
}
