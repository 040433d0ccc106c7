import {
  lotsOf,
  noCost,
  type ChoiceFigure,
  type HousePrice,
  type Item,
  type ReasonedFigure,
  type Reckoning,
} from '../price/index.js';
import { printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import type { Decision } from '../calendar/index.js';
import type { Option } from '../model/index.js';
import type { Alternative, Rest } from './book.js';
import { optionId, type Draft } from './draft.js';
import { bearingOf } from './bearing-of.js';
import { delayOf, restockingOf } from './cost-of-days.js';
import type { Decider } from './make-decider.js';
import { reckon } from './reckon.js';
import { weigh } from './weigh.js';

/** Every option that could stand in a place, with the whole house computed for it. */
export function makeAlternatives(draft: Draft, item: Item, house: HousePrice, decide: Decider): Alternative[] {
  const { category, selection, options } = draft;
  const withStandard = house.choices.figure(item, item.standard).change;
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
    const figure = house.choices.figure(item, id);
    const { change, cost, pool, houseChange } = figure;
    const pounds = weigh(option, takeoffs);
    const decision = decideAlone(draft, option, decide);
    const left = leftOf(figure, item, id, house);
    return {
      option: slug,
      isStandard: slug === selection.standard,
      isChosen: slug === selection.chosen,
      takeoff: takeoffs,
      cost,
      lots: pool ? lotsOf(pool) : [],
      ...(pounds !== undefined && { pounds }),
      againstStandard: (change - withStandard) as Cents,
      againstToday: change,
      houseTotal: (total + houseChange) as Cents,
      ...(left && { left }),
      effects: effectsOf(figure, house, reckon(house, item, id, cost), today),
      decision,
      ...delayOf(decision, house.book.contract),
      ...restockingOf(option, cost),
    };
  });
}

/** When a place must be decided if it is for one option. */
export function decideAlone(draft: Draft, option: Option, decide: Decider): Decision {
  return decide({ ...bearingOf(draft), options: [option], chosen: draft.selection.chosen !== undefined });
}

/** Where the other open choices on its allowance stand while its alternatives are priced. */
export function restOf(item: Item, { choices }: HousePrice): Rest {
  const lines = choices.restOf(item).map(({ item: { selection, standard, considered }, stand: { option } }) => ({
    selection,
    ...(option !== undefined && { option }),
    isStandard: option !== undefined && option === standard,
    isConsidered: option !== undefined && considered.includes(option),
  }));
  return { change: choices.restChange(item), lines };
}

function leftOf({ allowances }: ChoiceFigure, item: Item, option: string, house: HousePrice): Alternative['left'] {
  const sized = house.allowances.find(({ allowance }) => allowance.id === item.allowance);
  const move = allowances.find(({ id }) => id === item.allowance);
  if (!sized || !move) return undefined;
  const { id } = sized.allowance;
  const alone = (house.committed.get(id) ?? 0) + house.choices.drawnAlone(item, option, id);
  return { after: (sized.amount - alone) as Cents, withRest: (sized.amount - move.committed) as Cents };
}

/** Where the change of the total comes from; the amounts add up to it. */
function effectsOf(
  { here, allowances, elsewhere, onNet }: ChoiceFigure,
  house: HousePrice,
  then: Reckoning | undefined,
  today: Reckoning | undefined,
): ReasonedFigure[] {
  const before = today && today.change !== 0 ? `; today's choice is ${printMoneyChange(today.change, 'always')}` : '';
  const moves = allowances.map(({ id, change, before: drawnBefore, committed, settled }) => {
    const sized = house.allowances.find((each) => each.allowance.id === id);
    const isToday = drawnBefore === house.committed.get(id);
    const drawn = `${exact(committed)} of ${exact(sized?.amount ?? (0 as Cents))} drawn then, ${exact(drawnBefore)} ${isToday ? 'today' : 'without it'}`;
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
