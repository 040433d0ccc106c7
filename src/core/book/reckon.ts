import {
  comparedParts,
  costOf,
  noCost,
  reckoningText,
  selectionEffect,
  type Cost,
  type HousePrice,
  type Item,
  type Reckoning,
} from '../price/index.js';

/** How a selection with `option` changes the contract beside its allowance, against its standard. `cost` is absent while
 *  nothing is counted for it: then there is nothing to reckon, as when there is nothing to compare it with. */
export function reckon(
  house: HousePrice,
  item: Item,
  option: string | undefined,
  cost: Cost | undefined,
): Reckoning | undefined {
  const { contract, options } = house.book;
  const allowance = house.allowances.find((sized) => sized.allowance.id === item.allowance)?.allowance;
  const standard = house.standard.costs.get(item.selection);
  if (!cost || (allowance && !standard)) return undefined;
  const parts = comparedParts(allowance);
  if (parts.length === 0) return undefined;
  const reckoning = {
    parts,
    counted: costOf(cost, parts),
    standard: costOf(standard ?? noCost, parts),
    ...selectionEffect(item, cost, standard, allowance, contract),
  };
  const name = (id: string | undefined) => (id === undefined ? undefined : options.get(id)?.name);
  const [counted, instead] = [name(option), name(item.standard)];
  const words = { ...(counted !== undefined && { counted }), ...(instead !== undefined && { standard: instead }) };
  return { ...reckoning, why: reckoningText(reckoning, words, contract) };
}
