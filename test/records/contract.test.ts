import { describe, expect, it } from 'vitest';
import { readRecords } from '../../src/core/records/index.js';
import type { Contract } from '../../src/core/model/index.js';
import { edited, toldOf, type Edit } from './small-house.js';

const house = 'content/house.md';
const percent = (amount: number) => ({ amount, scale: 2 });

function contractOf(...edits: readonly Edit[]): Contract | undefined {
  return readRecords(edited(...edits)).value?.house.contract;
}

describe('the rules of a contract', () => {
  it('that names one mark-up has it for all, on each line, and no fee', () => {
    const contract = contractOf();
    expect(contract).toMatchObject({ markupOn: 'each-line', overageMarkup: percent(15), workMarkup: percent(15) });
    expect(contract).not.toHaveProperty('fee');
    expect(contractOf([house, 'credit-markup: false', 'credit-markup: true'])?.creditMarkup).toBe('as-added');
  });

  it('name a rate each, what they are on, a fee, and a tax for each authority', () => {
    const contract = contractOf(
      [house, '  overage-markup: 15 %', '  markup-on: net\n  overage-markup: 15 %\n  work-markup: 10 %\n  fee: 8 %'],
      [house, 'credit-markup: false', 'credit-markup: 5 %'],
      [
        house,
        'tax: { rate: 6.25 %, on: [material, freight] }',
        'tax:\n    - { authority: State, rate: 6.25 %, on: [material] }\n    - { authority: State, rate: 2 %, on: [labor] }',
      ],
    );
    expect(contract).toMatchObject({
      markupOn: 'net',
      overageMarkup: percent(15),
      workMarkup: percent(10),
      fee: percent(8),
      creditMarkup: percent(5),
      tax: [
        { authority: 'State', on: ['material'] },
        { authority: 'State', rate: percent(2), on: ['labor'] },
      ],
    });
  });

  it('ask of several taxes whose each is, and of mark-up on what it is', () => {
    const taxes = 'tax: [{ rate: 6.25 %, on: [material] }, { authority: County, rate: 1 %, on: [material] }]';
    expect(toldOf([house, 'tax: { rate: 6.25 %, on: [material, freight] }', taxes])).toEqual([
      "house.md:13:9 key-missing 'tax' lacks 'authority', as one of several | write authority: and who charges it, such as State",
    ]);
    expect(toldOf([house, '  overage-markup', '  markup-on: line\n  overage-markup'])).toMatchObject([
      expect.stringContaining("value-unknown 'markup-on' cannot be 'line'") as string,
    ]);
    expect(toldOf([house, 'credit-markup: false', 'credit-markup: no'])).toEqual([
      "house.md:16:18 value-type 'credit-markup': expected true or false, got 'no' | write false",
    ]);
    expect(toldOf([house, 'credit-markup: false', 'credit-markup: some'])).toHaveLength(1);
  });

  it('know an invoice by an option of their allowance, and a price by days in order', () => {
    const invoice = (option: string): Edit => [
      house,
      '    categories: [ceiling-board]',
      `    categories: [ceiling-board]\n    invoices:\n      - { for: ${option}, number: F-7, on: 2026-04-14, amount: "$831.60", held-by: Builder }`,
    ];
    expect(toldOf(invoice('ceiling-board/fir-tg-1x66'))).toMatchObject([
      expect.stringMatching(/option-unknown .*did you mean 'fir-tg-1x6'/u) as string,
    ]);
    expect(toldOf(invoice('interior-door/flush-door'))).toMatchObject([
      expect.stringContaining('allowance-category') as string,
    ]);
    expect(toldOf(invoice('fir'))).toMatchObject([
      expect.stringContaining('is not an option with its category') as string,
    ]);
    const board = 'content/options/ceiling-board/fir-tg-1x6.md';
    expect(toldOf([board, "by: Supplier's desk }", "by: Supplier's desk, until: 2026-02-01 }"])).toEqual([
      expect.stringContaining('date-order 2026-02-01 is before 2026-03-01, when it was quoted') as string,
    ]);
  });
});
