import type { Path } from '../../base/problem/index.js';
import { type Cents } from '../../base/units/index.js';
import type { RawHouse, RawMilestone, RawSlot } from '../../core/records/index.js';
import { recordText } from '../record/text.js';
import { writtenMoney, type HouseAnswers } from './answers.js';
import { allowancesOf, onlyLevel, type DraftedRoom } from './drafted-room.js';
import type { Library } from './library.js';
import { otherMilestones } from './starter.js';

/** What nobody asked is said where it stands, for whoever knows it. */
const remarks: readonly (readonly [Path, string])[] = [
  [['number'], "The builder's job number."],
  [['contract', 'date'], 'The day that the contract was signed; until then the day that this folder was made.'],
  [['contract', 'tax'], 'Sales tax, and what it is charged on.'],
  [
    ['contract', 'overage-markup'],
    'What the contract says of changes: mark-up on what goes over, share of a credit that returns.',
  ],
  [['allowances'], "The contract's allowances: what it sets aside for each. At nothing until it is filled in."],
  [['calendar'], 'Days that nobody works, and how long the builder needs between a decision and acting on it.'],
  [
    ['milestones'],
    'The order of work, with working days between. The builder puts in the real ones; one that is done has done-on.',
  ],
  [['slots'], 'What every room must have: a place that lacks it is listed by check.'],
];

/** The text of `house.md`, in the locale in force. `on` is the day of the folder. */
export function houseRecord(
  answers: HouseAnswers,
  rooms: readonly DraftedRoom[],
  levels: RawHouse['levels'],
  library: Library,
  { on, names }: { readonly on: string; readonly names: ReadonlySet<string> },
): string {
  const { name, place, locale, zone, sum, owner, builder, start } = answers;
  const nothing = writtenMoney(0 as Cents);
  const values: RawHouse = {
    name,
    number: '1',
    place,
    ...(locale.units === 'metric' && { units: locale.units }),
    currency: locale.currency,
    ...(zone !== undefined && { 'climate-zone': zone }),
    people: [
      { role: 'owner', name: owner },
      { role: 'builder', name: builder },
    ],
    contract: {
      sum,
      date: on,
      tax: { rate: '0 %', on: ['material'] },
      'overage-markup': '0 %',
      'credit-returns': '100 %',
      'credit-markup': false,
      contingency: nothing,
      'owner-furnished-install': 'contract',
      rounding: 'half-up',
    },
    levels: levels.length === 0 ? [onlyLevel] : levels,
    allowances: allowancesOf(rooms).map(({ id, name: title, categories }) => ({
      id,
      name: title,
      amount: nothing,
      covers: ['material', 'freight', 'tax', 'labor'],
      categories: [...categories],
    })),
    calendar: {
      weekend: ['saturday', 'sunday'],
      holidays: locale.currency === 'USD' ? 'us-federal' : 'none',
      review: '5 days',
    },
    milestones: usualMilestones(library, start),
    slots: usualSlots(library, names),
  };
  return recordText(values, { remarks, inline: ['people', 'levels', 'milestones', 'slots'] });
}

/** The library's milestones that every house has; the first of them on its day. */
function usualMilestones(library: Library, start: string): RawMilestone[] {
  return library.milestones
    .filter(({ id }) => !otherMilestones.includes(id))
    .map(({ id, name, after, days }) => ({
      id,
      name,
      ...(after === undefined ? { date: start } : { after, ...(days !== undefined && { days }) }),
    }));
}

/** The library's slots, of the needs that a house knows: layers, its categories, and what its trades carry. */
export function usualSlots({ slots }: Library, names: ReadonlySet<string>): RawSlot[] {
  return slots.flatMap((slot): readonly RawSlot[] => {
    const needs = [slot.needs].flat().filter((need) => names.has(need));
    const [only] = needs;
    if (only === undefined) return [];
    return [{ ...slot, needs: needs.length === 1 ? only : needs }];
  });
}
