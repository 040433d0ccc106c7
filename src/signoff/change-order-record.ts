import { stringify } from 'yaml';
import type { ReplacedPage } from '../core/model/index.js';
import type { Draft } from '../core/compare/index.js';
import { printDays, printMoney, type Cents, type IsoDate } from '../base/units/index.js';

interface ChangeOrderFacts {
  /** `issue-N`, or the whole id of a commit. */
  readonly from: string;
  readonly to: string;
  readonly proposedOn: IsoDate;
  readonly title?: string;
  readonly requestedBy?: string;
  readonly validUntil?: IsoDate;
  readonly reason: string;
  /** Working days that it moves the end of the job. */
  readonly days: number;
  /** Pages of rooms that it replaces. */
  readonly replaces?: readonly ReplacedPage[];
}

/** The text of a proposed change order's record, `content/changes/NNN.md`, with its lines frozen. */
export function changeOrderRecord(
  draft: Draft,
  { from, to, proposedOn, title, requestedBy, validUntil, reason, days, replaces = [] }: ChangeOrderFacts,
): string {
  const data = {
    title: title ?? draft.title,
    state: 'proposed',
    from,
    to,
    'proposed-on': proposedOn,
    ...(validUntil !== undefined && { 'valid-until': validUntil }),
    ...(requestedBy !== undefined && { 'requested-by': requestedBy }),
    reason,
    days: printDays(days),
    amount: amountText(draft.money),
    ...(draft.netted && {
      netted: {
        allowances: amountText(draft.netted.allowance),
        work: amountText(draft.netted.work),
        markup: amountText(draft.netted.markup),
      },
    }),
    ...(replaces.length > 0 && { replaces }),
    lines: draft.lines.map(({ room, selection, term, what, from: was, to: now, quantity, money }) => ({
      ...(room !== undefined && { room }),
      ...(selection !== undefined && { selection }),
      ...(term !== undefined && { term }),
      what,
      ...(was !== '' && was !== now && { from: was }),
      ...(now !== '' && was !== now && { to: now }),
      ...(quantity !== '' && { quantity }),
      amount: amountText(money),
    })),
  };
  return `---\n${stringify(data, { lineWidth: 0 })}---\n${calendarWords(draft)}`;
}

/** With a plain hyphen, as people type it. */
function amountText(cents: Cents): string {
  return printMoney(cents, 'always').replace('−', '-');
}

/** What the calendar says of the change, for the builder who sets the days. */
function calendarWords({ days, note }: Draft): string {
  const words = [
    ...days.milestones.map(({ name, from, to, days: by }) => `${name} moves from ${from} to ${to}, ${printDays(by)}.`),
    ...days.late.map(
      ({ what, milestone, days: by }) =>
        `${what}: ordered on the day of this draft, ${milestone} waits ${printDays(by)}.`,
    ),
    ...(note === undefined ? [] : [note]),
  ];
  return words.map((line) => `${line}\n`).join('\n');
}
