import { countedOf, productOf, type Choice } from './choice.js';
import { groupOf, groupsOf, listOf, sum, text, type Fields } from './paper.js';
import {
  allowances,
  basisPoints,
  centsOf,
  contract,
  keptTaken,
  nothing,
  partsOf,
  priced,
  totalOf,
  type Cost,
} from './price.js';

/** What the choices of a house make of its contract, in cents. */
export interface ContractFigures {
  readonly total: number;
  readonly markup: number;
  readonly onAllowances: number;
  readonly onWork: number;
  /** What places change beside their allowances, with what a supplier keeps. */
  readonly changes: ReadonlyMap<string, number>;
  readonly allowances: readonly AllowanceFigures[];
}

export interface AllowanceFigures {
  readonly id: string;
  readonly amount: number;
  readonly committed: number;
  readonly isSettled: boolean;
  readonly change: number;
}

/** What each place costs at its standard, where all of the house is at it. */
export function standardCosts(among: readonly Choice[]): ReadonlyMap<string, Cost> {
  const standards = among.map(({ chosen: _, allowance: __, ...choice }) => choice);
  return priced(standards, among).costs;
}

/** `among`: the house as it was taken off. */
export function contractOf(
  choices: readonly Choice[],
  among: readonly Choice[],
  standard = standardCosts(among),
): ContractFigures {
  const { costs } = priced(choices, among);
  const paid = new Map(choices.map((choice) => [choice.id, costOf(choice, costs.get(choice.id))] as const));
  const beside = new Map(
    choices.map((choice) => [choice.id, changeBeside(choice, paid.get(choice.id), standard.get(choice.id))]),
  );
  const kept = new Map(choices.map((choice) => [choice.id, keptBySupplier(choice, among)]));
  const ledger = allowances.map((allowance) => ledgerOf(allowance, choices, paid));
  const [onAllowances, onWork] = [sum(ledger.map(({ change }) => change)), sum(beside.values())];
  // Mark-up goes on what remains of additions less deductions; a credit returns none.
  const net = onAllowances + onWork;
  const markup = net > 0 ? Math.round((net * basisPoints(contract['overage-markup'])) / 10_000) : 0;
  const changes = choices.map(({ id }) => [id, (beside.get(id) ?? 0) + (kept.get(id) ?? 0)] as const);
  const total = centsOf(contract['sum']) + net + markup + sum(kept.values());
  return { total, markup, onAllowances, onWork, changes: new Map(changes), allowances: ledger };
}

/** A deliberate none costs nothing; what is open on an allowance has no cost yet. */
function costOf(choice: Choice, cost: Cost | undefined): Cost | undefined {
  const known = cost ?? (choice.chosen === 'none' ? nothing : undefined);
  const invoices = invoicesFor(choice);
  if (!known || invoices.length === 0) return known;
  // One place of the demo is invoiced: what its allowance covers comes to the sum of its invoices.
  const covers = listOf(allowanceOf(choice)?.['covers']).map(text);
  const open = Object.entries(known).map(([kind, amount]) => [kind, covers.includes(kind) ? 0 : amount]);
  return { ...(Object.fromEntries(open) as Cost), material: sum(invoices.map(({ amount }) => centsOf(amount))) };
}

function invoicesFor(choice: Choice): readonly Fields[] {
  const option = `${choice.category}/${countedOf(choice) ?? ''}`;
  return choice.isOrdered ? groupsOf(allowanceOf(choice)?.['invoices']).filter((one) => one['for'] === option) : [];
}

function allowanceOf({ allowance }: Choice): Fields | undefined {
  return allowances.find(({ id }) => id === allowance);
}

/** All of a cost against the standard's, or what the allowance does not cover. Credits return in full. */
function changeBeside(choice: Choice, cost: Cost | undefined, standard: Cost | undefined): number {
  const allowance = allowanceOf(choice);
  if (!cost || (allowance && !standard)) return 0;
  if (!allowance) return totalOf(cost) - totalOf(standard ?? nothing);
  const covers = listOf(allowance['covers']);
  const beyond = (of: Cost): number => totalOf(of) - partsOf(of, covers);
  return beyond(cost) - beyond(standard ?? nothing);
}

function ledgerOf(
  allowance: Fields,
  choices: readonly Choice[],
  paid: ReadonlyMap<string, Cost | undefined>,
): AllowanceFigures {
  const own = choices.filter((choice) => choice.allowance === allowance['id']);
  const drawn = own.map(({ id }) => partsOf(paid.get(id) ?? nothing, listOf(allowance['covers'])));
  const [amount, committed] = [amountOf(allowance, own), sum(drawn)];
  const isSettled = own.every(({ chosen }) => chosen !== undefined);
  const over = committed - amount;
  return { id: text(allowance['id']), amount, committed, isSettled, change: over > 0 || isSettled ? over : 0 };
}

/** A lump sum, or a rate for what is measured at its places without waste. */
function amountOf({ amount }: Fields, own: readonly Choice[]): number {
  const [, unit] = text(amount).split(' / ');
  if (unit === undefined) return centsOf(amount);
  const measured = sum(own.map((choice) => keptTaken(choice, choice.options[0] ?? '', own).get('main')?.net ?? 0));
  return Math.round((centsOf(amount) * Math.round(measured * 1e6)) / 1e6);
}

/** By the terms of what was ordered before: a share of its material. In the demo that is sold by the piece. */
function keptBySupplier(choice: Choice, among: readonly Choice[]): number {
  const before = groupOf(choice.record['instead-of'])['option'];
  if (before === undefined) return 0;
  const option = productOf(choice.category, text(before));
  const pieces = keptTaken(choice, text(before), among).get('main')?.net ?? 0;
  const material = centsOf(groupOf(option['price'])['material']) * pieces;
  return Math.round((material * basisPoints(groupOf(option['returns'])['restocking'])) / 10_000);
}
