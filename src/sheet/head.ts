import { unitName } from '../base/units/index.js';

/** The unit in a column's head: `sq ft` of `Area, sq ft`. */
export function unitOfHead(head: string): string | undefined {
  return head.split(', ')[1];
}

/** A head with the unit of the house in force: `Area, m²` for `Area, sq ft` in a metric house. */
export function headInHouse(head: string): string {
  const unit = unitOfHead(head);
  return unit === undefined ? head : `${head.slice(0, head.length - unit.length)}${unitName(unit)}`;
}
