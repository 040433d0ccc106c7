import type { Assembly, Category, Option, OptionPart, RoomMeasure, Selection } from '../model/index.js';
import { decimalNumber, printPercent, type Area } from '../../base/units/index.js';
import { wholePieces, withWaste } from './arithmetic/index.js';
import { timesOf } from './as-printed.js';
import { assembliesOf } from './assembly.js';
import { numberOf } from './attribute.js';
import { besideOf, type Beside } from './beside.js';
import { conventions, type ConventionRule } from './convention/index.js';
import type { SharedWalls } from './convention/convention.js';
import { countsOf } from './count.js';
import type { Place } from './places.js';
import type { RailJoints } from './railing/rail.js';
import { suppliesOf } from './supply.js';
import { cutTimbers } from './timber/cut.js';
import type { PlaceQuantity, Takeoff, TakeoffNote } from './takeoff.js';

export interface TakeOffInput {
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
  /** Ends that runs of railing share; absent, none do. */
  readonly joints?: RailJoints;
  /** What other rooms count of walls that they share with this one. */
  readonly counted?: SharedWalls;
}

export function conventionOf(category: Category): ConventionRule | undefined {
  return conventions.find((rule) => rule.by === category.measure.by);
}

/** Takes one option off for one selection: a Takeoff for each part of the option that the convention yields. Places
 *  that the convention cannot measure are listed in `unsuited`. */
export function takeOff(
  { selection, category, measure, joints = new Map(), counted }: TakeOffInput,
  places: readonly Place[],
  option: Option,
): { takeoffs: readonly Takeoff[]; unsuited: readonly Place[] } {
  const rule = conventionOf(category);
  if (!rule) return { takeoffs: [], unsuited: places };
  const unsuited: Place[] = [];
  const byPart = new Map<string, PlaceQuantity[]>();
  for (const place of places) {
    const quantities = rule.quantify(place, {
      rule: category.measure,
      option,
      measure,
      ...(counted && { counted }),
      except: selection.except ?? [],
      joints,
    });
    if (!quantities) {
      unsuited.push(place);
      continue;
    }
    for (const [part, list] of Object.entries(quantities)) byPart.set(part, [...(byPart.get(part) ?? []), ...list]);
  }
  const beside = besideOf(places, measure);
  const main = Object.keys(rule.parts)[0];
  const takeoffs = option.parts
    .filter((part) => byPart.has(part.part))
    .map((part) =>
      makeTakeoff(part, byPart.get(part.part) ?? [], {
        selection,
        category,
        option,
        // What goes with no quantity of a part goes with the first.
        ...(part.part === main && { beside }),
      }),
    );
  const [first, ...more] = takeoffs;
  if (!first) return { takeoffs: [], unsuited };
  const counts = rule.counts?.(Object.fromEntries(byPart), option) ?? [];
  const whole = counts.length > 0 ? { ...first, counts } : first;
  return { takeoffs: [withWords(whole, category, option, places), ...more], unsuited };
}

/** What the option's attributes mean, and what it makes of the walls and ceilings it fills; said once, with its first part. */
function withWords(takeoff: Takeoff, category: Category, option: Option, places: readonly Place[]): Takeoff {
  const notes = category.attributes.flatMap(({ name, label, means }): TakeoffNote[] => {
    const text = option.attributes[name]?.text ?? '';
    const words = means?.words[text];
    return means && words !== undefined ? [{ what: `${label}: ${text}`, words, source: means.from }] : [];
  });
  const assemblies = assembliesOf(category, option, places.flatMap(filledPlace));
  return { ...takeoff, ...(notes.length > 0 && { notes }), ...(assemblies.length > 0 && { assemblies }) };
}

function filledPlace({ kind, id }: Place): { id: string; over: Assembly['over'] }[] {
  if (kind === 'wall') return [{ id, over: 'walls' }];
  return id === 'ceiling' || id === 'floor' ? [{ id, over: id }] : [];
}

function makeTakeoff(
  part: OptionPart,
  places: readonly PlaceQuantity[],
  {
    selection,
    category,
    option,
    beside,
  }: { selection: Selection; category: Category; option: Option; beside?: Beside },
): Takeoff {
  const { measure: rule } = category;
  const gross = sum(places.map((place) => place.gross));
  const net = sum(places.map((place) => place.net));
  const covered = sum(places.map((place) => place.covered ?? place.net));
  const factors = part.unit === 'sq ft' ? layerFactors(category, option) : [];
  const times = timesOf(factors);
  const waste = selection.waste ?? part.waste;
  const share = decimalNumber(waste);
  const why = selection.waste ? 'given for this place' : `allowed for this product: ${printPercent(waste)}`;
  const needed = withWaste(net * times, share);
  const required = part.unit === 'each' || part.unit === 'lump' ? wholePieces(needed) : needed;
  const supplies = suppliesOf(rule.supplies ?? [], option, { quantity: covered, unit: part.unit }, beside);
  const cutting = cutTimbers(places, option);
  const counts =
    part.unit === 'sq ft' ? countsOf(rule, option, { net: [net as Area], times, waste: share, whole: false }) : [];
  return {
    part: part.part,
    unit: part.unit,
    places,
    gross,
    net,
    ...(covered !== net && { covered }),
    factors,
    waste: { percent: share * 100, why },
    required,
    rule: rule.words,
    source: rule.source,
    ...(cutting && { cutting }),
    ...(supplies.length > 0 && { supplies }),
    ...(counts.length > 0 && { counts }),
  };
}

/** Coats or layers: the option's own where the category's record asks for it, else the category's. */
function layerFactors({ measure }: Category, option: Option): Takeoff['factors'] {
  const own = measure.timesBy === undefined ? undefined : numberOf(option, measure.timesBy);
  const times = own ?? measure.times;
  if (times === 1) return [];
  return [
    { times, why: own === undefined ? `${times} coats or layers` : `${measure.timesBy ?? ''} of ${option.name}` },
  ];
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
