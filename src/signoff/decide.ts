import {
  isSigned,
  type ChangeOrder,
  type ChangeOrderState,
  type Issue,
  type Person,
  type Records,
} from '../core/model/index.js';
import { agreedTwice, inOrderOfDecision, type AgreedTwice } from '../core/compare/index.js';
import { nearest, problemAt, type Path, type Problem, type ProblemCode } from '../base/problem/index.js';
import { counted, joinWords, printDay, type IsoDate } from '../base/units/index.js';
import { spliceKeys } from '../core/records/index.js';

/** Who decides, on which day, and why where the record asks for it. */
export interface Decision {
  readonly by: string;
  readonly on: IsoDate;
  readonly why?: string;
}

/** The record's new text, or why it cannot be so. */
export type Decided = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: Problem };

/** What is decided of a change order. */
export type DecidedState = Exclude<ChangeOrderState, 'proposed'>;

/** `Change order 3 voided`. */
export const decidedVerbs: Readonly<Record<DecidedState, string>> = {
  approved: 'approved',
  declined: 'declined',
  void: 'voided',
};

/** What else was agreed and issued, which a decision is held against. */
export type Agreed = Pick<Records, 'changes' | 'issues'>;

/** A change order's record with the decision in it. Only a proposed one can be decided, once, from the day it was proposed until the last
 *  day it is valid: what was approved is part of the contract, and another change order takes it back. None is approved that
 *  has lines which an approved one has. */
export function decideChangeOrder(
  order: ChangeOrder,
  state: DecidedState,
  { by, on, why }: Decision,
  { changes, issues }: Agreed,
): Decided {
  const { number, origin, proposedOn, decidedOn = '', decidedBy = '', validUntil } = order;
  const refuse = (path: Path, message: string, fix: string, code: ProblemCode = 'decision-refused'): Decided => ({
    ok: false,
    problem: problemAt(origin, path, code, `change order ${number} ${message}`, { fix }),
  });
  if (order.state !== 'proposed') {
    const was = `was ${decidedVerbs[order.state]} on ${printDay(decidedOn)} by ${decidedBy}: it cannot be ${decidedVerbs[state]} any more`;
    const fix =
      order.state === 'approved'
        ? 'it is part of the contract: draft a change order that takes it back'
        : 'draft it anew: it gets a number of its own';
    return refuse(['state'], was, fix);
  }
  if (on < proposedOn)
    return refuse(
      ['proposed-on'],
      `was proposed on ${printDay(proposedOn)}, after ${printDay(on)}`,
      'decide it on that day or later',
    );
  if (state === 'approved' && validUntil !== undefined && on > validUntil)
    return refuse(
      ['valid-until'],
      `was valid until ${printDay(validUntil)}`,
      'draft it anew at today’s prices, and void this one',
      'change-expired',
    );
  const [twice, ...more] = state === 'approved' ? agreedTwice(order, inOrderOfDecision(changes), issues) : [];
  if (twice)
    return refuse(
      ['lines', twice.index],
      `${twiceWords([twice, ...more])}: approved, it would be agreed twice`,
      draftAnewWords(order),
      'change-agreed-twice',
    );
  const keys = { state, 'decided-on': on, 'decided-by': by, ...(why !== undefined && { 'void-reason': why }) };
  return { ok: true, text: spliceKeys(origin.text, keys, 'proposed-on') };
}

/** `has 2 lines that change order 1, approved on 3 April 2026, has: 'Floor, wood', 'Base, wood'`. */
export function twiceWords(twice: readonly AgreedTwice[]): string {
  const lines = counted(twice.length, 'line', 'lines');
  const orders = [...new Set(twice.map(({ by }) => by))].map(
    ({ number, decidedOn = '' }) => `change order ${number}, approved on ${printDay(decidedOn)},`,
  );
  const what = twice.slice(0, 3).map(({ line }) => `'${line.what}'`);
  const others = twice.length > 3 ? [`${twice.length - 3} more`] : [];
  return `has ${lines} that ${joinWords(orders)} ${orders.length === 1 ? 'has' : 'have'} already: ${joinWords([...what, ...others])}`;
}

/** A version as people write it: `issue-2`, the beginning of a commit's id. */
export function versionWords(version: string): string {
  return version.startsWith('issue-') ? version : version.slice(0, 10);
}

/** How a change order with lines that are agreed already is made anew: a draft leaves them out by itself. */
export function draftAnewWords({ number, from, to }: ChangeOrder): string {
  const [a, b] = [versionWords(from), versionWords(to)];
  return `void this one (bookmatch void ${number}) and draft it anew, which leaves out what is agreed: bookmatch compare ${a} ${b} --draft`;
}

/** An issue's record taken back. One that owner and builder signed stands: the next issue takes its place. */
export function voidIssue(issue: Issue, { by, on, why = '' }: Decision): Decided {
  const { number, origin, date } = issue;
  const refuse = (path: Path, message: string, fix: string): Decided => ({
    ok: false,
    problem: problemAt(origin, path, 'decision-refused', `issue ${number} ${message}`, { fix }),
  });
  if (issue.void)
    return refuse(['void'], `was voided on ${printDay(issue.void.on)} by ${issue.void.by}`, 'there is nothing to do');
  if (isSigned(issue))
    return refuse(
      ['signatures'],
      'is signed by owner and builder: it cannot be voided',
      'make the next issue, which takes its place',
    );
  if (on < date)
    return refuse(['date'], `was made on ${printDay(date)}, after ${printDay(on)}`, 'void it on that day or later');
  return { ok: true, text: spliceKeys(origin.text, { void: { on, by, why } }, 'digest') };
}

/** The person that a word names, by name or by role; else what might be meant. */
export function personNamed(
  people: readonly Person[],
  word: string,
): { readonly ok: true; readonly name: string } | { readonly ok: false; readonly why: string } {
  const is = (text: string): boolean => text.toLowerCase() === word.toLowerCase();
  const named = people.filter(({ name }) => is(name));
  const [person, ...more] = named.length > 0 ? named : people.filter(({ role }) => is(role));
  if (person && more.some(({ name }) => name !== person.name)) {
    const names = [person, ...more].map(({ name }) => name);
    return { ok: false, why: `${joinWords(names)} are each '${word}': say which of them` };
  }
  if (person) return { ok: true, name: person.name };
  const names = people.flatMap(({ name, role }) => [name, role]);
  const meant = nearest(word, names);
  const hint = meant === undefined ? `it has ${people.map(({ name }) => name).join(', ')}` : `did you mean '${meant}'?`;
  return { ok: false, why: `'${word}' is not among the people of content/house.md; ${hint}` };
}
