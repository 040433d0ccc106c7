import { costParts, type Contract, type CostPart } from '../model/index.js';
import {
  capital,
  counted,
  joinWords,
  printDay,
  printMoney,
  printMoneyChange,
  printPercent,
  type Cents,
} from '../../base/units/index.js';
import type { Cost, Effect, LedgerEntry, ReasonedFigure, Reckoning } from './cost.js';
import type { OrderInvoices } from './invoiced.js';
import { markupRate } from './markup.js';
import { taxText } from './rule-words.js';

/** Why a figure of money is what it is, in words; every sum in them can be added up. */

/** 'material $792.00 + tax $39.60'; parts that are nothing are left out. */
export function partsText(cost: Cost, parts: readonly CostPart[]): string {
  const texts = parts.filter((part) => cost[part] !== 0).map((part) => `${part} ${exact(cost[part])}`);
  return texts.length === 0 ? 'costs nothing' : texts.join(' + ');
}

/** 'as invoiced, HS-2207 of 16 April 2026; computed $5,612.00'. */
export function invoicedText(paid: Cents, computed: Cents, { invoices }: Pick<OrderInvoices, 'invoices'>): string {
  const by = joinWords(invoices.map(({ number, on }) => `${number} of ${printDay(on)}`));
  const apart = paid === computed ? 'as computed' : `computed ${exact(computed)}`;
  return `as invoiced, ${by}; ${apart}`;
}

/** 'Covers material and tax. Freight and labor are not drawn on it. Tax is 6.25 % of material and labor; that of labor is drawn, too.' */
export function coversText(covers: readonly CostPart[], tax: Contract['tax']): string {
  const rest = costParts.filter((part) => !covers.includes(part));
  const covered = `Covers ${joinWords(costParts.filter((part) => covers.includes(part)))}.`;
  if (rest.length === 0) return `${covered} Everything in place is drawn on it.${taxDrawn(covers, tax)}`;
  return `${covered} ${capital(joinWords(rest))} ${rest.length === 1 ? 'is' : 'are'} not drawn on it.${taxDrawn(covers, tax)}`;
}

/** What the tax that is drawn is charged on, by the contract; some of it may be no part of the allowance. */
function taxDrawn(covers: readonly CostPart[], tax: Contract['tax']): string {
  const charged = tax.filter(({ rate, on }) => rate.amount !== 0 && on.length > 0);
  if (!covers.includes('tax') || charged.length === 0) return '';
  const beyond = costParts.filter((part) => !covers.includes(part) && charged.some(({ on }) => isAmong(part, on)));
  const drawn = beyond.length === 0 ? '' : `; that of ${joinWords(beyond)} is drawn, too`;
  return ` Tax is ${charged.map(taxText).join(' plus ')}${drawn}.`;
}

const isAmong = (part: CostPart, parts: readonly CostPart[]): boolean => parts.includes(part);

/** The cheapest and the dearest of what is open, by name. */
export function openReason(low: string, high: string, count: number): string {
  if (count === 0) return 'nothing is considered yet';
  return count === 1 ? `only ${low} is considered` : `cheapest ${low}, dearest ${high}`;
}

/** The figures of an allowance in the order to tick them. */
export function ledgerFigures(entry: Omit<LedgerEntry, 'figures'>, contract: Contract): ReasonedFigure[] {
  const { amount, committed, openLow, openHigh, balance, settled, overage, basis, lines } = entry;
  const open = lines.filter((line) => line.open).length;
  const figures: ReasonedFigure[] = [
    { what: 'Allowance', amount, why: basis },
    {
      what: 'Drawn',
      amount: committed,
      why:
        open === lines.length
          ? 'no choice on it is made yet'
          : `${counted(lines.length - open, 'choice')} made, in what it covers${invoicedCount(entry)}`,
    },
    {
      what: balance < 0 ? 'Over' : 'Left',
      amount: Math.abs(balance) as Cents,
      why:
        balance < 0 ? 'drawn less the allowance; counts at once, decided or not' : 'the allowance less what is drawn',
    },
  ];
  if (open > 0) {
    const togetherText =
      open === 1
        ? 'it may draw'
        : entry.openPriced === 'all'
          ? 'they may draw, bought together'
          : 'was found that they may draw, bought together';
    const still = `${counted(open, 'choice')} still open`;
    figures.push(
      { what: 'Open, cheapest', amount: openLow, why: `the least that ${togetherText}; ${still}` },
      { what: 'Open, dearest', amount: openHigh, why: `the most that ${togetherText}; ${still}` },
      { what: 'Left with the cheapest', amount: (balance - openLow) as Cents, why: left(balance, openLow) },
      { what: 'Left with the dearest', amount: (balance - openHigh) as Cents, why: left(balance, openHigh) },
    );
  }
  if (overage > 0) {
    figures.push({ what: 'Mark-up on it', amount: entry.markup, why: markupText(overage, overage, contract) });
  } else if (settled && balance > 0) {
    figures.push(...creditFigures(entry, contract));
  }
  return [...figures, { what: 'Change of the contract', amount: entry.change, why: changeReason(entry) }];
}

/** ', 1 of them as invoiced, $35.17 more than computed', and when it was trued up. */
function invoicedCount({ lines, truedUpOn }: Omit<LedgerEntry, 'figures'>): string {
  const paid = lines.filter(({ computed }) => computed !== undefined);
  if (paid.length === 0) return '';
  const more = paid.reduce((sum, { covered, computed = covered }) => sum + covered - computed, 0);
  const amount = exact(Math.abs(more) as Cents);
  const apart = more === 0 ? 'as computed' : `${amount} ${more > 0 ? 'more' : 'less'} than computed`;
  const settled = truedUpOn === undefined ? '' : `; trued up ${printDay(truedUpOn)}, when the last invoice was in`;
  return `, ${paid.length} of them as invoiced, ${apart}${settled}`;
}

function creditFigures(
  { balance, retained, markup, credit }: Omit<LedgerEntry, 'figures'>,
  contract: Contract,
): ReasonedFigure[] {
  const returns = printPercent(contract.creditReturns);
  const figures = [
    {
      what: 'Stays with the builder',
      amount: retained,
      why:
        retained === 0 ? `nothing: the contract returns ${returns}` : `the contract returns ${returns} of what is left`,
    },
  ];
  if (markup !== 0) {
    const returned = (balance - retained) as Cents;
    figures.push({
      what: 'Mark-up that returns with it',
      amount: markup,
      why: markupText(returned, -returned, contract),
    });
  }
  const sum = [exact(balance), `less ${exact(retained)}`, ...(markup === 0 ? [] : [`plus ${exact(-markup as Cents)}`])];
  return [...figures, { what: 'Returns to the owner', amount: credit, why: sum.join(' ') }];
}

function changeReason({ lines, settled, overage, markup, change }: Omit<LedgerEntry, 'figures'>): string {
  if (overage > 0)
    return markup === 0 ? `${exact(overage)} over` : `${exact(overage)} over plus ${exact(markup)} mark-up`;
  if (lines.length === 0) return 'nothing draws on it, so nothing returns';
  if (!settled) return 'none yet: it is not overrun, and what is left returns once every choice on it is made';
  return change === 0 ? 'none: nothing is over, nothing returns' : 'what returns to the owner comes off the contract';
}

/** How one selection changes the contract, in one sentence. */
export function reckoningText(reckoning: Omit<Reckoning, 'why'>, words: ReckoningWords, contract: Contract): string {
  const { parts, counted, standard, difference } = reckoning;
  const what =
    parts.length === costParts.length ? '' : `${capital(joinWords(parts))} only, the allowance pays the rest: `;
  const chosen = `${exact(counted)} for ${words.counted ?? 'none'}`;
  const against =
    words.standard === undefined
      ? `${chosen}, an extra that the contract holds nothing for`
      : `${chosen} less ${exact(standard)} for ${words.standard}`;
  const sum = `${against}: ${printMoneyChange(difference, 'always')}`;
  return `${what}${sum}${effectText(reckoning, contract)}`;
}

export interface ReckoningWords {
  /** Names of the options; absent when nothing is counted, or there is no standard. */
  readonly counted?: string;
  readonly standard?: string;
}

/** ', plus 15 % mark-up $93.90', ', of which 20 % ($100.00) stays with the builder'. */
function effectText({ difference, markup, retained }: Effect, contract: Contract): string {
  const texts = [
    ...(difference > 0 && markup !== 0
      ? [`plus ${exact(markup)} mark-up at ${printPercent(contract.workMarkup)}`]
      : []),
    ...(retained !== 0 ? [`of which ${exact(retained)} stays: ${printPercent(contract.creditReturns)} returns`] : []),
    ...(difference < 0 && markup !== 0 ? [`with ${exact(-markup as Cents)} mark-up returned`] : []),
  ];
  return texts.map((text) => `, ${text}`).join('');
}

/** Of an allowance; `moved` is what it adds, negative when it returns. */
function markupText(on: Cents, moved: number, contract: Contract): string {
  if (contract.markupOn === 'net') return 'on the net of the change order, not here';
  return `${printPercent(markupRate(moved, 'allowance', contract))} of ${exact(on)}`;
}

function left(balance: Cents, open: Cents): string {
  return `${exact(balance)} less ${exact(open)}`;
}

function exact(amount: Cents): string {
  return printMoney(amount, 'always');
}
