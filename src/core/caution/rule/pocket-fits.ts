import { fromInches, printLength, type Length } from '../../../base/units/index.js';
import { planMarks } from '../../feature/index.js';
import type { OpeningMeasure } from '../../model/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { Finding, Rule } from './rule.js';
import { commonPractice } from './source.js';

/** What a frame takes of the wall past its leaf. Source: makers' sheets say 'twice the door and an inch' for the rough
 *  opening; common practice, from memory. */
const past = fromInches(1);

export const pocketFits: Rule = {
  id: 'pocket-fits',
  title: 'Pocket of a sliding leaf',
  source: commonPractice('the wall beside a pocket door takes the whole leaf and the end of its frame'),
  limits: () => [{ what: 'Wall beside the opening, over the width of the leaf, at least', text: printLength(past) }],
  examples: [
    {
      what: 'A leaf of 2\'-6" that slides toward a corner a foot away',
      sees: '2\'-6" wide, slides left into 1\'-0" of wall',
      rooms: pocket({ slides: 'left' }),
    },
    { what: 'The same leaf the other way', sees: null, rooms: pocket({ slides: 'right' }) },
    {
      what: 'The same leaf 2\'-7" from the corner, at the limit',
      sees: null,
      rooms: pocket({ slides: 'left', at: `2'-7"` }),
    },
    { what: 'A pocket door whose side is not recorded', sees: 'not recorded', rooms: pocket({}) },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.openings
        .filter(({ kind, operation, own }) => kind === 'door' && operation === 'pocket' && own)
        .flatMap((door) => findingOf(house, room, door)),
    ),
};

function findingOf(house: HouseView, room: RoomView, door: OpeningMeasure): readonly Finding[] {
  const { mark, width, slides } = door;
  const seen = slides === undefined ? unknownSide(mark) : tooShort(house, room, door);
  if (seen === undefined) return [];
  return [
    {
      room: room.slug,
      place: mark,
      placeText: `Door ${mark}`,
      selections: [],
      trades: tradesOf(house, isFraming),
      seen,
      says: `The pocket is framed on one side, over the leaf's width of ${printLength(width)} and the end of its frame; the wall holds no stud, box, pipe or niche there.`,
      ask: 'the designer which way it shall slide, and the framer for the sheet of the pocket frame, before the wall is framed',
    },
  ];
}

function unknownSide(mark: string): string {
  return `The side that ${mark} slides to is not recorded (slides: left or right): it is drawn closed.`;
}

function tooShort(house: HouseView, room: RoomView, door: OpeningMeasure): string | undefined {
  const { mark, width, slides } = door;
  const across = house.bySlug.get(door.to);
  const behind = across?.measure.openings.find((one) => one.mark === mark);
  // The wall is the same from both sides: what stands in it on either takes the pocket's place.
  const sides = [beside(room, door), ...(across && behind ? [beside(across, behind)] : [])];
  const free = Math.min(...sides) as Length;
  if (free >= width + past) return undefined;
  return `The leaf of ${mark}, ${printLength(width)} wide, slides ${slides ?? ''} into ${printLength(free)} of wall.`;
}

/** Length of the wall that stands on the pocket's side, up to its end, the next opening or what is let into it. */
function beside({ measure }: RoomView, { mark, wall, at, width, slides }: OpeningMeasure): Length {
  const run = measure.walls.find(({ id }) => id === wall)?.run ?? (0 as Length);
  const recesses = measure.features
    .flatMap((feature) => planMarks(feature))
    .flatMap((each) => (each.role === 'recess' && each.wall === wall ? [each] : []));
  const taken = [
    ...measure.openings
      .filter((other) => other.wall === wall && other.mark !== mark)
      .map((other) => ({ from: other.at, to: other.at + other.width })),
    ...recesses,
  ];
  if (slides === 'left') return (at - Math.max(0, ...taken.filter(({ to }) => to <= at).map(({ to }) => to))) as Length;
  const end = at + width;
  return (Math.min(run, ...taken.filter(({ from }) => from >= end).map(({ from }) => from)) - end) as Length;
}

/** A door of 2'-6" in a wall of ten feet, a foot from its left end unless said otherwise. */
function pocket(door: Pick<OpeningMeasure, 'slides'> & { readonly at?: string }) {
  return { hall: { openings: { D1: { operation: 'pocket' as const, ...door } } } };
}
