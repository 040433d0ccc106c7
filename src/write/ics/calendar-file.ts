import { plusDays, type DatedMilestone, type Decision } from '../../core/calendar/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { contentLine, escapeText } from './content-line.js';
import { makeUid } from './uid.js';

export interface CalendarInput {
  readonly house: { readonly name: string; readonly number: string };
  readonly decisions: readonly CalendarDecision[];
  readonly milestones: readonly DatedMilestone[];
  /** The Book's day: every entry is stamped with it, never with the clock. */
  readonly on: IsoDate;
  /** Whole number that grows with every version handed out, such as the number of the issue: a calendar program takes
   *  the higher one as the newer. */
  readonly sequence: number;
}

export interface CalendarDecision {
  /** Selection id, unique in the house and the same in every version. */
  readonly id: string;
  /** 'Ceiling board, Great room' */
  readonly title: string;
  readonly by: IsoDate;
  readonly reason: string;
  readonly state: Decision['state'];
}

/** Decide-by days and milestones as an iCalendar file (RFC 5545): all-day entries that take no time, in the order given.
 *  A decision keeps its UID when it is made, so that importing the next file renames its entry instead of adding one.
 *  There is no METHOD: the file is a plain calendar, not an invitation. */
export function calendarFile(input: CalendarInput): string {
  const { house, decisions, milestones } = input;
  const name = escapeText(`${house.name} (${house.number})`);
  return [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', '-//Bookmatch//Decide-by calendar//EN'),
    contentLine('CALSCALE', 'GREGORIAN'),
    contentLine('NAME', name),
    contentLine('X-WR-CALNAME', name),
    ...decisions.map((decision) => event(input, decisionEntry(house.number, decision))),
    ...milestones.map((milestone) => event(input, milestoneEntry(house.number, milestone))),
    contentLine('END', 'VCALENDAR'),
  ].join('');
}

interface Entry {
  readonly uid: string;
  readonly day: IsoDate;
  readonly summary: string;
  readonly description: string;
  readonly categories: readonly string[];
}

const stateLabels: Readonly<Record<Decision['state'], string>> = {
  decided: 'Decided',
  open: 'Open',
  'due-soon': 'Due soon',
  late: 'Late',
};

function decisionEntry(houseNumber: string, { id, title, by, reason, state }: CalendarDecision): Entry {
  const label = state === 'decided' ? 'Decided' : state === 'late' ? 'Late' : 'Decide by';
  return {
    uid: makeUid(houseNumber, 'decide', id),
    day: by,
    summary: `${label}: ${title}`,
    description: reason,
    categories: ['Decide by', stateLabels[state]],
  };
}

function milestoneEntry(houseNumber: string, { id, name, date, basis, note }: DatedMilestone): Entry {
  return {
    uid: makeUid(houseNumber, 'milestone', id),
    day: date,
    summary: name,
    description: note === undefined ? basis : `${basis}\n${note}`,
    categories: ['Milestone'],
  };
}

function event({ on, sequence }: CalendarInput, { uid, day, summary, description, categories }: Entry): string {
  return [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', uid),
    contentLine('DTSTAMP', `${basic(on)}T000000Z`),
    contentLine('SEQUENCE', String(sequence)),
    contentLine('DTSTART;VALUE=DATE', basic(day)),
    // DTEND is the first day after (RFC 5545, 3.6.1).
    contentLine('DTEND;VALUE=DATE', basic(plusDays(day, 1))),
    contentLine('SUMMARY', escapeText(summary)),
    contentLine('DESCRIPTION', escapeText(description)),
    contentLine('CATEGORIES', categories.map(escapeText).join(',')),
    contentLine('STATUS', 'CONFIRMED'),
    contentLine('TRANSP', 'TRANSPARENT'),
    contentLine('END', 'VEVENT'),
  ].join('');
}

/** `20260504` */
function basic(date: IsoDate): string {
  return date.replaceAll('-', '');
}
