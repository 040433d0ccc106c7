import {
  lotsOf,
  noCost,
  type EffectDifference,
  type HousePrice,
  type Item,
  type ReasonedFigure,
  type Reckoning,
} from '../price/index.js';
import { printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import type { Alternative } from './book.js';
import { optionId, type Draft } from './draft.js';
import { bearingOf } from './bearing-of.js';
import { delayOf, restockingOf } from './cost-of-days.js';
import type { Decider } from './make-decider.js';
import { reckon } from './reckon.js';
import { weigh } from './weigh.js';

/** Every option that could stand in a place, with the whole house computed for it. */
export function makeAlternatives(draft: Draft, item: Item, house: HousePrice, decide: Decider): Alternative[] {
  const { category, selection, options } = draft;
  const withStandard = house.changeWith(item, item.standard);
  const counted = house.today.counted.get(item.selection);
  const today = reckon(
    house,
    item,
    counted,
    house.today.costs.get(item.selection) ?? (item.decided ? noCost : undefined),
  );
  const total = house.book.contract.sum + house.change;
  return [...options].map(([slug, { option, takeoffs }]) => {
    const id = optionId(category.slug, slug);
    const what = house.whatIf(item, id);
    const cost = what.costs.get(item.selection) ?? house.today.costs.get(item.selection) ?? noCost;
    const pounds = weigh(option, takeoffs);
    const decision = decide({ ...bearingOf(draft), options: [option], chosen: item.decided });
    return {
      option: slug,
      isStandard: slug === selection.standard,
      isChosen: slug === selection.chosen,
      takeoff: takeoffs,
      cost,
      lots: what.taken ? lotsOf(what.taken) : [],
      ...(pounds !== undefined && { pounds }),
      againstStandard: (what.change - withStandard) as Cents,
      againstToday: what.change,
      houseTotal: (total + what.change) as Cents,
      effects: effectsOf(what, house, reckon(house, item, id, cost), today),
      decision,
      ...delayOf(decision, house.book.contract),
      ...restockingOf(option, cost),
    };
  });
}

/** Where the change of the total comes from; the amounts add up to it. */
function effectsOf(
  { here, allowances, elsewhere, onNet }: EffectDifference,
  house: HousePrice,
  then: Reckoning | undefined,
  today: Reckoning | undefined,
): ReasonedFigure[] {
  const before = today && today.change !== 0 ? `; today's choice is ${printMoneyChange(today.change, 'always')}` : '';
  const moves = allowances.map(({ id, change, before: drawnToday, committed, settled }) => {
    const sized = house.allowances.find((each) => each.allowance.id === id);
    const drawn = `${exact(committed)} of ${exact(sized?.amount ?? (0 as Cents))} drawn then, ${exact(drawnToday)} today`;
    return {
      what: `Allowance ${sized?.allowance.name ?? id}`,
      amount: change,
      why: settled ? `${drawn}; every choice on it is made then` : `${drawn}; choices on it are still open then`,
    };
  });
  return [
    ...(here === 0
      ? []
      : [{ what: 'At this place', amount: here, why: `${then?.why ?? 'nothing to compare'}${before}` }]),
    ...moves,
    ...(elsewhere === 0
      ? []
      : [{ what: 'At other places', amount: elsewhere, why: 'whole packs and freight that they share with this one' }]),
    ...(onNet.markup === 0
      ? []
      : [
          {
            what: 'Mark-up',
            amount: onNet.markup,
            why: 'on the net of what no change order has yet, with this choice',
          },
        ]),
    ...(onNet.fee === 0
      ? []
      : [{ what: 'Contractor’s fee', amount: onNet.fee, why: 'its share of what the cost changes' }]),
  ];
}

function exact(amount: Cents): string {
  return printMoney(amount, 'always');
}
