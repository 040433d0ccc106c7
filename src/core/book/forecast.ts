import { changeInWorld, type HousePrice, type Item, type Stand } from '../price/index.js';
import type { Cents } from '../../base/units/index.js';
import type { Forecast } from './book.js';
import { picked, type PricedDecision } from './make-decisions.js';

export interface Forecasts {
  readonly low: Forecast;
  readonly expected: Forecast;
  readonly high: Forecast;
}

const words = {
  low: 'the cheapest of all that is considered',
  expected:
    'each at its standard, or the middle one by price where that is not considered; an allowance spent in full, or more where the cheapest takes more',
  high: 'the dearest of all that is considered',
};

/** The house with the cheapest, the likely and the dearest of what may still be chosen, each computed as a whole house with
 *  its pooled orders and allowances. Cheapest and dearest are those of each decision. Likely is what a builder budgets with:
 *  the standard, or the middle one by price where it is not considered; an allowance spent in full, or what its cheapest takes
 *  where that is more, or its dearest where that is less. */
export function forecastHouse(house: HousePrice, decisions: readonly PricedDecision[]): Forecasts {
  const expected = forecast(house, decisions, words.expected, ({ likely }) => likely);
  const low = forecast(house, decisions, words.low, ({ lowest }) => lowest);
  const high = forecast(house, decisions, words.high, ({ highest }) => highest);
  // Decisions may still share an order between them: what is cheapest for each need not be cheapest for all.
  const [least, , most] = [low, expected, high].sort((a, b) => a.total - b.total);
  return {
    low: low.total <= expected.total ? low : (least ?? low),
    expected,
    high: high.total >= expected.total ? high : (most ?? high),
  };
}

function forecast(
  house: HousePrice,
  decisions: readonly PricedDecision[],
  why: string,
  standsOf: (decision: PricedDecision) => readonly Stand[],
): Forecast {
  const stands = new Map<Item, Stand>();
  const lines = decisions.map((decision) => {
    const own = standsOf(decision);
    decision.lines.forEach((line, index) => {
      const stand = own[index];
      if (stand) stands.set(line, stand);
    });
    const change = house.choices.together(decision.lines).change(own) as Cents;
    return { decision: decision.decision.id, options: picked(decision.lines, own), alone: change };
  });
  const { change } = changeInWorld(
    house,
    (item) => (stands.has(item) ? stands.get(item)?.option : item.chosen),
    (item) => stands.get(item)?.decided ?? item.decided,
  );
  const alone = lines.reduce((sum, line) => sum + line.alone, 0);
  return {
    total: (house.book.contract.sum + change) as Cents,
    why,
    lines,
    together: (change - house.change - alone) as Cents,
  };
}
