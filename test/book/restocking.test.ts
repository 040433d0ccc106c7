import { describe, expect, test } from 'vitest';
import { smallBook, type Edits } from './small-house.js';

const study = 'content/rooms/study.md';
const shiplap = 'content/options/ceiling-board/pine-shiplap-1x8.md';
const ceiling = 'study/ceiling-board/ceiling';

/** Fir over the study, after shiplap had been ordered or not. */
function withFir(more: string, edits: Edits = {}): Edits {
  const chosen = `[pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6\n    chosen-on: 2026-03-20\n${more}`;
  return { ...edits, [study]: [['[pine-shiplap-1x8, fir-tg-1x6]\n', chosen]] };
}
const insteadOf = (more = ''): string =>
  `    released: { on: 2026-03-05, option: pine-shiplap-1x8 }\n    instead-of: { option: pine-shiplap-1x8, on: 2026-03-20, why: Lighter${more} }\n`;
const terms: Edits = { [shiplap]: [['lead: 6 weeks', 'returns: { until-days: 30, restocking: 20 % }\nlead: 6 weeks']] };

const choice = (edits: Edits) => {
  const book = smallBook(edits);
  const selection = book.selections.find(({ id }) => id === ceiling);
  if (!selection) throw new Error(`${ceiling} is not there`);
  return { money: book.money, selection };
};

describe('what a supplier keeps of an order that was changed', () => {
  test('is in the total and in the change of the place as charged, without mark-up', () => {
    const [plain, charged] = [choice(withFir('')), choice(withFir(insteadOf(', restocking: $35.50')))];
    expect(charged.selection.insteadOf?.restocking).toMatchObject({ amount: 35_50, why: 'as charged' });
    expect(charged.money.today - plain.money.today).toBe(35_50);
    expect(charged.selection.change - plain.selection.change).toBe(35_50);
    expect(charged.money.sharedPacks).toBe(plain.money.sharedPacks);
    expect(charged.money.low).toBe(charged.money.today);
    const step = charged.money.steps.find(({ of }) => of === ceiling);
    expect(step?.why).toContain('the supplier keeps $35.50 of what was ordered before: as charged');
  });

  test('by the terms of what was ordered, on its material there', () => {
    const { money, selection } = choice(withFir(insteadOf(), terms));
    const before = selection.alternatives.find(({ option }) => option === 'pine-shiplap-1x8');
    const kept = Math.round((before?.cost.material ?? 0) / 5);
    expect(selection.insteadOf?.restocking?.amount).toBe(kept);
    expect(money.today - choice(withFir('', terms)).money.today).toBe(kept);
  });

  test('is not guessed where neither is known, and does not move what another choice would cost', () => {
    const unknown = choice(withFir(insteadOf()));
    expect(unknown.selection.insteadOf?.restocking).toBeUndefined();
    const [plain, charged] = [choice(withFir('')), choice(withFir(insteadOf(', restocking: $35.50')))];
    const moves = ({ selection }: typeof plain) => selection.alternatives.map(({ againstToday }) => againstToday);
    expect(moves(charged)).toEqual(moves(plain));
    const totals = ({ selection }: typeof plain) => selection.alternatives.map(({ houseTotal }) => Number(houseTotal));
    expect(totals(charged)).toEqual(totals(plain).map((total) => total + 35_50));
  });
});
