import { changeInWorld, type HousePrice, type Item } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';
import type { Alternative, BookSelection, Forecast } from './book.js';
import { optionId } from './draft.js';

export interface Forecasts {
  readonly low: Forecast;
  readonly expected: Forecast;
  readonly high: Forecast;
}

/** The house with the cheapest, the likely and the dearest of what is still open, each computed as a whole house with its
 *  pooled orders and allowances. Cheapest and dearest are by what each choice alone does to today's total. Likely is what
 *  a builder budgets with: the standard; an allowance spent in full, or more where the cheapest takes more; and where
 *  there is neither, the middle one by price. */
export function forecastHouse(house: HousePrice, selections: readonly BookSelection[]): Forecasts {
  const open = new Map(
    selections
      .filter(({ state, alternatives }) => state === 'open' && alternatives.length > 0)
      .map((selection) => [selection.id, { selection, byPrice: sortByPrice(selection.alternatives) }]),
  );
  const forecast = (why: string, pick: Pick, isDecided: (item: Item) => boolean = () => true): Forecast => {
    const picked = new Map([...open].map(([id, { byPrice, selection }]) => [id, pick(byPrice, selection)]));
    const choose = (item: Item) => {
      const option = picked.get(item.selection)?.option;
      return item.decided || option === undefined ? standing(item) : optionId(item.category, option);
    };
    const { change } = changeInWorld(house, choose, isDecided);
    const lines = [...open].flatMap(([id, { selection }]) => {
      const line = picked.get(id);
      return line
        ? [{ selection: id, option: optionId(selection.category, line.option), alone: line.againstToday }]
        : [];
    });
    const alone = lines.reduce((sum, line) => sum + line.alone, 0);
    return {
      total: (house.book.contract.sum + change) as Cents,
      why,
      lines,
      together: (change - house.change - alone) as Cents,
    };
  };
  return {
    low: forecast('the cheapest of all that is still open', (byPrice) => byPrice[0]),
    expected: forecast(
      'each at its standard; an allowance spent in full, or more where the cheapest takes more; else the middle one by price',
      (byPrice, { allowance }) =>
        allowance === undefined
          ? (byPrice.find(({ isStandard }) => isStandard) ?? byPrice[(byPrice.length - 1) >> 1])
          : byPrice[0],
      (item) => item.decided || item.allowance === undefined,
    ),
    high: forecast('the dearest of all that is still open', (byPrice) => byPrice.at(-1)),
  };
}

type Pick = (byPrice: readonly Alternative[], selection: BookSelection) => Alternative | undefined;

function sortByPrice(alternatives: readonly Alternative[]): readonly Alternative[] {
  return [...alternatives].sort((a, b) => a.againstToday - b.againstToday || a.cost.total - b.cost.total);
}

function standing(item: Item): string | undefined {
  return item.decided ? item.chosen : item.standard;
}
