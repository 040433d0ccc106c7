import { carries, factOf } from '../../fact/index.js';
import { stairOf, timberOf } from '../../feature/index.js';
import type { Category } from '../../model/index.js';
import { isOn, leafFaces, timberFaces, treadFaces, trimFaces, type Takeoff } from '../../takeoff/index.js';
import { feet, printLength, type Area, type Length, printQuantity } from '../../../base/units/index.js';
import type { BookOption, BookRoom, BookSelection } from '../book.js';
import type { PaintRow } from './schedule.js';
import { optionOf, standingOf, takeoffOf } from './scheduled.js';
import type { Unscheduled } from './unscheduled.js';

/** What is coated of one selection, with the slug of its paint; a paint that is selected itself names none. */
interface Coated {
  readonly surface: string;
  readonly area: number;
  readonly why: string;
  readonly paint: string | undefined;
}

const practice = 'common practice, no source';

/** Paint by room, surface and sheen: surfaces by their paint, and trim, doors, stair parts and timber by the paint that their option
 *  names. An open choice stands at its standard. */
export function paintSchedule(look: Unscheduled): readonly PaintRow[] {
  return look.book.rooms.flatMap((room) =>
    look.selectionsOf(room).flatMap((selection) => {
      const option = optionOf(selection, look);
      const category = look.category(selection.category);
      if (!option || !category) return [];
      return coatedOf(selection, option, category, room)
        .filter(({ area }) => area > 0)
        .flatMap((coated) => rowOf(coated, { selection, option, room: room.slug }, look) ?? []);
    }),
  );
}

function rowOf(
  { surface, area, why, paint: slug }: Coated,
  { selection, option, room }: { selection: BookSelection; option: BookOption; room: string },
  { book, category }: Unscheduled,
): PaintRow | undefined {
  const paint =
    slug === undefined
      ? option
      : book.options.find((each) => each.slug === slug && carries(category(each.category), 'paint', 'sheen'));
  if (!paint) return undefined;
  const coats = factOf(paint, 'paint', 'coats') ?? 1;
  const spread = factOf(paint, 'paint', 'coverage');
  return {
    room,
    surface,
    placeText: selection.placeText,
    selection: selection.id,
    standing: standingOf(selection),
    paint: paint.id,
    name: paint.name,
    sheen: factOf(paint, 'paint', 'sheen') ?? '',
    area: area as Area,
    coats,
    ...(spread !== undefined && spread > 0 && { gallons: (area * coats) / spread }),
    why,
  };
}

function coatedOf(
  selection: BookSelection,
  option: BookOption,
  category: Pick<Category, 'attributes' | 'measure' | 'schedule' | 'name'>,
  room: BookRoom,
): readonly Coated[] {
  const { takeoff } = takeoffOf(selection);
  if (carries(category, 'paint', 'sheen')) return surfacesOf(takeoff);
  const paint = factOf(option, 'coated', 'coating');
  if (category.measure.by === 'stair') return stairParts(selection, option, paint, room);
  if (paint === undefined) return [];
  const name = category.name;
  if (carries(category, 'door', 'leaf')) return [{ surface: name, paint, ...leaves(selection, option, room) }];
  if (carries(category, 'timber', 'structural')) return [{ surface: name, paint, ...timbers(selection, room) }];
  if (category.measure.by !== 'run') return [];
  return [{ surface: name, paint, ...trim(takeoff, option, category.schedule === 'base' ? 1 : 2) }];
}

/** Walls, and ceilings apart. */
function surfacesOf(takeoff: readonly Takeoff[]): readonly Coated[] {
  const places = takeoff.flatMap((one) => one.places);
  const sides = [
    { surface: 'Walls', own: places.filter(({ place }) => place !== 'ceiling') },
    { surface: 'Ceiling', own: places.filter(({ place }) => place === 'ceiling') },
  ];
  const why = takeoff[0]?.rule ?? '';
  return sides.map(({ surface, own }) => ({
    surface,
    area: own.reduce((sum, { net }) => sum + net, 0),
    why,
    paint: undefined,
  }));
}

type Figured = Pick<Coated, 'area' | 'why'>;

function trim(takeoff: readonly Takeoff[], option: BookOption, edges: 1 | 2): Figured {
  const run = takeoff.filter(({ unit }) => unit === 'lin ft').reduce((sum, { net }) => sum + net, 0);
  const face = factOf(option, 'coated', edges === 1 ? 'height' : 'face');
  const thickness = factOf(option, 'coated', 'stock-thickness') ?? option.thickness ?? (0 as Length);
  if (face === undefined) return { area: 0, why: '' };
  const seen = `${printLength(face)} and ${edges === 1 ? 'the top edge' : 'both edges'} of ${printLength(thickness)}`;
  return {
    area: trimFaces(run, { face, thickness, edges }),
    why: `${printQuantity(run, 'lin ft')}, ${seen}; a profile is taken as flat; ${practice}`,
  };
}

/** Doors in the room that records them, both faces: a leaf has one paint. */
function leaves(selection: BookSelection, option: BookOption, { measure }: BookRoom): Figured {
  const thickness = factOf(option, 'door', 'leaf') ?? (0 as Length);
  const own = measure.openings.filter(({ mark, own: isOwn }) => isOwn && isAt(selection, mark));
  const pieces = own.map(({ operation, ...size }) => leafFaces(size, thickness, operation === 'double' ? 2 : 1));
  return {
    area: pieces.reduce((sum, area) => sum + area, 0),
    why: `both faces and the edges of ${printLength(thickness)}; panels and glass are taken as flat; ${practice}`,
  };
}

function timbers(selection: BookSelection, { measure }: BookRoom): Figured {
  const own = measure.features.flatMap((feature) => {
    const timber = isAt(selection, feature.id) ? timberOf(feature) : undefined;
    return timber ? [{ name: feature.name, ...timber }] : [];
  });
  return {
    area: own.reduce(
      (sum, { count, length, sides, ...section }) => sum + timberFaces(section, (length * count) as Length, sides),
      0,
    ),
    why: own
      .map(
        ({ name, count, length, width, depth, sides }) =>
          `${name}: ${sides} sides of ${printLength(width)} × ${printLength(depth)} along ${printQuantity(feet(length) * count, 'ft')}`,
      )
      .join('; '),
  };
}

function stairParts(
  selection: BookSelection,
  option: BookOption,
  paint: string | undefined,
  { measure }: BookRoom,
): readonly Coated[] {
  const onRisers = factOf(option, 'coated', 'riser-coating');
  const [thickness, nosing] = [factOf(option, 'coated', 'tread'), factOf(option, 'coated', 'nosing')];
  const isOpen = factOf(option, 'coated', 'form') === 'open stringer';
  return measure.features.flatMap((feature): Coated[] => {
    const stair = isAt(selection, feature.id) ? stairOf(feature) : undefined;
    if (!stair) return [];
    const { rise, risers, going, width } = stair;
    const treads = treadFaces(risers - 1, {
      width,
      going,
      nosing: nosing ?? (0 as Length),
      thickness: thickness ?? (0 as Length),
      isOpen,
    });
    const both = isOpen ? 'top, bottom and both edges' : 'top and front edge';
    return [
      ...(paint === undefined
        ? []
        : [
            {
              surface: 'Treads',
              paint,
              area: treads,
              why: `${risers - 1} treads, ${both}, ${printLength(width)} wide`,
            },
          ]),
      ...(onRisers === undefined || isOpen
        ? []
        : [
            {
              surface: 'Risers',
              paint: onRisers,
              area: feet(rise) * feet(width),
              why: `${printLength(rise)} of rise × ${printLength(width)}`,
            },
          ]),
    ];
  });
}

const isAt = ({ places }: BookSelection, id: string): boolean => places.some((place) => isOn(id, place.id));
