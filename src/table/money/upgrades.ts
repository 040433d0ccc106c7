import type { BookSelection, LookUp } from '../../core/book/index.js';
import { costParts } from '../../core/model/index.js';
import type { Reckoning } from '../../core/price/index.js';
import { col, layOut, money, type HouseBlock, type HouseTable } from '../../sheet/index.js';
import { joinWords, type Cents } from '../../base/units/index.js';
import { namesOf } from '../names-of.js';
import type { HouseSchedule } from '../schedule.js';
import { saidOnce } from '../places-of.js';

interface Changing {
  readonly selection: BookSelection;
  readonly finish: string;
  /** What stands in the contract for it. */
  readonly instead: string;
  /** Absent where an allowance pays for all of it, and only what a supplier keeps changes the contract. */
  readonly reckoning?: Reckoning;
}

/** What the contract keeps something of is a column only where it does. */
const kept = (cents: Cents | undefined): Cents | undefined => (cents === 0 ? undefined : cents);

/** Every choice that changes the contract beside the allowances, with the figures that lead to its change, by room. */
const table: HouseTable<Changing> = {
  id: 'upgrades-and-credits',
  caption: 'Choices that change the contract outside the allowances',
  named: 'choice',
  rowId: ({ selection }) => selection.id,
  group: ({ selection: { room } }, names) => ({ title: names.title(room), cell: { is: 'room', ...names.room(room) } }),
  columns: [
    col.words(
      'choice',
      'Choice, and what stands in the contract',
      ({ selection: { id, placeText }, finish }) => ({
        text: `${saidOnce(placeText)}: ${finish}`,
        place: { to: 'selection', id },
      }),
      { width: 'long' },
    ),
    col.words('instead', 'Instead of', ({ instead }) => instead, { under: 'choice' }),
    col.money('chosen', 'Chosen', ({ reckoning }) => reckoning?.counted),
    col.money('standard', 'Standard', ({ reckoning }) => reckoning?.standard),
    col.money('difference', 'Difference', ({ reckoning }) => reckoning?.difference, { change: true }),
    col.money('markup', 'Mark-up', ({ reckoning }) => reckoning?.markup, { change: true }),
    col.money('notReturned', 'Not returned', ({ reckoning }) => kept(reckoning?.retained), { change: true }),
    col.money('supplierKeeps', 'Supplier keeps', ({ selection: { insteadOf } }) => insteadOf?.restocking?.amount, {
      change: true,
    }),
    col.money('change', 'Change', ({ selection: { change } }) => change, { change: true, brief: true }),
  ],
};

export const upgrades: HouseSchedule = {
  id: table.id,
  lay: (look): HouseBlock => {
    const { upgrades: up, credits, net } = look.book.money;
    const sums = () => [
      { what: 'Upgrades', cells: { change: money(up, true) } },
      { what: 'Credits', cells: { change: money(credits, true) } },
      { what: 'Upgrades less credits', strong: true, cells: { change: money(net, true) } },
    ];
    return layOut({ ...table, sums }, changing(look), namesOf(look));
  },
};

function changing(look: LookUp): readonly Changing[] {
  return look.book.rooms.flatMap((room) =>
    look.selectionsOf(room).flatMap((selection) => {
      const { change, reckoning, category, counted } = selection;
      if (change === 0) return [];
      const finish = look.option(category, counted)?.name ?? 'none';
      return [{ selection, finish, instead: standsFor(selection, look), ...(reckoning && { reckoning }) }];
    }),
  );
}

function standsFor({ category, standard, reckoning }: BookSelection, look: LookUp): string {
  if (!reckoning) return 'an allowance, which pays for it; what a supplier keeps is beside it';
  const name =
    standard === undefined ? 'an extra: nothing stands for it' : (look.option(category, standard)?.name ?? standard);
  if (reckoning.parts.length === costParts.length) return name;
  return `${name}; ${joinWords(reckoning.parts)} only, the allowance pays the rest`;
}
