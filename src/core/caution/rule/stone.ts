import { factOf } from '../../fact/index.js';
import type { Option } from '../../model/index.js';
import { isMetric, printAmount, printLength, printWeightPer, type Length } from '../../../base/units/index.js';
import { isStone } from '../look-up.js';
import type { HouseView, RoomView, SelectionView } from '../view.js';

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

function isFullBed(option: Option): boolean {
  return factOf(option, 'stone', 'kind') === 'full bed' || factOf(option, 'stone', 'setting') === 'ledge';
}

/** What of a stone's weight and thickness is over the most that a rule allows, or is not recorded, in words. */
export function overWords(option: Option, most: { readonly pounds: number; readonly bed: Length }): readonly string[] {
  const [pounds, bed] = [poundsPerFoot(option), bedOf(option)];
  return [
    ...(pounds === undefined ? ['the weight is not recorded'] : []),
    ...(pounds !== undefined && pounds > most.pounds ? [weightWords(pounds)] : []),
    ...(bed === undefined ? ['the thickness is not recorded'] : []),
    ...(bed !== undefined && bed > most.bed ? [`${printLength(bed)} thick`] : []),
  ];
}

function bedOf(option: Option): Length | undefined {
  return factOf(option, 'stone', 'bed') ?? option.thickness;
}

/** `17 lb on a square foot`. */
export function weightWords(pounds: number): string {
  if (isMetric()) return printWeightPer({ pounds, per: 'sq ft' });
  return `${printAmount(pounds, 1)} lb on a square foot`;
}

/** Pounds on a square foot. */
function poundsPerFoot({ weight }: Option): number | undefined {
  return weight?.per === 'sq ft' ? weight.pounds : undefined;
}
