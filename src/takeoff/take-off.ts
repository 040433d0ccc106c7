import type { Category, Option, OptionPart, RoomMeasure, Selection } from '../model/index.js';
import { printPercent } from '../units/index.js';
import { wholePieces, withWaste } from './arithmetic/index.js';
import { conventions } from './convention/index.js';
import type { ConventionRule } from './convention/index.js';
import { findPlaces } from './places.js';
import type { Place } from './places.js';
import type { PlaceQuantity, Takeoff } from './takeoff.js';

export interface TakeOffInput {
  readonly selection: Selection;
  readonly category: Category;
  readonly measure: RoomMeasure;
}

/** The places a selection covers, without repeats, or the words that name nothing in the room. */
export function resolvePlaces(
  selection: Selection,
  measure: RoomMeasure,
): { places: readonly Place[]; unknown: readonly string[] } {
  const found = selection.at.map((word) => ({ word, places: findPlaces(word, measure) }));
  const unknown = found.filter(({ places }) => places === undefined).map(({ word }) => word);
  const byId = new Map(found.flatMap(({ places }) => places ?? []).map((place) => [place.id, place]));
  return { places: [...byId.values()], unknown };
}

export function conventionOf(category: Category): ConventionRule | undefined {
  return conventions.find((rule) => rule.by === category.measure.by);
}

/** Takes one option off for one selection: a Takeoff for each part of the option that the convention yields. Places
 *  that the convention cannot measure are listed in `unsuited`. */
export function takeOff(
  { selection, category, measure }: TakeOffInput,
  places: readonly Place[],
  option: Option,
): { takeoffs: readonly Takeoff[]; unsuited: readonly Place[] } {
  const rule = conventionOf(category);
  if (!rule) return { takeoffs: [], unsuited: places };
  const unsuited: Place[] = [];
  const byPart = new Map<string, PlaceQuantity[]>();
  for (const place of places) {
    const quantities = rule.quantify(place, { rule: category.measure, option, measure });
    if (!quantities) {
      unsuited.push(place);
      continue;
    }
    for (const [part, list] of Object.entries(quantities)) byPart.set(part, [...(byPart.get(part) ?? []), ...list]);
  }
  const takeoffs = option.parts
    .filter((part) => byPart.has(part.part))
    .map((part) => makeTakeoff(part, byPart.get(part.part) ?? [], selection, category));
  return { takeoffs, unsuited };
}

function makeTakeoff(
  part: OptionPart,
  places: readonly PlaceQuantity[],
  selection: Selection,
  category: Category,
): Takeoff {
  const gross = sum(places.map((place) => place.gross));
  const net = sum(places.map((place) => place.net));
  const times = part.unit === 'sq ft' ? category.measure.times : 1;
  const factors = times === 1 ? [] : [{ times, why: `${times} coats or layers` }];
  const waste = selection.waste ?? part.waste;
  const share = waste.amount / 10 ** waste.scale;
  const why = selection.waste ? 'given for this place' : `allowed for this product: ${printPercent(waste)}`;
  const needed = withWaste(net * times, share);
  const required = part.unit === 'each' || part.unit === 'lump' ? wholePieces(needed) : needed;
  return {
    part: part.part,
    unit: part.unit,
    places,
    gross,
    net,
    factors,
    waste: { percent: share * 100, why },
    required,
    rule: category.measure.words,
    source: category.measure.source,
  };
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
