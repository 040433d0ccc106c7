import type { Book, BookMoney, PricedChoices } from '../book/index.js';
import { workingDays } from '../calendar/index.js';
import { creditMarkupText, markupOnText, markupText, taxText, type LedgerEntry } from '../price/index.js';
import { printDay, printDays, printMoney, printPercent, type Cents } from '../../base/units/index.js';
import { compareText } from './compare-text.js';
import type { AllowanceChange, MilestoneChange } from './comparison.js';
import type { FieldChange } from './room-change.js';

/** Terms of the contract, rules of the calendar and facts of the house that read otherwise now. */
export function compareTerms(from: Book, to: Book): FieldChange[] {
  const [was, now] = [termsOf(from), termsOf(to)];
  return compareText(was.map(([field, text], index) => [field, text, now[index]?.[1] ?? '']));
}

function termsOf({ house, levels, money, calendar }: Book): (readonly [string, string])[] {
  const { rules } = calendar;
  return [
    ['contract sum', printMoney(money.contractSum)],
    ['sales tax', money.tax.map(taxText).join('; ')],
    ['mark-up on what goes over', markupText(money)],
    ['mark-up is figured on', markupOnText(money)],
    ['contractor’s fee', money.fee ? printPercent(money.fee) : 'none'],
    ['returned of what stays under', returned(money)],
    ['installing what the owner furnishes', installing(money)],
    ['contingency', printMoney(money.contingency)],
    ['weekend', rules.weekend.join(', ') || 'none'],
    ['holidays', rules.holidays === 'none' ? 'none' : 'US federal'],
    [
      'closed',
      rules.closed.map(({ from, to, why }) => `${printDay(from)} to ${printDay(to)}, ${why}`).join('; ') || 'never',
    ],
    ['review', printDays(rules.reviewDays)],
    ['name of the house', house.name],
    ['job number', house.number],
    ['place', house.place],
    ['climate zone', house.climateZone ?? 'not named'],
    [
      'adopted code',
      house.code ? `${house.code.name}, ${house.code.edition}, adopted by ${house.code.by}` : 'not named',
    ],
    ['people', house.people.map(({ role, name, contact }) => [role, name, contact ?? ''].join(' ').trim()).join('; ')],
    ['levels', levels.map((level) => level.name).join(', ')],
  ];
}

function returned(money: BookMoney): string {
  return `${printPercent(money.creditReturns)}, ${creditMarkupText(money)}`;
}

function installing({ ownerFurnishedInstall }: BookMoney): string {
  return ownerFurnishedInstall === 'contract' ? 'in the contract' : 'paid by the owner';
}

/** Milestones that moved, came or went, in working days of the newer calendar. */
export function compareMilestones(from: Book, to: Book): MilestoneChange[] {
  const calendar = workingDays(to.calendar.rules);
  const before = new Map(from.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  const after = new Map(to.calendar.milestones.map((milestone) => [milestone.id, milestone]));
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((id) => {
    const [old, now] = [before.get(id), after.get(id)];
    if (old?.date === now?.date) return [];
    return [
      {
        id,
        name: now?.name ?? old?.name ?? id,
        ...(old && { from: old.date }),
        ...(now && { to: now.date }),
        ...(old && now && { days: calendar.between(old.date, now.date) }),
      },
    ];
  });
}

/** Allowances that the house's record changed, or that choices or prices draw otherwise. `alone` is the newer rooms at
 *  the older prices. */
export function compareAllowances(from: Book, to: Book, alone: PricedChoices): AllowanceChange[] {
  const byId = ({ money }: PricedChoices) => new Map(money.allowances.map((entry) => [entry.id, entry]));
  const [before, after, between] = [byId(from), byId(to), byId(alone)];
  return [...new Set([...after.keys(), ...before.keys()])].flatMap((id): AllowanceChange[] => {
    const [old, now, mid] = [before.get(id), after.get(id), between.get(id)];
    const either = now ?? old;
    if (!either) return [];
    const change: AllowanceChange = {
      allowance: id,
      name: either.name,
      kind: !old ? 'added' : !now ? 'removed' : 'kept',
      fields: old && now ? compareText(fieldsOf(old, now)) : [],
      drawn: { from: old?.committed ?? (0 as Cents), to: now?.committed ?? (0 as Cents) },
      byChoice: effectBetween(old, mid),
      contract: ((now?.change ?? 0) - (old?.change ?? 0)) as Cents,
    };
    const moved = change.fields.length > 0 || change.drawn.from !== change.drawn.to;
    return change.kind !== 'kept' || moved || change.byChoice.total !== 0 || change.contract !== 0 ? [change] : [];
  });
}

function fieldsOf(old: LedgerEntry, now: LedgerEntry): (readonly [string, string, string])[] {
  return [
    ['name', old.name, now.name],
    ['amount', printMoney(old.amount), printMoney(now.amount)],
    ['how it comes about', old.basis, now.basis],
    ['covers', old.covers.join(', '), now.covers.join(', ')],
    ['note', old.note ?? '', now.note ?? ''],
  ];
}

/** Mark-up is told apart only on what goes over; on what stays under it is in what returns. */
function effectBetween(old: LedgerEntry | undefined, mid: LedgerEntry | undefined): AllowanceChange['byChoice'] {
  const total = (mid?.change ?? 0) - (old?.change ?? 0);
  const markup = markupOver(mid) - markupOver(old);
  return { overOrUnder: (total - markup) as Cents, markup: markup as Cents, total: total as Cents };
}

function markupOver(entry: LedgerEntry | undefined): number {
  return entry && entry.overage > 0 ? entry.markup : 0;
}
