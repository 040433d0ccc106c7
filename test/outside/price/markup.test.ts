import { expect } from 'vitest';
import type { Net } from '../../../src/core/model/index.js';
import { markupOnNet, priceHouse, taxOn } from '../../../src/core/price/index.js';
import { cents, contract, item, option, percent, priceBook } from '../../price/house.js';
import { published } from '../published.js';

// The rules are published without figures, or with percentages alone: the amounts are ours, worked out by hand.
const net = (work: number, allowance = 0): Net => ({ allowance: cents(allowance), work: cents(work) });
const onNet = { ...contract, markupOn: 'net' } as const;

published(
  {
    what: 'additions and credits in one change: overhead and profit on the net increase, if there is one',
    source: 'AIA A201-2017, 7.3.8, as explained at learn.aiacontracts.com, article 6535513',
    mark: 'S2',
  },
  () => {
    // Paint added for 4 300.00, paint left out for 1 850.50: the net is 2 449.50, and 15 % of it 367.425, so 367.43.
    const added = option({ id: 'paint/added', material: 43 });
    const left = option({ id: 'paint/left-out', material: 18.505 });
    const ids = ['paint/added', 'paint/left-out'];
    const items = [
      item({ selection: 'a/paint/walls', net: 100, options: ids, chosen: 'paint/added' }),
      item({ selection: 'b/paint/walls', net: 100, options: ids, standard: 'paint/left-out', decided: true }),
    ];
    const book = priceBook([added, left], { markupOn: 'net' });
    const house = priceHouse(items, [], book);
    expect(house.net).toEqual(net(2449.5));
    expect(house.onNet.markup).toBe(cents(367.43));
    expect(house.change).toBe(cents(2816.93));
  },
);

published(
  {
    what: 'a change that comes to a net decrease: the contractor keeps overhead and profit, the credit is the net cost',
    source: 'AIA A201-2017, 7.3.8, as explained at learn.aiacontracts.com, article 6535513',
    mark: 'S2',
  },
  () => {
    expect(markupOnNet(net(1200 - 3100), onNet)).toBe(0);
    expect(markupOnNet(net(3100 - 1200), onNet)).toBe(cents(285));
    // What comes off an allowance is set off against work that is added.
    expect(markupOnNet(net(3100, -1200), onNet)).toBe(cents(285));
  },
);

published(
  {
    what: 'a contract with rates of its own both ways: 15 % on the net extra, 5 % on the net credit',
    source: 'clause at lawinsider.com, Lump Sum and Time and Materials Changes: own forces',
    mark: 'S',
  },
  () => {
    const rules = { ...onNet, creditMarkup: percent(5) };
    expect(markupOnNet(net(2000), rules)).toBe(cents(300));
    expect(markupOnNet(net(-2000), rules)).toBe(cents(-100));
  },
);

published(
  {
    what: 'the rounding rule goes on the aggregated state and local taxes, up when the third decimal is over four',
    source: 'RCW 82.08.054; Streamlined Sales and Use Tax Agreement, sec. 324',
    mark: 'S',
  },
  () => {
    const state = { authority: 'State', rate: percent(6.5), on: ['material', 'freight'] } as const;
    const local = { authority: 'City', rate: percent(3.75), on: ['material', 'freight'] } as const;
    // On 0.90: 0.0585 and 0.03375 are 0.06 and 0.03 alone, 0.09225 together; on 1.00: 0.065 and 0.0375, 0.07 and 0.04 alone,
    // 0.1025 together, which is 0.10.
    const on = (dollars: number) => taxOn({ material: cents(dollars), freight: 0, labor: cents(50) }, [state, local]);
    expect(on(0.9)).toBe(9);
    expect(on(1)).toBe(10);
    // By kind: a state that taxes labor besides, at 2 %: 0.10 and a dollar.
    const labor = { authority: 'State', rate: percent(2), on: ['labor'] } as const;
    expect(taxOn({ material: cents(1), freight: 0, labor: cents(50) }, [state, local, labor])).toBe(110);
  },
);
