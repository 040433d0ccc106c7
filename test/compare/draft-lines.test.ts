import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeList, draftLines, moneyParts, type Comparison } from '../../src/core/compare/index.js';
import { compareBooks } from '../../src/disk/load/index.js';
import { smallBook, type Edits } from '../book/small-house.js';

const labels = { from: 'issue 1', to: 'issue 2' };
const sum = (amounts: readonly number[]): number => amounts.reduce((total, amount) => total + amount, 0);

/** What can differ between two versions of a house of two rooms that share the packs of one floor. */
interface Version {
  readonly study: string | undefined;
  readonly den: string | undefined;
  readonly ceiling: string | undefined;
  readonly denLength: number;
  readonly pine: string;
  readonly carton: number;
  readonly markup: number;
  readonly markupOn: 'each-line' | 'net';
  readonly allowance: number;
  readonly contract: number;
  readonly slug: 'den' | 'snug';
}

const first: Version = {
  study: 'pine',
  den: 'pine',
  ceiling: undefined,
  denLength: 9,
  pine: '4.00',
  carton: 20,
  markup: 15,
  markupOn: 'each-line',
  allowance: 1000,
  contract: 100_000,
  slug: 'den',
};

const floors = fc.constantFrom('oak', 'pine', 'none', undefined);
const versions: fc.Arbitrary<Version> = fc.record({
  study: floors,
  den: floors,
  ceiling: fc.constantFrom('pine-shiplap-1x8', 'fir-tg-1x6', undefined),
  denLength: fc.integer({ min: 6, max: 14 }),
  pine: fc.constantFrom('4.00', '4.37', '11.15'),
  carton: fc.constantFrom(20, 23, 45),
  markup: fc.constantFrom(15, 12),
  markupOn: fc.constantFrom('each-line', 'net'),
  allowance: fc.constantFrom(1000, 650),
  contract: fc.constantFrom(100_000, 100_250),
  slug: fc.constantFrom('den', 'snug'),
});

function edits(version: Version): Edits {
  const chosen = (option: string | undefined): string => (option === undefined ? '' : `    chosen: ${option}\n`);
  return {
    'content/rooms/study.md': [
      ['    chosen: pine\n', chosen(version.study)],
      ['[pine-shiplap-1x8, fir-tg-1x6]\n', `[pine-shiplap-1x8, fir-tg-1x6]\n${chosen(version.ceiling)}`],
    ],
    [`content/rooms/${version.slug}.md`]:
      `---\nname: Den\nnumber: "102"\nlevel: main\nuse: study\nsize: 9'-0" x ${version.denLength}'-0"\nceiling: flat 9'-0"\n` +
      `openings: []\nselections:\n  - at: floor\n    category: floor\n    standard: oak\n    considering: [oak, pine]\n${chosen(version.den)}---\n`,
    'content/options/floor/pine.md': [
      ['material: $4.00', `material: $${version.pine}`],
      ['holds: 20 sq ft', `holds: ${version.carton} sq ft`],
    ],
    'content/house.md': [
      ['overage-markup: 15 %', `overage-markup: ${version.markup} %\n  markup-on: ${version.markupOn}`],
      ['amount: "$1,000"', `amount: "$${version.allowance}"`.replace('$1000', '$1,000')],
      ['sum: $100,000', `sum: $${version.contract / 1000 === 100 ? '100,000' : '100,250'}`],
    ],
  };
}

const between = (from: Partial<Version>, to: Partial<Version>): Comparison =>
  compareBooks(smallBook(edits({ ...first, ...from })), smallBook(edits({ ...first, ...to })), labels);

describe('money', () => {
  test('adds up to the cent, whatever changes at once', () => {
    fc.assert(
      fc.property(versions, versions, (from, to) => {
        const comparison = between(from, to);
        const { money } = comparison;
        expect(money.difference).toBe(comparison.to.today - comparison.from.today);
        expect(sum(moneyParts(comparison).map(({ amount }) => amount))).toBe(money.difference);
        const draft = draftLines(comparison);
        expect(sum(draft.lines.map((line) => line.money))).toBe(draft.money);
        expect(draft.money).toBe(money.difference);
        const byRoom = comparison.rooms.map((room) => room.byChoice);
        expect(sum(byRoom)).toBe(money.choices);
      }),
      { numRuns: 25 },
    );
  });

  test('choices alone: neither the price book nor the terms move', () => {
    fc.assert(
      fc.property(versions, versions, (from, to) => {
        const { pine, carton, markup, markupOn, allowance, contract } = from;
        const { money } = between(from, { ...to, pine, carton, markup, markupOn, allowance, contract });
        expect(money).toMatchObject({ priceBook: 0, terms: 0, contractSum: 0 });
      }),
      { numRuns: 8 },
    );
  });

  test('prices alone: no choice, and no pack shared with one, moves', () => {
    fc.assert(
      fc.property(versions, versions, (from, to) => {
        const { pine, carton } = to;
        const comparison = between(from, { ...from, pine, carton });
        expect(comparison.money).toMatchObject({ choices: 0, allowances: 0, sharedPacks: 0, terms: 0 });
        // Where mark-up is on the net, the net of a price's rise has its own.
        const kinds = ['price-book', ...(from.markupOn === 'net' ? ['net-mark-up'] : [])];
        expect(draftLines(comparison).lines.filter((line) => !kinds.includes(line.kind))).toEqual([]);
      }),
      { numRuns: 8 },
    );
  });
});

describe('lines of a change order', () => {
  test('a draft of an option, filled in and chosen, is told apart from prices and terms', () => {
    const fir = 'content/options/ceiling-board/fir-tg-1x6.md';
    const draftFir = '---\nname: Fir board\nprice: { material: $9.00 / sq ft, labor: $5.00 / sq ft }\n---\n';
    const from = smallBook({ [fir]: draftFir }, undefined, () => true);
    const to = smallBook({
      'content/rooms/study.md': [['fir-tg-1x6]\n', 'fir-tg-1x6]\n    chosen: fir-tg-1x6\n']],
    });
    const { lines, note, money } = draftLines(compareBooks(from, to, labels));
    expect(note).toBeUndefined();
    expect(lines.map(({ kind }) => kind)).toEqual(['selection', 'allowance', 'mark-up']);
    expect(lines[0]).toMatchObject({ from: 'open', to: expect.stringMatching(/fir/iu) as string });
    expect(sum(lines.map((line) => line.money))).toBe(money);
  });

  test('a choice, what it moves in packs that another room shares, and the price book apart', () => {
    // Before: 120 + 81 sq ft of pine, 5 % waste: 211.05 sq ft in 11 cartons of 20.
    // The den takes oak, its standard; the study's pine alone is 126 sq ft in 7 cartons.
    const draft = draftLines(between({}, { den: 'oak', pine: '4.37' }));
    expect(draft.title).toBe('102 Den: Floor');
    const [den, shared, prices] = draft.lines;
    expect(den).toMatchObject({
      kind: 'selection',
      room: 'den',
      roomTitle: '102 Den',
      selection: 'den/floor/floor',
      what: 'Floor, floor',
      from: 'Pine strip',
      to: 'Oak strip',
      quantity: '81 sq ft',
    });
    expect(shared?.kind).toBe('shared-packs');
    // 7 cartons × 20 sq ft × $0.37 = $51.80, and 5 % tax, returned less of the study's credit.
    expect(prices).toMatchObject({ kind: 'price-book', money: 5_439 });
    expect(draft.trades).toEqual(['carpentry']);
  });

  test('an allowance that is overrun is a line, and its mark-up another', () => {
    const comparison = between({}, { ceiling: 'fir-tg-1x6', allowance: 1000 });
    const draft = draftLines(comparison);
    expect(draft.lines.map(({ kind }) => kind)).toEqual(['selection', 'allowance', 'mark-up']);
    const [choice, over, markup] = draft.lines;
    expect(choice).toMatchObject({
      money: 0,
      to: expect.any(String) as string,
      what: expect.stringContaining('drawn on Wood ceilings') as string,
    });
    expect(markup?.money).toBe(Math.round((over?.money ?? 0) * 0.15));
  });

  test('mark-up on the net is one line after additions and deductions, and says what it is on', () => {
    const net = { markupOn: 'net', pine: '8.00' } as const;
    const draft = draftLines(between({ ...net, study: 'oak', den: 'oak' }, { ...net, study: 'pine', den: 'oak' }));
    expect(draft.lines.find(({ kind }) => kind === 'selection')?.money).toBeLessThan(0);
    // Only deductions: nothing is added on them, and nothing returns.
    expect(draft.netted?.markup).toBe(0);
    expect(draft.lines.map(({ kind }) => kind)).not.toContain('net-mark-up');

    const back = draftLines(
      between({ ...net, study: 'oak', den: 'oak' }, { ...net, study: 'pine', den: 'oak', ceiling: 'fir-tg-1x6' }),
    );
    const lines = back.lines.filter(({ kind }) => kind !== 'net-mark-up');
    const sums = sum(lines.map(({ money }) => money));
    expect(lines.some(({ money }) => money > 0) && lines.some(({ money }) => money < 0)).toBe(true);
    const last = back.lines.at(-1);
    expect(back.netted).toMatchObject({ markup: Math.round(sums * 0.15) });
    expect((back.netted?.allowance ?? 0) + (back.netted?.work ?? 0)).toBe(sums);
    expect(last).toMatchObject({ kind: 'net-mark-up', money: Math.round(sums * 0.15) });
    expect(last?.what).toMatch(/^Mark-up on additions less deductions: 15 % of \$[\d,]+\.\d\d$/u);
  });

  test('the standard chosen at no change is in the contract already, and no line; one that is ordered neither', () => {
    const open = between({ den: undefined }, { den: 'oak' });
    expect(draftLines(open).lines).toEqual([]);
    // Whoever signed while it was open is told all the same, and initials the page.
    expect(changeList(open)).toMatchObject([
      { from: 'open, standard Oak strip counted', to: 'Oak strip', money: 0, trade: 'Carpentry', page: '102 Den' },
    ]);
    // A choice within an allowance costs nothing either, and is no standard.
    expect(draftLines(between({}, { ceiling: 'pine-shiplap-1x8' })).lines).toMatchObject([
      { money: 0, from: 'open' },
      {},
    ]);
    const ordered = (text: string): Edits => ({ 'content/rooms/study.md': [['chosen: pine', text]] });
    const comparison = compareBooks(
      smallBook(),
      smallBook(ordered('chosen: pine\n    chosen-on: 2026-03-01\n    ordered: { on: 2026-04-01, option: pine }')),
      labels,
    );
    expect(comparison.rooms[0]?.selections[0]?.aspects).toEqual(['state']);
    expect(draftLines(comparison)).toMatchObject({ title: 'No change in any room', lines: [], money: 0 });
  });

  test('a shape that changes is a line without money', () => {
    const draft = draftLines(between({}, { denLength: 10 }));
    expect(
      draft.lines.filter(({ kind }) => kind === 'shape').map(({ what, quantity, money }) => [what, quantity, money]),
    ).toEqual([
      ['Floor; only finishes are priced', '+9 sq ft', 0],
      ['Ceiling; only finishes are priced', '+9 sq ft', 0],
      ['Walls, less openings; only finishes are priced', '+18 sq ft', 0],
    ]);
  });

  test('a finish that stays tells how much of it there was, and is', () => {
    const longer = changeList(between({}, { denLength: 10 }));
    expect(longer.find(({ what }) => what === 'Floor, floor; quantity')).toMatchObject({
      from: '81 sq ft',
      to: '90 sq ft',
    });
    const other = changeList(between({}, { denLength: 10, den: 'oak' }));
    expect(other.find(({ what }) => what === 'Floor, floor')).toMatchObject({ from: 'Pine strip', to: 'Oak strip' });
  });

  test('days: a milestone that moves, and an order that is late', () => {
    const book = (edit: Edits, on: string) => smallBook(edit, on, ({ code }) => code === 'decide-late');
    const later: Edits = { 'content/house.md': [['date: 2026-05-04', 'date: 2026-05-11']] };
    const moved = draftLines(compareBooks(book({}, '2026-04-20'), book(later, '2026-04-20'), labels));
    expect(moved.days.milestones[0]).toMatchObject({ name: 'Framing starts', days: 5 });
    expect(moved.days.most).toBe(5);
    // The floor is due at trim, 60 working days after 4 May, 20 of them for it to come: ordered in June, it is not late;
    // on the last of July it is.
    const oak: Edits = { 'content/rooms/study.md': [['chosen: pine', 'chosen: oak']] };
    expect(draftLines(compareBooks(book({}, '2026-06-01'), book(oak, '2026-06-01'), labels)).days.late).toEqual([]);
    const late = draftLines(compareBooks(book({}, '2026-07-31'), book(oak, '2026-07-31'), labels));
    expect(late.days.late).toMatchObject([{ room: 'study', milestone: 'Trim' }]);
    expect(late.days.most).toBeGreaterThan(0);
  });
});

test('an allowance at a rate that holds more, as a room grew, says so; one whose record says another amount is told by its term', () => {
  const at = (amount: string, length: string): ReturnType<typeof smallBook> =>
    smallBook({
      'content/house.md': [['amount: "$1,000"', `amount: ${amount}`]],
      'content/rooms/study.md': [["12'-0", `${length}'-0`]],
    });
  const linesOf = (from: ReturnType<typeof smallBook>, to: ReturnType<typeof smallBook>) =>
    draftLines(compareBooks(from, to, labels)).lines.filter(({ what }) => what.includes('what it holds'));
  // 10' × 12' and 10' × 14' at $9.25.
  expect(linesOf(at('$9.25 / sq ft', '12'), at('$9.25 / sq ft', '14'))).toEqual([
    {
      kind: 'allowance',
      what: 'Allowance Wood ceilings: what it holds, by what is measured on it',
      from: '$1,110',
      to: '$1,295',
      quantity: '',
      money: 0,
    },
  ]);
  expect(linesOf(at('$9.25 / sq ft', '12'), at('$9.75 / sq ft', '12'))).toEqual([]);
});
