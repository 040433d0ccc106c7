import type { Records } from '../../core/model/index.js';

/** Options of a category whose records stand for an order: what was ordered is at the price of its record, until the last invoice of the
 *  order is in, which counts instead. By slug, with the rooms where it was ordered. */
export function orderedOptions(
  { rooms, house }: Pick<Records, 'rooms' | 'house'>,
  category: string,
): ReadonlyMap<string, readonly string[]> {
  const isPaid = (allowance: string | undefined, option: string): boolean =>
    house.allowances
      .find(({ id }) => id === allowance)
      ?.invoices?.some((invoice) => invoice.last && invoice.option === `${category}/${option}`) ?? false;
  const ordered = new Map<string, string[]>();
  for (const { name, selections } of rooms) {
    for (const { category: of, facts, chosen, allowance } of selections) {
      const fact = facts.findLast(({ step }) => step !== 'released');
      const option = fact?.option ?? chosen;
      if (of !== category || !fact || option === undefined || isPaid(allowance, option)) continue;
      ordered.set(option, [...(ordered.get(option) ?? []), name]);
    }
  }
  return ordered;
}
