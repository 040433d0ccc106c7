import type { ChangeLine, ChangeOrder, Netted } from '../model/index.js';
import { hasErrors, problemAt, type Problem } from '../../base/problem/index.js';
import { parseDays, parseMoney, printMoney, printMoneyChange, type Cents } from '../../base/units/index.js';
import type { Checked } from './checked-record.js';
import { passed } from './formats.js';
import type { RawChangeLine, RawChangeOrder } from './raw/change-order.js';

/** A change order's record, as far as it can be read. */
export interface ChangeOrderDraft {
  readonly record: Checked<RawChangeOrder>;
  readonly whole?: ChangeOrder;
  readonly problems: readonly Problem[];
}

export function readChangeOrder(record: Checked<RawChangeOrder>): ChangeOrderDraft {
  if (hasErrors(record.problems)) return { record, problems: record.problems };
  const problems = [...record.problems, ...decisionProblems(record), ...sumProblems(record)];
  return { record, problems, ...(!hasErrors(problems) && { whole: wholeChangeOrder(record) }) };
}

function wholeChangeOrder({ slug, raw, body, origin }: Checked<RawChangeOrder>): ChangeOrder {
  const { title, state, from, to, reason } = raw;
  return {
    number: Number(slug),
    title,
    state,
    from,
    to,
    proposedOn: raw['proposed-on'],
    ...(raw['decided-on'] !== undefined && { decidedOn: raw['decided-on'] }),
    ...(raw['decided-by'] !== undefined && { decidedBy: raw['decided-by'] }),
    ...(raw['void-reason'] !== undefined && { voidReason: raw['void-reason'] }),
    ...(raw['requested-by'] !== undefined && { requestedBy: raw['requested-by'] }),
    ...(raw['valid-until'] !== undefined && { validUntil: raw['valid-until'] }),
    reason,
    days: passed(parseDays(raw.days)),
    amount: passed(parseMoney(raw.amount)),
    lines: raw.lines.map(readLine),
    ...(raw.netted && { netted: readNetted(raw.netted) }),
    replaces: raw.replaces ?? [],
    body,
    origin,
  };
}

function readNetted({ allowances, work, markup }: NonNullable<RawChangeOrder['netted']>): Netted {
  const [allowance, rest, on] = [allowances, work, markup].map((text) => passed(parseMoney(text)));
  return { allowance, work: rest, markup: on } as Netted;
}

function readLine(raw: RawChangeLine): ChangeLine {
  return { ...raw, amount: passed(parseMoney(raw.amount)) };
}

/** A state other than proposed was somebody's decision on a day. */
function decisionProblems({ raw, origin }: Checked<RawChangeOrder>): readonly Problem[] {
  const { state, 'proposed-on': proposed, 'decided-on': on, 'decided-by': by } = raw;
  if (state === 'proposed') {
    const early = on !== undefined ? 'decided-on' : by !== undefined ? 'decided-by' : undefined;
    if (early === undefined) return [];
    const fix = 'write the state it was decided to, or leave out decided-on and decided-by';
    return [problemAt(origin, [early], 'change-undecided', 'a proposed change order is not decided', { fix })];
  }
  if (on === undefined || by === undefined) {
    const fix = 'write decided-on: with a day, and decided-by: with a role';
    return [
      problemAt(origin, ['state'], 'change-decision-missing', `'${state}' does not say who decided and when`, { fix }),
    ];
  }
  if (on >= proposed) return [];
  const fix = 'it is proposed first';
  return [
    problemAt(origin, ['decided-on'], 'date-order', `${on} is before ${proposed}, when it was proposed`, { fix }),
  ];
}

function sumProblems({ raw, origin }: Checked<RawChangeOrder>): readonly Problem[] {
  const sum = raw.lines.reduce((total, line) => total + passed(parseMoney(line.amount)), 0) as Cents;
  const amount = passed(parseMoney(raw.amount));
  if (sum === amount) return [];
  const off = printMoney(Math.abs(amount - sum) as Cents);
  const message = `the lines add up to ${printMoneyChange(sum, 'always')}, which is ${off} off the amount`;
  const fix = 'lines are frozen when a change order is drafted: draft it anew, or restore what was written';
  return [problemAt(origin, ['amount'], 'change-sum', message, { fix })];
}
