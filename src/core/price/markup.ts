import type { ChangeOrder, Contract, Net, Netted } from '../model/index.js';
import { printMoney, printMoneyChange, printPercent, type Cents, type Decimal } from '../../base/units/index.js';
import type { ReasonedFigure } from './cost.js';
import { shareOf } from './rounding.js';

/** What an addition or a deduction is to: an allowance, or work beside the allowances. */
export type ChangeKind = 'allowance' | 'work';

/** What a contract says of mark-up and fee. */
export type MarkupRules = Pick<Contract, 'markupOn' | 'overageMarkup' | 'workMarkup' | 'creditMarkup' | 'fee'>;

const noNet: Net = { allowance: 0, work: 0 } as Net;

/** Mark-up and fee on a net of additions and deductions. */
export interface OnNet {
  readonly markup: Cents;
  readonly fee: Cents;
}

export const nothingNetted: Netted = { ...noNet, markup: 0 as Cents };

/** The rate at which mark-up goes on what is added (or, negative, comes back with what is taken off). */
export function markupRate(amount: number, kind: ChangeKind, rules: MarkupRules): Decimal {
  const added = kind === 'allowance' ? rules.overageMarkup : rules.workMarkup;
  if (amount >= 0 || rules.creditMarkup === 'as-added') return added;
  return rules.creditMarkup === false ? none : rules.creditMarkup;
}

const none: Decimal = { amount: 0, scale: 2 };

/** Mark-up on the net of one change order: additions and deductions are set off against each other first, and only what
 *  remains carries mark-up; what remains of a decrease returns it as the contract says of credits. Allowances and other work have
 *  their own rates: what is left when one is set off against the other is of the kind that exceeds. Each
 *  product rounds half up, once. Source: AIA A201-2017, 7.3.8, which describes overhead and profit on the net of a change. */
export function markupOnNet(net: Net, rules: MarkupRules): Cents {
  if (rules.markupOn === 'each-line') return 0 as Cents;
  return remaining(net, rules).reduce((sum, { amount, rate }) => sum + shareOf(amount, rate), 0) as Cents;
}

/** Mark-up and fee on all that a house changes, of which change orders have netted a part. */
export function onNet(net: Net, netted: Netted, rules: MarkupRules): OnNet {
  const markup = rules.markupOn === 'net' ? netted.markup + markupOnNet(takeOff(net, netted), rules) : 0;
  const fee = rules.fee ? shareOf(sumOf(net), rules.fee) : 0;
  return { markup, fee } as OnNet;
}

export function addNets(a: Net, b: Net): Net {
  return { allowance: a.allowance + b.allowance, work: a.work + b.work } as Net;
}

export function takeOff(a: Net, b: Net): Net {
  return { allowance: a.allowance - b.allowance, work: a.work - b.work } as Net;
}

export function sumOf({ allowance, work }: Net): Cents {
  return (allowance + work) as Cents;
}

/** What change orders have netted already, together; one that was declined or is void netted nothing. */
export function nettedBy(orders: readonly Pick<ChangeOrder, 'state' | 'netted'>[]): Netted {
  return standing(orders).reduce((sum, { netted }) => addNetted(sum, netted), nothingNetted);
}

function standing<T extends Pick<ChangeOrder, 'state' | 'netted'>>(
  orders: readonly T[],
): (T & { readonly netted: Netted })[] {
  return orders.flatMap((order) => {
    const { state, netted } = order;
    return netted && (state === 'proposed' || state === 'approved') ? [{ ...order, netted }] : [];
  });
}

function addNetted(a: Netted, b: Netted): Netted {
  return { ...addNets(a, b), markup: (a.markup + b.markup) as Cents };
}

/** A figure on the net as a step of the way from the contract sum to today's total. */
export interface NetStep extends ReasonedFigure {
  readonly kind: 'mark-up' | 'fee';
  /** Number of the change order. */
  readonly of?: string;
}

/** Mark-up on the net of each change order, on the net of what none has yet, and the fee; what is nothing is left out. */
export function netSteps(
  net: Net,
  orders: readonly Pick<ChangeOrder, 'state' | 'netted' | 'number'>[],
  rules: MarkupRules,
): NetStep[] {
  const all = standing(orders);
  const { markup, fee } = onNet(net, nettedBy(orders), rules);
  const apart = rules.markupOn === 'net' ? all : [];
  const open = takeOff(net, nettedBy(apart));
  const steps: NetStep[] = [
    ...apart.map(({ number, netted }) => ({
      what: `Mark-up on the net of change order ${number}`,
      kind: 'mark-up' as const,
      of: String(number),
      amount: netted.markup,
      why: nettedText(netted, rules),
    })),
    {
      what: `Mark-up on the net of what no change order has yet`,
      kind: 'mark-up',
      amount: (markup - nettedBy(apart).markup) as Cents,
      why: netMarkupText(open, rules),
    },
    {
      what: 'Contractor’s fee',
      kind: 'fee',
      amount: fee,
      why: rules.fee
        ? `${printPercent(rules.fee)} of ${printMoneyChange(sumOf(net), 'always')} that the cost changes`
        : '',
    },
  ];
  return steps.filter(({ amount }) => amount !== 0);
}

/** How the mark-up of a change order came about; at rates that are no longer the contract's, on how much. */
export function nettedText(netted: Netted, rules: MarkupRules): string {
  if (markupOnNet(netted, rules) === netted.markup) return `additions less deductions: ${netMarkupText(netted, rules)}`;
  return `additions less deductions of ${printMoneyChange(sumOf(netted), 'always')}, as it was drafted`;
}

/** '15 % of $1,240.00', '15 % of $400.00 on allowances and 10 % of $200.00 of other work'. */
function netMarkupText(net: Net, rules: MarkupRules): string {
  const parts = remaining(net, rules);
  if (parts.length === 0) return 'additions and deductions are equal';
  return parts
    .map(({ amount, rate, of }) => {
      const text = `${printPercent(rate)} of ${printMoney(amount, 'always')}`;
      if (parts.length === 1) return text;
      return `${text} ${of === 'allowance' ? 'on allowances' : 'of other work'}`;
    })
    .join(' and ');
}

interface Part {
  readonly of: ChangeKind;
  readonly amount: Cents;
  readonly rate: Decimal;
}

/** What remains of a net: both kinds where both go the same way at rates of their own, else one sum, at the rate of the
 *  kind that exceeds. */
function remaining(net: Net, rules: MarkupRules): readonly Part[] {
  const sum = sumOf(net);
  const parts = (['allowance', 'work'] as const)
    .map((of) => ({ of, amount: net[of], rate: markupRate(net[of], of, rules) }))
    .filter(({ amount }) => amount !== 0);
  const [first, second] = parts;
  if (!first || !second) return parts;
  const sameWay = first.amount > 0 === second.amount > 0;
  if (sameWay && !sameRate(first.rate, second.rate)) return parts;
  const larger = parts.find(({ amount }) => amount > 0 === sum > 0);
  return larger && sum !== 0 ? [{ ...larger, amount: sum }] : [];
}

function sameRate(a: Decimal, b: Decimal): boolean {
  return a.amount * 10 ** b.scale === b.amount * 10 ** a.scale;
}
