import { factOf } from '../../fact/index.js';
import {
  isDownToFloor,
  knownAround,
  measureParts,
  wallFoot,
  type Convention,
  type OpeningMeasure,
  type RoomMeasure,
  type Run,
  type WallMeasure,
} from '../../model/index.js';
import { lengthOfStretches, stretchLess, type Stretch } from '../../../base/geometry/index.js';
import { shapeWords } from '../../opening/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import { baseLength, casingLength } from '../arithmetic/index.js';
import { placesLeftOut, stretchesLeftOut } from '../except.js';
import { hides } from '../hidden.js';
import { partWords, type WallSide } from '../places.js';
import type { PlaceQuantity } from '../takeoff.js';
import { orderedTimber } from '../timber/pieces.js';
import type { ConventionContext, ConventionRule } from './convention.js';

/** Lineal feet: base along walls less openings, casing around openings, edges and runs of features. */
export const run: ConventionRule = {
  by: 'run',
  parts: measureParts.run,
  measures: 'a run, a wall, a step of the floor or an opening',
  quantify(place, context) {
    switch (place.kind) {
      case 'base':
        return { main: baseRuns(context) };
      case 'wall':
        return { main: [wallRun(place.wall, place.name, context, place.part?.side)] };
      case 'opening':
        return { main: [trimAround(place.opening, place.name, context)] };
      case 'riser':
        return { main: [plain(place.id, place.name, place.riser.run)] };
      case 'run':
        return { main: [alongRun(place.id, place.name, place.run, context)] };
      case 'feature': {
        const first = place.feature.runs[0];
        return first && { main: [alongRun(place.id, `${place.name}, ${first.name}`, first, context)] };
      }
      case 'surface':
        if (place.id !== 'ceiling' && place.id !== 'floor') return undefined;
        return { main: [plain(place.id, `${place.name}, perimeter`, context.measure.perimeter)] };
      default:
        return undefined;
    }
  },
};

function plain(place: string, name: string, length: Length): PlaceQuantity {
  return { place, name, gross: feet(length), adjustments: [], net: feet(length) };
}

/** A run of a feature; timbers with their pieces. */
function alongRun(place: string, name: string, run: Run, { measure, option }: ConventionContext): PlaceQuantity {
  const feature = measure.features.find(({ runs }) => runs.includes(run));
  const timber = orderedTimber(feature, option);
  return {
    ...plain(place, name, run.length),
    ...(run.why !== undefined && { why: run.why }),
    ...(timber && { timber }),
  };
}

/** Base along each standing wall that is not left out. */
function baseRuns(context: ConventionContext): readonly PlaceQuantity[] {
  const { measure, except } = context;
  const out = placesLeftOut({ except }, measure);
  return measure.walls
    .filter(({ id, openTo }) => openTo === undefined && !out.has(id))
    .map((wall) => wallRun(wall, `Base, ${wall.name}`, context));
}

/** A stretch of a wall where nothing runs. */
interface Gap extends Stretch {
  readonly what: string;
  readonly why: string;
}

/** Along a wall less stretches left out and, at the floor, openings down to it and features that stand there. What lies above the
 *  floor, as a niche does, shortens nothing. Where gaps overlap, each foot is taken once. */
function wallRun(
  wall: WallMeasure,
  name: string,
  { rule, measure, except }: ConventionContext,
  side?: WallSide,
): PlaceQuantity {
  const { id } = wall;
  const run = rule.along === 'ceiling' ? wall.run : footLength(wall);
  const own = stretchesLeftOut(except, id).map((one): Gap => ({ ...one, what: 'Left out', why: 'nothing runs here' }));
  const other = side ? gapsBeside(side, wall, measure) : [];
  const gaps = [...(rule.along !== 'ceiling' ? gapsAtFloor(id, measure, rule) : []), ...own, ...other];
  const free = gaps.map((gap, index) => {
    const own = stretchLess(gap, gaps.slice(0, index));
    return { ...gap, width: lengthOfStretches(own) as Length };
  });
  const taken = free.filter(({ width }) => width > 0);
  return {
    place: id,
    name,
    gross: feet(run),
    adjustments: taken.map(({ what, width, why }) => ({ what, amount: -feet(width), why })),
    net: baseLength(
      [{ run, sides: 1 }],
      taken.map(({ width }) => width),
    ),
  };
}

/** Stretches that are not the part of the wall that is asked for. */
function gapsBeside(side: WallSide, { id }: WallMeasure, measure: RoomMeasure): readonly Gap[] {
  const stretches = knownAround(measure)?.walls.find(({ wall }) => wall === id)?.stretches ?? [];
  return stretches.flatMap(({ from, to, behind }): readonly Gap[] => {
    if ((behind === undefined) === (side === 'outside')) return [];
    return [
      { from, to, what: behind ? 'Room behind it' : 'Stands outside', why: `only ${partWords[side]} is asked for` },
    ];
  });
}

function gapsAtFloor(wall: string, { openings, features }: RoomMeasure, rule: Convention): readonly Gap[] {
  return [
    ...openings
      // A circle touches the floor in a point.
      .filter((opening) => opening.wall === wall && isDownToFloor(opening) && opening.shape?.is !== 'round')
      .map(({ mark, at, width }) => ({ what: mark, from: at, to: at + width, why: 'opening down to the floor' })),
    ...features.flatMap(({ name, kind, covers }) =>
      covers
        .filter((cover) => hides(rule, kind) && cover.wall === wall && (cover.sill ?? 0) === 0)
        .map(({ from, to }) => ({ what: name, from, to, why: 'stands against the wall' })),
    ),
  ];
}

/** Along the floor, up and down its slopes; what is upright in it is a riser's. */
function footLength(wall: WallMeasure): Length {
  const foot = wallFoot(wall);
  return foot.slice(1).reduce((sum, to, index) => {
    const from = foot[index] ?? to;
    return to.along === from.along ? sum : sum + Math.hypot(to.along - from.along, to.height - from.height);
  }, 0) as Length;
}

/** Casing with the option's `face`, when it gives one. A door that is flush in the wall has none, nor has an open passage. */
function trimAround(opening: OpeningMeasure, name: string, { option }: ConventionContext): PlaceQuantity {
  const isFlush = opening.door?.flush ?? false;
  const around = shapeWords(opening);
  if (isFlush || opening.kind === 'open') {
    const { opening: gross } = casingLength({ ...opening, sides: 3 });
    const why = isFlush ? 'flush in the wall: no casing' : 'an open passage: no casing';
    const none = { what: opening.mark, amount: -gross, why };
    return { place: opening.mark, name, gross, adjustments: [none], net: 0 };
  }
  const sides = opening.kind === 'window' ? 4 : 3;
  const casing = casingLength({ ...opening, sides }, factOf(option, 'pieces', 'face'));
  const isCurved = opening.shape?.is === 'arch' || opening.shape?.is === 'round';
  const head = isCurved ? 'the sill runs past the legs' : 'the head runs past the legs';
  const why = sides === 4 && !isCurved ? 'head and sill run past the legs' : head;
  return {
    place: opening.mark,
    name,
    gross: casing.opening,
    adjustments: casing.past === 0 ? [] : [{ what: 'Corners', amount: casing.past, why }],
    ...(around !== undefined && { why: around }),
    net: casing.opening + casing.past,
  };
}
