import { factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { weightInPlace } from '../../takeoff/index.js';
import { isMetric, printAmount, printLength, printWeightPer, shown, type Length } from '../../../base/units/index.js';
import { isFraming, isStone, tradesOf } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';
import { joinWords, optionWords } from '../words.js';
import type { Finding } from './rule.js';

/** Stone that still may stand somewhere, by how it is carried. */
export interface StoneChoice {
  readonly room: RoomView;
  readonly selection: SelectionView;
  readonly option: Option;
}

/** Full-bed stone stands on something; the rest is stuck to its wall. */
export function stoneChoices(house: HouseView, fullBed: boolean): readonly StoneChoice[] {
  return house.rooms.flatMap((room) =>
    room.selections
      .filter(({ category }) => isStone(category))
      .flatMap((selection) =>
        selection.options
          .filter((option) => isFullBed(option) === fullBed)
          .map((option) => ({ room, selection, option })),
      ),
  );
}

/** What a rule has seen of a stone, for the mason and the framer. */
export function stoneFinding(
  house: HouseView,
  { room, selection, option }: StoneChoice,
  {
    seen,
    more = '',
    says,
    ask,
  }: { readonly seen: readonly string[]; readonly more?: string } & Pick<Finding, 'says' | 'ask'>,
): Finding {
  return {
    room: room.slug,
    place: selection.places[0]?.id ?? 'walls',
    placeText: selection.placeText,
    selections: [selection.id],
    trades: [selection.category.trade, ...tradesOf(house, isFraming)],
    seen: `${optionWords(selection, option)}: ${seen.join(', ')}.${more}`,
    says,
    ask,
  };
}

/** Walls of a porch are outside walls. */
export function isOutdoors({ use }: RoomView): boolean {
  return use === 'porch';
}

function isFullBed(option: Option): boolean {
  return factOf(option, 'stone', 'kind') === 'full bed' || factOf(option, 'stone', 'setting') === 'ledge';
}

/** What of a stone's weight in place and of its thickness is over the most that a rule allows, or is not recorded, in words. */
export function overWords(option: Option, most: { readonly pounds: number; readonly bed: Length }): readonly string[] {
  return [...overInPlace(option, most.pounds), ...overThick(option, most.bed)];
}

/** Less than this is how sums and metric figures come out. */
const slack = 1e-6;

function overInPlace(option: Option, most: number): readonly string[] {
  const weight = weightInPlace(option);
  if (weight?.per !== 'sq ft') return ['the weight is not recorded'];
  const { product, mortar, lath = 0, pounds } = weight;
  if (mortar === undefined) return [`${weightWords(product)}, the stone alone: what its mortar weighs is not recorded`];
  if (pounds <= most + slack) return [];
  const parts = [
    { pounds: product, what: 'stone' },
    { pounds: mortar, what: 'mortar' },
    { pounds: lath, what: 'lath and scratch coat' },
  ].filter((part) => part.pounds > 0);
  if (parts.length === 1) return [weightWords(pounds)];
  return [`${weightWords(pounds)} (${joinWords(parts.map((part) => `${barePounds(part.pounds)} of ${part.what}`))})`];
}

/** `14`, for lb / sq ft. */
function barePounds(pounds: number): string {
  const { amount, digits } = shown(pounds, 'lb / sq ft');
  return printAmount(amount, digits);
}

/** The same of the stone by itself, without what it is set in. */
export function overAlone(option: Option, most: { readonly pounds: number; readonly bed: Length }): readonly string[] {
  const weight = weightInPlace(option);
  const pounds = weight?.per === 'sq ft' ? weight.product : undefined;
  return [
    ...(pounds === undefined ? ['the weight is not recorded'] : []),
    ...(pounds !== undefined && pounds > most.pounds ? [weightWords(pounds)] : []),
    ...overThick(option, most.bed),
  ];
}

function overThick(option: Option, most: Length): readonly string[] {
  const bed = factOf(option, 'stone', 'bed') ?? option.thickness;
  if (bed === undefined) return ['the thickness is not recorded'];
  return bed > most ? [`${printLength(bed)} thick`] : [];
}

/** `17 lb on a square foot`. */
export function weightWords(pounds: number): string {
  if (isMetric()) return printWeightPer({ pounds, per: 'sq ft' });
  return `${printAmount(pounds, 1)} lb on a square foot`;
}
