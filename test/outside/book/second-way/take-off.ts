import { productOf, type Choice } from './choice.js';
import type { Cut, Face } from './face.js';
import { breastCorners } from './feature.js';
import { outsidePart, outsideWalls, underRoof } from './laid.js';
import { figuresOf, type RoomFigures } from './measure.js';
import { feetOf, groupOf, listOf, numberOf, shareOf, sum, text, type Fields } from './paper.js';
import type { Drawn, Opening } from './room.js';

/** What a selection takes of one part of an option. */
export interface Taken {
  readonly net: number;
  readonly required: number;
  /** What is covered with all parts together: lath and mortar go by it. */
  readonly covered: number;
  readonly unit: string;
}

const kept = new Map<string, RoomFigures>();

export function figures(room: Drawn): RoomFigures {
  const found = kept.get(room.slug) ?? figuresOf(room);
  kept.set(room.slug, found);
  return found;
}

/** Ways of measuring that have a second way here. */
export function isWorked({ rule }: Choice): boolean {
  return ['area', 'run', 'each', 'stair', 'stone'].includes(text(rule['by']));
}

/** By part. `all` are the selections of the house: a wall between two rooms may be another's. */
export function takenBy(choice: Choice, slug: string, all: readonly Choice[]): ReadonlyMap<string, Taken> {
  const option = productOf(choice.category, slug);
  const nets = netsOf(choice, option, all);
  return new Map(
    Object.entries(nets).map(([part, { net, covered }]) => [part, taken(choice, option, part, net, covered)]),
  );
}

function taken(choice: Choice, option: Fields, part: string, net: number, covered: number): Taken {
  const { material, ...priced } = partOf(option, part);
  const unit = text(material).split(' / ')[1] ?? '';
  const waste = shareOf(choice.record['waste'] ?? priced['waste']);
  const needed = net * (unit === 'sq ft' ? timesOf(choice, option) : 1) * (1 + waste);
  return { net, covered, unit, required: unit === 'each' ? Math.ceil(needed - 1e-6) : needed };
}

/** A part as the option prices it; one with a single part says all of it outright. */
export function partOf(option: Fields, part: string): Fields {
  const parts = groupOf(option['parts'])[part];
  if (parts !== undefined) return groupOf(parts);
  return { ...groupOf(option['price']), waste: option['waste'], pack: option['pack'] };
}

function timesOf({ rule }: Choice, option: Fields): number {
  const by = rule['times-by'];
  const own = by === undefined ? undefined : groupOf(option['attributes'])[text(by)];
  return Number(own ?? rule['times'] ?? 1);
}

type Nets = Readonly<Record<string, { readonly net: number; readonly covered: number }>>;
const one = (net: number): Nets[string] => ({ net, covered: net });

function netsOf(choice: Choice, option: Fields, all: readonly Choice[]): Nets {
  const { room, rule, record } = choice;
  switch (rule['by']) {
    case 'area':
      return { main: one(sum(placesOf(choice).map((place) => areaAt(choice, place, all)))) };
    case 'run':
      return { main: one(sum(placesOf(choice).map((place) => runAt(choice, place, option)))) };
    case 'each':
      return { main: one(sum(placesOf(choice).map((place) => (openingAt(room, place)?.own === false ? 0 : 1)))) };
    case 'stair': {
      const stair = featureOf(room, text(listOf(record['at'])[0]));
      const risers = Number(stair?.['risers']);
      return { tread: one(risers - 1), riser: one(risers) };
    }
    default:
      return stoneNets(choice, option);
  }
}

/** Faces of the breast less what a foot of its corners covers, and the riser of the hearth less what its two corners cover. */
function stoneNets(choice: Choice, option: Fields): Nets {
  const { room } = choice;
  const covers = Number(groupOf(option['attributes'])['corner-covers']);
  const areas = sum(
    placesOf(choice).flatMap((place) => facesAt(choice, place).map((face) => netOf(face, choice.rule))),
  );
  const corners = sum(
    placesOf(choice).map((place) => {
      const breast = featureOf(room, place.split('/')[0] ?? '') as Fields;
      const hearth = groupOf(breast['hearth']);
      if (!place.includes('/')) return breastCorners(room, breast);
      return 2 * (feetOf(hearth['height']) - feetOf(hearth['thickness']));
    }),
  );
  return { flats: { net: areas - covers * corners, covered: areas }, corners: one(corners) };
}

const featureOf = ({ features }: Drawn, id: string): Fields | undefined => features.find((one) => one['id'] === id);
const openingAt = ({ openings }: Drawn, mark: string): Opening | undefined => openings.find((one) => one.mark === mark);

/** What of a wall stands outside, as a place: `outside-walls:south`. */
const outsideOf = 'outside-walls:';

/** Each place by itself, less what is left out. A wall's, an opening's, a feature's or a face's own name stays. */
export function placesOf({ room, record }: Choice): readonly string[] {
  const words = listOf(record['at']).map(text);
  const standing = room.sides.filter(({ openTo }) => openTo === undefined).map(({ name }) => name);
  const isInside = (wall: string): boolean => {
    const others = besideOf(room, wall);
    return others.length > 0 && !others.includes('outside');
  };
  const groups: Readonly<Record<string, readonly string[]>> = {
    walls: standing,
    'inside-walls': standing.filter(isInside),
    ...(words.includes('outside-walls') && {
      'outside-walls': outsideWalls(room.slug).map((wall) => outsideOf + wall),
    }),
    windows: room.openings.filter(({ kind }) => kind === 'window').map(({ mark }) => mark),
    doors: room.openings.filter(({ kind }) => kind === 'door').map(({ mark }) => mark),
    openings: room.openings.map(({ mark }) => mark),
  };
  const out = listOf(record['except']).map(text);
  const named = words.flatMap((word) => groups[word] ?? [word]);
  return [...new Set(named)].filter((place) => !out.includes(place.replace(outsideOf, '')));
}

function besideOf({ sides, openings }: Drawn, wall: string): readonly string[] {
  const led = openings.filter((one) => one.wall === wall).map(({ to }) => to);
  return [...(sides.find(({ name }) => name === wall)?.beside ?? []), ...led];
}

function areaAt(choice: Choice, place: string, all: readonly Choice[]): number {
  const { room, rule } = choice;
  const { floor, plan, ceiling, steps, walls } = figures(room);
  const hides = hidden(rule);
  if (place === 'floor') return hides('built-in') ? floor : plan;
  if (place === 'ceiling') return hides('chimney-breast') ? ceiling.net : ceiling.gross;
  if (place === 'ceiling-steps') return steps;
  if (place === 'roof-ceiling') return underRoof(room.slug);
  const part = place.startsWith(outsideOf) ? outsidePart(room.slug, place.replace(outsideOf, '')) : undefined;
  if (part !== undefined) return part;
  const wall = walls.get(place.replace(outsideOf, ''));
  if (!wall) return sum(facesAt(choice, place).map((face) => netOf(face, rule)));
  const net = netOf(wall, rule);
  return rule['between-rooms'] === 'once' ? Math.max(0, net - othersOf(choice, place, all)) : net;
}

function facesAt({ room, id }: Choice, place: string): readonly Face[] {
  const found = [...figures(room).faces].filter(([face]) =>
    place.includes('/') ? face === place : face.startsWith(`${place}/`) && !/\/hearth/u.test(face),
  );
  if (found.length === 0) throw new Error(`${id}: no face ${place}`);
  return found.map(([, face]) => face);
}

/** What rooms with lower numbers select of the same on the other side. */
function othersOf(choice: Choice, wall: string, all: readonly Choice[]): number {
  const { room, category, rule } = choice;
  const earlier = all.filter(
    (other) =>
      other.category === category &&
      Number(other.room.record['number']) < Number(room.record['number']) &&
      besideOf(room, wall).includes(other.room.slug) &&
      (other.chosen ?? other.standard ?? 'none') !== 'none',
  );
  return sum(
    earlier.flatMap((other) =>
      placesOf(other)
        .filter((there) => besideOf(other.room, there).includes(room.slug))
        .map((there) => netOf(figures(other.room).walls.get(there) as Face, rule)),
    ),
  );
}

/** Is a surface hidden by a kind of feature for what is measured so? */
function hidden(rule: Fields): (kind: string) => boolean {
  const by = rule['hidden-by'];
  return (kind) => by === undefined || listOf(by).includes(kind);
}

function netOf({ gross, cuts }: Face, rule: Fields): number {
  return gross - sum(cuts.filter((cut) => isTaken(cut, rule)).map(({ area }) => area));
}

function isTaken({ by, area }: Cut, rule: Fields): boolean {
  if (by !== 'opening') return hidden(rule)(by);
  const openings = text(rule['openings']);
  if (openings === 'none' || openings === 'all') return openings === 'all';
  return area > numberOf(openings.replace('over ', ''));
}

function runAt({ room, rule, record }: Choice, place: string, option: Fields): number {
  const standing = room.sides.filter(({ openTo }) => openTo === undefined).map(({ name }) => name);
  const out = listOf(record['except']);
  if (place === 'base')
    return sum(standing.filter((name) => !out.includes(name)).map((name) => baseAlong(room, name, rule)));
  const opening = openingAt(room, place);
  if (!opening) return figures(room).runs.get(`${place}/length`) ?? NaN;
  if (opening.kind === 'open') return 0;
  const { width, height, kind } = opening;
  const past = groupOf(option['attributes'])['face'];
  // A rectangle of trim around, its corners included; without a sill the two lower corners and the foot are not there.
  const around = 2 * (width + height) + (past === undefined ? 0 : 4 * feetOf(past));
  return kind === 'window' ? around : around - width - (past === undefined ? 0 : 2 * feetOf(past));
}

/** What is left of a wall when one walks along it, a sixteenth of an inch at a step. */
function baseAlong(room: Drawn, name: string, rule: Fields): number {
  const run = room.sides.find((side) => side.name === name)?.run ?? NaN;
  const gone = [
    ...room.openings.filter(({ wall, sill }) => wall === name && sill === 0).map(({ at, width }) => [at, at + width]),
    ...room.features
      .filter(({ wall, kind }) => wall === name && kind !== 'niche' && kind !== 'drop-edge' && hidden(rule)(text(kind)))
      .map((feature) => [feetOf(feature['at']), feetOf(feature['at']) + feetOf(feature['width'])]),
  ] as [number, number][];
  const step = 1 / 192;
  const steps = Math.round(run / step);
  const free = Array.from({ length: steps }, (_, index) => (index + 1 / 2) * (run / steps)).filter(
    (at) => !gone.some(([from, to]) => at > from && at < to),
  );
  return (free.length * run) / steps;
}
