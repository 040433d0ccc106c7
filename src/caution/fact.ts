import type { ChimneyBreast, Stair } from '../feature/index.js';
import type { Attribute, Category, FeatureMeasure, Option } from '../model/index.js';
import type { Length } from '../units/index.js';
import type { HouseView, RoomView, SelectionView } from './view.js';

/** Facts of options that rules read by the attribute's name. Undefined is 'not recorded': a rule says so and asks, it does
 *  not pass. */
export function lengthFact(option: Option, name: string): Length | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'length' ? value.length : undefined;
}

export function numberFact(option: Option, name: string): number | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'number' ? value.number : undefined;
}

export function textFact(option: Option, name: string): string | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'text' ? value.text : undefined;
}

export function yesFact(option: Option, name: string): boolean | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'yes-no' ? value.yes : undefined;
}

export function lengthsFact(option: Option, name: string): readonly Length[] | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'lengths' ? value.lengths : undefined;
}

function valueOf(option: Option, name: string): Attribute['value'] | undefined {
  return option.attributes[name]?.value;
}

/** What a category is, by the facts that its options carry: slugs differ from builder to builder. */
export function carries(category: Category, attribute: string): boolean {
  return category.attributes.some(({ name }) => name === attribute);
}

/** Selections at a place, with those of the whole feature when the place is one of its faces. */
export function selectionsAt(room: RoomView, place: string): readonly SelectionView[] {
  return room.at.get(place) ?? [];
}

export function selectionsOn(room: RoomView, feature: string): readonly SelectionView[] {
  return room.selections.filter(({ places }) =>
    places.some(({ id }) => id === feature || id.startsWith(`${feature}/`)),
  );
}

/** Trades that the house gives a kind of work to. */
export function tradesOf(house: HouseView, isKind: (category: Category) => boolean): readonly string[] {
  return [...new Set(house.categories.filter(isKind).map(({ trade }) => trade))];
}

export const isFraming = ({ layer }: Category): boolean => layer === 'framing';
export const isRailing = ({ measure }: Category): boolean => measure.by === 'railing';
export const isStone = ({ measure }: Category): boolean => measure.by === 'stone';

/** A chimney breast's record, when the feature is one. */
export function breastOf({ kind, data }: FeatureMeasure): ChimneyBreast | undefined {
  return kind === 'chimney-breast' ? (data as ChimneyBreast | undefined) : undefined;
}

export function stairOf({ kind, data }: FeatureMeasure): Stair | undefined {
  return kind === 'stair' ? (data as Stair | undefined) : undefined;
}
