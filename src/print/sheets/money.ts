import type { BookSelection, Total } from '../../book/index.js';
import { costParts } from '../../model/index.js';
import type { LedgerEntry } from '../../price/index.js';
import { joinWords, printMoneyChange, printPercent } from '../../units/index.js';
import type { Cents } from '../../units/index.js';
import { changeFigure, moneyFigure } from './figure.js';
import type { Figure } from './figure.js';
import type { LookUp } from '../../book/index.js';

export interface MoneySheet {
  readonly steps: readonly {
    readonly what: string;
    readonly kind: string;
    /** Empty for a choice: its figures are on the sheet of upgrades and credits. */
    readonly why: string;
    readonly amount: Figure;
    readonly running: Figure;
  }[];
  readonly forecast: readonly { readonly label: string; readonly figure: Figure; readonly words: string }[];
  readonly ledger: readonly LedgerSheet[];
  readonly changes: readonly RoomChanges[];
  readonly upgrades: Figure;
  readonly credits: Figure;
  readonly net: Figure;
  readonly totals: readonly TotalSheet[];
  readonly rules: readonly string[];
}

/** One way to cut the cost of all finishes; the last line is the sum, the same in each. */
export interface TotalSheet {
  readonly title: string;
  readonly lines: readonly { readonly name: string; readonly figures: readonly Figure[]; readonly isSum: boolean }[];
}

export interface LedgerSheet {
  readonly name: string;
  /** What it covers, how it was sized, its note. */
  readonly words: string;
  readonly lines: readonly {
    readonly room: string;
    readonly place: string;
    readonly finish: string;
    readonly covered: Figure;
    readonly why: string;
    readonly isOpen: boolean;
  }[];
  /** Every figure with its reason, the change of the contract last. */
  readonly figures: readonly { readonly what: string; readonly why: string; readonly figure: Figure }[];
  readonly amount: Figure;
  readonly committed: Figure;
  readonly balance: Figure;
  readonly change: Figure;
  readonly state: string;
}

export interface RoomChanges {
  readonly room: string;
  readonly lines: readonly {
    readonly place: string;
    readonly finish: string;
    readonly instead: string;
    readonly chosen: Figure;
    readonly standard: Figure;
    readonly difference: Figure;
    readonly markup: Figure;
    /** What of a credit does not return. */
    readonly retained: Figure;
    readonly amount: Figure;
  }[];
  readonly total: Figure;
}

export function makeMoney(look: LookUp): MoneySheet {
  const { money, selections } = look.book;
  const moved = selections.filter(({ change }) => change !== 0);
  return {
    steps: money.steps.map(({ what, kind, amount, running, why }) => ({
      what,
      kind: kind.replace('-', ' '),
      why: kind === 'upgrade' || kind === 'credit' ? '' : why,
      amount: kind === 'contract' || kind === 'total' ? moneyFigure(amount) : changeFigure(amount),
      running: moneyFigure(running),
    })),
    forecast: [
      { label: 'Lowest', figure: moneyFigure(money.low), words: money.forecast.low.why },
      { label: 'Today', figure: moneyFigure(money.today), words: 'with every choice made so far' },
      { label: 'Likely', figure: moneyFigure(money.expected), words: money.forecast.expected.why },
      { label: 'Highest', figure: moneyFigure(money.high), words: money.forecast.high.why },
      {
        label: 'Contingency',
        figure: moneyFigure(money.contingency),
        words: 'held in the contract, not in these totals',
      },
      { label: 'Owner buys', figure: moneyFigure(money.ownerPurchases), words: 'outside the contract' },
    ],
    ledger: money.allowances.map((entry) => ledgerSheet(entry, look)),
    changes: roomChanges(moved, look),
    upgrades: changeFigure(money.upgrades),
    credits: changeFigure(money.credits),
    net: changeFigure(money.net),
    totals: [
      totalSheet('By room', money.byRoom, look, (slug) => look.roomTitle(slug)),
      totalSheet('By trade', money.byTrade, look, (slug) => look.tradeName(slug)),
      totalSheet('By category', money.byCategory, look, (slug) => look.categoryName(slug)),
    ],
    rules: ruleTexts(look),
  };
}

function ledgerSheet(entry: LedgerEntry, look: LookUp): LedgerSheet {
  return {
    name: entry.name,
    words: [entry.coversText, entry.note ?? ''].join(' ').trim(),
    lines: entry.lines.map(({ selection: id, option, covered, open, why }) => {
      const selection = look.selection(id);
      const slug = option?.split('/').at(-1);
      return {
        room: selection ? look.roomTitle(selection.room) : id,
        place: selection?.placeText ?? '',
        finish: open ? 'open' : (look.option(selection?.category ?? '', slug)?.name ?? 'none'),
        covered: open ? { ...moneyFigure(0 as Cents), whole: '–', rest: '', tone: 'muted' } : moneyFigure(covered),
        why,
        isOpen: open,
      };
    }),
    figures: entry.figures.map(({ what, why, amount }, index) => ({
      what,
      why,
      figure: index === entry.figures.length - 1 ? changeFigure(amount) : moneyFigure(amount),
    })),
    amount: moneyFigure(entry.amount),
    committed: moneyFigure(entry.committed),
    balance: { ...moneyFigure(entry.balance), tone: entry.balance < 0 ? 'more' : 'plain' },
    change: changeFigure(entry.change),
    state: ledgerState(entry),
  };
}

function ledgerState(entry: LedgerEntry): string {
  if (entry.overage > 0) return entry.settled ? 'Overrun' : 'Overrun, not all decided';
  if (!entry.settled) return 'Not all decided';
  return entry.balance === 0 ? 'Spent' : 'Underrun';
}

function roomChanges(moved: readonly BookSelection[], look: LookUp): readonly RoomChanges[] {
  return look.book.rooms.flatMap((room) => {
    const own = moved.filter((selection) => selection.room === room.slug);
    if (own.length === 0) return [];
    return [
      {
        room: look.roomTitle(room.slug),
        lines: own.map((selection) => ({
          place: selection.placeText,
          finish: look.option(selection.category, selection.counted)?.name ?? 'none',
          instead: insteadText(selection, look),
          ...reckoned(selection),
          amount: changeFigure(selection.change),
        })),
        total: changeFigure(room.change),
      },
    ];
  });
}

function insteadText({ category, standard, reckoning }: BookSelection, look: LookUp): string {
  const name = look.option(category, standard)?.name ?? 'nothing in the contract';
  const parts = reckoning?.parts ?? costParts;
  return parts.length === costParts.length ? name : `${name}; ${joinWords(parts)} only`;
}

function reckoned({ reckoning }: BookSelection) {
  const figure = (print: typeof moneyFigure, cents: Cents | undefined): Figure => print(cents ?? (0 as Cents));
  return {
    chosen: figure(moneyFigure, reckoning?.counted),
    standard: figure(moneyFigure, reckoning?.standard),
    difference: figure(changeFigure, reckoning?.difference),
    markup: figure(changeFigure, reckoning?.markup),
    retained: figure(changeFigure, reckoning?.retained),
  };
}

function totalSheet(
  title: string,
  totals: readonly Total[],
  { book: { money } }: LookUp,
  name: (slug: string) => string,
): TotalSheet {
  const figures = (cost: Total['cost'], change: Cents): Figure[] => [
    ...[...costParts, 'total' as const].map((part) => moneyFigure(cost[part])),
    changeFigure(change),
  ];
  const lines = totals
    .filter(({ cost, change }) => cost.total !== 0 || change !== 0)
    .map(({ of, cost, change }) => ({ name: name(of), figures: figures(cost, change), isSum: false }));
  return {
    title,
    lines: [...lines, { name: 'All finishes', figures: figures(money.finishes, money.net), isSum: true }],
  };
}

function ruleTexts({ book: { money } }: LookUp): readonly string[] {
  const install = money.ownerFurnishedInstall === 'contract' ? 'in the contract' : "the owner's";
  return [
    `Tax of ${printPercent(money.tax.rate)} on ${joinWords(money.tax.on)}.`,
    `Mark-up of ${printPercent(money.overageMarkup)} on what goes over an allowance or a standard.`,
    `${printPercent(money.creditReturns)} of what is saved returns to the owner, ${money.creditMarkup ? 'with' : 'without'} mark-up.`,
    `Installing what the owner furnishes is ${install}.`,
    `Rounding: ${money.rounding}.`,
  ];
}

export function changeText(cents: Cents): string {
  return cents === 0 ? 'no change' : printMoneyChange(cents, 'always');
}
