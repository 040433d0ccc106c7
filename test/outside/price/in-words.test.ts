import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Contract, CostPart, Invoice } from '../../../src/core/model/index.js';
import {
  contractSteps,
  makeLedger,
  nettedText,
  priceHouse,
  reckoningText,
  type HousePrice,
  type Item,
} from '../../../src/core/price/index.js';
import type { Cents } from '../../../src/base/units/index.js';
import { allowance, cents, contract, item, option, percent, priceBook } from '../../price/house.js';
import { handedOut, onNet, sum } from './second-way.js';

/** What is told of money, worked again from the words with a calculator; and invoices handed out by hand. No publication is behind it. */

/** Amounts in a text, in cents: `$1,200.00`, `−$30.00`. */
const amountsIn = (text: string): readonly number[] =>
  [...text.matchAll(/([−-]?)\+?\$([\d,]+(?:\.\d\d)?)/gu)].map(
    ([, sign, digits = '']) => (sign === '' ? 1 : -1) * Math.round(Number(digits.replaceAll(',', '')) * 100),
  );
const percentIn = (text: string): number => Number(/([\d.]+) %/u.exec(text)?.[1] ?? NaN);
const shareOf = (rate: number, of: number): number =>
  Math.floor(Number(((Math.abs(of) * rate) / 100).toPrecision(12)) + 1 / 2);

const rules = fc.record({
  overageMarkup: fc.constantFrom(0, 12.5, 15),
  creditReturns: fc.constantFrom(100, 80, 75),
  creditMarkup: fc.constantFrom(false as const, 'as-added' as const, 5),
});
const contractOf = ({
  overageMarkup,
  creditReturns,
  creditMarkup,
}: {
  overageMarkup: number;
  creditReturns: number;
  creditMarkup: false | 'as-added' | number;
}): Partial<Contract> => ({
  overageMarkup: percent(overageMarkup),
  creditReturns: percent(creditReturns),
  creditMarkup: typeof creditMarkup === 'number' ? percent(creditMarkup) : creditMarkup,
});

const invoice = (amount: number, last = true): Invoice => ({
  option: 'floor/oak',
  number: 'F-1',
  on: '2026-04-14',
  amount: amount as Cents,
  heldBy: '',
  last,
});

interface Given {
  readonly nets: readonly number[];
  readonly ordered: number;
  readonly bill: number;
  readonly holds: number;
  readonly covers: readonly CostPart[];
  readonly rules: Partial<Contract>;
}

/** Floors of oak on one allowance, of which the first so many were ordered and are invoiced. */
function floors({ nets, ordered, bill, holds, covers, rules: terms }: Given): HousePrice {
  const oak = option({ id: 'floor/oak', material: 10.37, labor: 5.11, freight: 31.4 });
  const items = nets.map((net, index): Item => ({
    ...item({
      selection: `r${index}/floor/floor`,
      net,
      options: ['floor/oak'],
      chosen: 'floor/oak',
      allowance: 'floors',
    }),
    ordered: index < ordered,
  }));
  const sized = allowance('floors', holds, [...covers]);
  const book = priceBook([oak], { ...terms, tax: [{ rate: percent(6.25), on: ['material', 'freight'] }] });
  return priceHouse(items, [{ ...sized, allowance: { ...sized.allowance, invoices: [invoice(bill)] } }], book);
}

const given = fc
  .record({
    nets: fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 4 }),
    ordered: fc.integer({ min: 1, max: 4 }),
    bill: fc.integer({ min: 1, max: 900_000 }),
    holds: fc.integer({ min: 100, max: 9000 }),
    covers: fc.constantFrom(
      ['material'] as const,
      ['material', 'freight', 'tax'] as const,
      ['material', 'labor'] as const,
    ),
    terms: rules,
  })
  .map(({ terms, ordered, ...rest }): Given => ({
    ...rest,
    ordered: Math.min(ordered, rest.nets.length),
    rules: contractOf(terms),
  }));

test('an invoice is handed out cent by cent by what was computed for the places it is for; all else stays', () => {
  fc.assert(
    fc.property(given, (one) => {
      const { nets, ordered, bill, covers } = one;
      const { today } = floors(one);
      const computed = floors({ ...one, ordered: 0 }).today;
      const cells = nets.slice(0, ordered).flatMap((_, place) => covers.map((of) => ({ place, of })));
      const costOf = (world: typeof today, place: number) => world.costs.get(`r${place}/floor/floor`);
      const paid = handedOut(
        bill,
        cells.map(({ place, of }) => costOf(computed, place)?.[of] ?? 0),
      );
      nets.forEach((_, place) => {
        const expected = { ...costOf(computed, place) } as Record<string, number>;
        cells.forEach((cell, index) => {
          if (cell.place === place) expected[cell.of] = paid[index] ?? NaN;
        });
        expected['total'] = sum(['material', 'freight', 'tax', 'labor'].map((kind) => expected[kind] ?? 0));
        expect(costOf(today, place)).toEqual(expected);
      });
    }),
  );
});

describe('the words of an allowance', () => {
  test('lead to the figures beside them', () => {
    fc.assert(
      fc.property(given, (one) => {
        const house = floors(one);
        const [entry] = makeLedger(house);
        if (!entry) throw new Error('there is one');
        const paid = entry.lines.filter(({ computed }) => computed !== undefined);
        expect(paid).toHaveLength(one.ordered);
        const figure = (what: string) => entry.figures.find((each) => each.what === what);
        const drawn = figure('Drawn')?.why ?? '';
        const more = sum(paid.map(({ covered, computed = 0 }) => covered - computed));
        expect(drawn).toContain(`, ${one.ordered} of them as invoiced, `);
        if (more === 0) expect(drawn).toContain('as computed');
        else {
          expect(drawn).toContain(more > 0 ? ' more than computed' : ' less than computed');
          expect(amountsIn(drawn)).toEqual([Math.abs(more)]);
        }
        const markup = figure('Mark-up on it');
        if (markup) expect(markup.amount).toBe(shareOf(percentIn(markup.why), amountsIn(markup.why)[0] ?? NaN));
        const back = figure('Mark-up that returns with it');
        if (back) {
          expect(back.amount).toBe(-shareOf(percentIn(back.why), amountsIn(back.why)[0] ?? NaN));
          expect(amountsIn(back.why)).toEqual([entry.balance - entry.retained]);
        }
        const returned = figure('Returns to the owner');
        if (returned) {
          const [balance = NaN, stays = NaN, plus = 0] = amountsIn(returned.why);
          expect([balance - stays + plus, returned.amount]).toEqual([entry.credit, entry.credit]);
        }
        const change = figure('Change of the contract');
        if (entry.overage > 0) expect(sum(amountsIn(change?.why ?? ''))).toBe(entry.change);
        const [, step] = contractSteps(contract, [entry], [], cents(0), []);
        if (entry.change === 0) return;
        const [all = NaN, invoiced = NaN, less = NaN, ...rest] = amountsIn(step?.why ?? '');
        expect(invoiced).toBe(sum(paid.map(({ covered }) => covered)));
        const stays = / stays with the builder/u.test(step?.why ?? '') ? (rest[0] ?? NaN) : 0;
        const returns = / mark-up returns/u.test(step?.why ?? '') ? (rest.at(-1) ?? NaN) : 0;
        const added = / mark-up$/u.test(step?.why ?? '') ? (rest[0] ?? NaN) : 0;
        expect(all - less + stays - returns + added).toBe(entry.change);
        expect(step?.amount).toBe(entry.change);
      }),
      { numRuns: 200 },
    );
  });
});

test('the words of a selection lead to what it changes', () => {
  const money = fc.integer({ min: 0, max: 900_000 });
  fc.assert(
    fc.property(money, money, rules, fc.boolean(), (counted, standard, terms, isExtra) => {
      const against = isExtra ? 0 : standard;
      const difference = counted - against;
      const own = contractOf(terms);
      const rate =
        difference > 0
          ? terms.overageMarkup
          : terms.creditMarkup === false
            ? 0
            : terms.creditMarkup === 'as-added'
              ? terms.overageMarkup
              : terms.creditMarkup;
      const back = difference > 0 ? difference : -shareOf(terms.creditReturns, difference);
      const markup = Math.sign(back) * shareOf(rate, back);
      const text = reckoningText(
        {
          parts: ['material', 'freight', 'tax', 'labor'],
          ...{ counted: counted as Cents, standard: against as Cents, difference: difference as Cents },
          ...{
            markup: (markup || 0) as Cents,
            retained: (back - difference || 0) as Cents,
            change: (back + markup) as Cents,
          },
        },
        { counted: 'oak', ...(!isExtra && { standard: 'pine' }) },
        { ...contract, ...own, workMarkup: percent(terms.overageMarkup) },
      );
      const [sumText = '', ...effects] = text.split(/, (?=plus|of which|with )/u);
      const amounts = amountsIn(sumText.replaceAll('−', '-'));
      expect(amounts.slice(0, isExtra ? 1 : 2)).toEqual(isExtra ? [counted] : [counted, standard]);
      expect(Math.abs(amounts.at(-1) ?? NaN)).toBe(Math.abs(difference));
      const effect = sum(
        effects.map((words) => {
          const [amount = 0] = amountsIn(words);
          return words.startsWith('with ') ? -amount : amount;
        }),
      );
      expect(difference + effect).toBe(back + (markup || 0));
      if (difference > 0 && markup !== 0) expect(text).toContain(`mark-up at ${terms.overageMarkup} %`);
    }),
    { numRuns: 300 },
  );
});

test('the words of what a change order has netted', () => {
  const money = fc.integer({ min: -300_000, max: 300_000 }).map((amount) => amount as Cents);
  fc.assert(
    fc.property(money, money, rules, fc.constantFrom(10, 15), (onAllowances, work, terms, workRate) => {
      const own = { ...contract, ...contractOf(terms), workMarkup: percent(workRate), markupOn: 'net' as const };
      const markup = onNet({ allowance: onAllowances, work }, { contract: own }) as Cents;
      const text = nettedText({ allowance: onAllowances, work, markup }, own);
      expect(text.startsWith('additions less deductions: ')).toBe(true);
      const parts = [...text.matchAll(/([\d.]+) % of ([−-]?)\$([\d,]+(?:\.\d\d)?)/gu)].map(
        ([, rate, sign, digits = '']) => {
          const amount = Math.round(Number(digits.replaceAll(',', '')) * 100);
          return (sign === '' ? 1 : -1) * shareOf(Number(rate), amount);
        },
      );
      expect(sum(parts) + 0).toBe(markup + 0);
      // What was drafted by other rates is told as it was.
      expect(nettedText({ allowance: onAllowances, work, markup: (markup + 1) as Cents }, own)).toContain(
        'as it was drafted',
      );
    }),
    { numRuns: 300 },
  );
});
