import fc from 'fast-check';
import type { Contract } from '../../src/core/model/index.js';
import type { Item } from '../../src/core/price/index.js';
import { allowance, item, option, percent, priceBook } from './house.js';

const products = fc.array(
  fc.record({
    material: fc.integer({ min: 1, max: 40_000 }).map((n) => n / 1000),
    labor: fc.integer({ min: 0, max: 20_000 }).map((n) => n / 1000),
    freight: fc.integer({ min: 0, max: 50_000 }).map((n) => n / 100),
    holds: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
  }),
  { minLength: 2, maxLength: 5 },
);
/** The rules of a contract: mark-up on lines or on the net, one rate or several, with a fee or without. */
export const randomRules = fc
  .record({
    markupOn: fc.constantFrom('each-line' as const, 'net' as const),
    overage: fc.constantFrom(15, 20),
    work: fc.constantFrom(15, 10),
    credit: fc.constantFrom(false as const, 'as-added' as const, percent(5)),
    returns: fc.constantFrom(100, 80),
    fee: fc.option(fc.constant(percent(8.5)), { nil: undefined }),
    county: fc.boolean(),
  })
  .map(({ markupOn, overage, work, credit, returns, fee, county }): Partial<Contract> => {
    const state = { authority: 'State', rate: percent(6.25), on: ['material', 'freight'] } as const;
    return {
      markupOn,
      overageMarkup: percent(overage),
      workMarkup: percent(work),
      creditMarkup: credit,
      creditReturns: percent(returns),
      ...(fee && { fee }),
      tax: county ? [state, { authority: 'County', rate: percent(1.13), on: ['material', 'labor'] }] : [state],
    };
  });

/** Houses of up to five products over up to 25 places in three categories and two trades, some open, some on allowances. */
export const randomHouse = fc.tuple(products, randomRules).chain(([sketches, rules]) => {
  const ids = sketches.map((_, index) => `floor/p${index}`);
  const id = fc.constantFrom(...ids);
  const sketch = fc.record({
    net: fc.integer({ min: 0, max: 500_000 }).map((n) => n / 1000),
    waste: fc.integer({ min: 0, max: 20 }),
    standard: fc.option(id, { nil: undefined }),
    chosen: fc.option(id, { nil: undefined }),
    decided: fc.boolean(),
    allowance: fc.option(fc.constantFrom('a1', 'a2'), { nil: undefined }),
    considered: fc.subarray(ids, { minLength: 0 }),
    supply: fc.constantFrom('contractor' as const, 'contractor' as const, 'owner-furnished' as const),
  });
  return fc.array(sketch, { minLength: 1, maxLength: 25 }).map((list) => {
    const items: Item[] = list.map(({ chosen, decided, ...rest }, index) =>
      item({
        ...JSON.parse(JSON.stringify(rest)),
        selection: `r${index % 6}/floor/p${index}`,
        options: ids,
        category: `kind-${index % 3}`,
        trade: index % 3 === 0 ? 'flooring' : 'carpentry',
        decided: decided || chosen !== undefined,
        ...(chosen && { chosen }),
      }),
    );
    const options = sketches.map(({ holds, ...rest }, index) =>
      option({ id: `floor/p${index}`, ...rest, ...(holds && { holds }) }),
    );
    const book = priceBook(options, rules);
    return { items, book, allowances: [allowance('a1', 900), allowance('a2', 2500)] };
  });
});
