import type { BookSelection } from '../../book/index.js';
import type { LedgerEntry } from '../../price/index.js';
import { printMoney, printMoneyChange, printPercent } from '../../units/index.js';
import type { Cents } from '../../units/index.js';
import { changeFigure, moneyFigure } from './figure.js';
import type { Figure } from './figure.js';
import type { LookUp } from '../../book/index.js';
import { listText } from './reading.js';

export interface MoneySheet {
  readonly steps: readonly {
    readonly what: string;
    readonly kind: string;
    readonly amount: Figure;
    readonly running: Figure;
  }[];
  readonly forecast: readonly { readonly label: string; readonly figure: Figure; readonly words: string }[];
  readonly ledger: readonly LedgerSheet[];
  readonly changes: readonly RoomChanges[];
  readonly upgrades: Figure;
  readonly credits: Figure;
  readonly net: Figure;
  readonly rules: readonly string[];
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
    readonly isOpen: boolean;
  }[];
  readonly amount: Figure;
  readonly committed: Figure;
  readonly balance: Figure;
  readonly open: string;
  readonly markup: Figure;
  readonly change: Figure;
  readonly state: string;
}

export interface RoomChanges {
  readonly room: string;
  readonly lines: readonly {
    readonly place: string;
    readonly finish: string;
    readonly instead: string;
    readonly amount: Figure;
  }[];
  readonly total: Figure;
}

export function makeMoney(look: LookUp): MoneySheet {
  const { money, selections } = look.book;
  const moved = selections.filter(({ change }) => change !== 0);
  const sum = (list: readonly BookSelection[]): Cents => list.reduce((total, { change }) => total + change, 0) as Cents;
  return {
    steps: money.steps.map(({ what, kind, amount, running }) => ({
      what,
      kind,
      amount: kind === 'contract' || kind === 'total' ? moneyFigure(amount) : changeFigure(amount),
      running: moneyFigure(running),
    })),
    forecast: [
      { label: 'Lowest', figure: moneyFigure(money.low), words: 'with the cheapest of all that is still open' },
      { label: 'Today', figure: moneyFigure(money.today), words: 'with every choice made so far' },
      { label: 'Highest', figure: moneyFigure(money.high), words: 'with the dearest of all that is still open' },
      {
        label: 'Contingency',
        figure: moneyFigure(money.contingency),
        words: 'held in the contract, not in these totals',
      },
      { label: 'Owner buys', figure: moneyFigure(money.ownerPurchases), words: 'outside the contract' },
    ],
    ledger: money.allowances.map((entry) => ledgerSheet(entry, look)),
    changes: roomChanges(moved, look),
    upgrades: changeFigure(sum(moved.filter(({ change }) => change > 0))),
    credits: changeFigure(sum(moved.filter(({ change }) => change < 0))),
    net: changeFigure(sum(moved)),
    rules: ruleTexts(look),
  };
}

function ledgerSheet(entry: LedgerEntry, look: LookUp): LedgerSheet {
  return {
    name: entry.name,
    words: [`Covers ${listText(entry.covers)}.`, `Holds ${entry.basis}.`, entry.note ?? ''].join(' ').trim(),
    lines: entry.lines.map(({ selection: id, option, covered, open }) => {
      const selection = look.selection(id);
      const slug = option?.split('/').at(-1);
      return {
        room: selection ? look.roomTitle(selection.room) : id,
        place: selection?.placeText ?? '',
        finish: open ? 'open' : (look.option(selection?.category ?? '', slug)?.name ?? 'none'),
        covered: open ? { ...moneyFigure(0 as Cents), whole: '–', rest: '', tone: 'muted' } : moneyFigure(covered),
        isOpen: open,
      };
    }),
    amount: moneyFigure(entry.amount),
    committed: moneyFigure(entry.committed),
    balance: { ...moneyFigure(entry.balance), tone: entry.balance < 0 ? 'more' : 'plain' },
    open: entry.openHigh > 0 ? `${printMoney(entry.openLow, 'always')} to ${printMoney(entry.openHigh, 'always')}` : '',
    markup: changeFigure(entry.markup),
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
          instead: look.option(selection.category, selection.standard)?.name ?? 'nothing in the contract',
          amount: changeFigure(selection.change),
        })),
        total: changeFigure(own.reduce((sum, { change }) => sum + change, 0) as Cents),
      },
    ];
  });
}

function ruleTexts({ book: { money } }: LookUp): readonly string[] {
  const install = money.ownerFurnishedInstall === 'contract' ? 'in the contract' : "the owner's";
  return [
    `Tax of ${printPercent(money.tax.rate)} on ${listText(money.tax.on)}.`,
    `Mark-up of ${printPercent(money.overageMarkup)} on what goes over an allowance or a standard.`,
    `${printPercent(money.creditReturns)} of what is saved returns to the owner, ${money.creditMarkup ? 'with' : 'without'} mark-up.`,
    `Installing what the owner furnishes is ${install}.`,
    `Rounding: ${money.rounding}.`,
  ];
}

export function changeText(cents: Cents): string {
  return cents === 0 ? 'no change' : printMoneyChange(cents, 'always');
}
