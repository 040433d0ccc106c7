import { printWorkingDays } from '../core/calendar/index.js';
import {
  aspectWords,
  isTold,
  laterWords,
  leadWords,
  mainMeasures,
  measureDifference,
  measureWords,
  poundsWords,
  quantityChangeWords,
  sideWords,
  type Comparison,
  type NoticeChange,
  type RoomChange,
  type SelectionChange,
} from '../core/compare/index.js';
import type { Block } from '../sheet/index.js';
import { comparisonSections as of } from '../table/index.js';
import { capital, printDay, printMoneyChange, type Cents } from '../base/units/index.js';
import { blocksText } from '../write/index.js';

/** A comparison for a terminal, in the order in which one tells it on the phone: the totals and where the difference comes
 *  from, then room by room in sentences, then what lies outside the rooms. */
export function printComparison(comparison: Comparison): string {
  const { house, from, to, rooms } = comparison;
  const blocks = (part: (comparison: Comparison) => readonly Block[]): string => blocksText(part(comparison));
  const sections = [
    `${house.name}, job ${house.number}\n${from.label} → ${to.label}\n`,
    blocks(of.changes),
    blocks(of.money),
    ...rooms.filter(isTold).map((room) => titled(roomTitle(room), printRoom(room))),
    blocks(of.moved),
    blocks(of.priceBook),
    blocks(of.allowances),
    blocks(of.terms),
    blocks(of.days),
    titled('Cautions', printNotices(comparison.cautions, rooms)),
    titled('Scope', printNotices(comparison.scope, rooms)),
    blocks(of.trades),
    blocks(of.records),
  ];
  return sections.filter((text) => text !== '').join('\n');
}

const titled = (title: string, text: string): string => (text === '' ? '' : `${title}\n\n${text}`);

function roomTitle({ number, name, kind, renamedFrom }: RoomChange): string {
  const words = { added: ', a new room', removed: ', taken out', kept: '' }[kind];
  return `${number} ${name}${words}${renamedFrom === undefined ? '' : `, was ${renamedFrom}`}`;
}

function printRoom({ fields, measures, parts, selections }: RoomChange): string {
  const own = selections.filter((selection) => selection.own);
  const lines = [
    ...fields.map(({ field, from, to }) =>
      field === 'notes' ? '  Notes changed' : `  ${capital(field)}: ${from} → ${to}`,
    ),
    ...mainMeasures(measures).map(
      (measure) =>
        `  ${measure.what}: ${measureWords(measure, 'from')} → ${measureWords(measure, 'to')}, ${measureDifference(measure)}`,
    ),
    ...parts.map(({ name, from = 'not there', to = 'taken out' }) => `  ${name}: ${from} → ${to}`),
    ...own.flatMap(selectionLines),
  ];
  return lines.map((line) => `${line}\n`).join('');
}

/** What was and is chosen on one line, what follows from it on the next. */
function selectionLines(change: SelectionChange): string[] {
  const { placeText, categoryName, from, to, days, byChoice, cost, pounds, tradeName, own } = change;
  const [was, now] = [sideWords(from), sideWords(to)];
  const what = was === now ? `${now} (${aspectWords(change)})` : `${was} → ${now}`;
  const drawn = to?.allowanceName ?? from?.allowanceName;
  const facts = [
    `contract ${money(own ? byChoice : change.contract)}`,
    ...(cost === byChoice ? [] : [`cost in place ${money(cost)}`]),
    ...(drawn === undefined ? [] : [`drawn on ${drawn}`]),
    ...(quantityChangeWords(change) === '' ? [] : [quantityChangeWords(change)]),
    ...(pounds !== undefined && Math.abs(pounds) < 0.5 ? [] : [`weight ${poundsWords(pounds)}`]),
    ...(days.lead === 0 ? [] : [`lead time ${leadWords(days.lead)}`]),
    ...(days.decideBy === 0 || to?.state !== 'open'
      ? []
      : [`decide by ${printDay(to.decideBy)}, ${laterWords(days.decideBy)}`]),
    ...(to?.state === 'chosen' && (days.orderBy !== 0 || !from) ? [`order by ${printDay(to.orderBy)}`] : []),
    ...(to && to.orderLate > 0 ? [`order is ${printWorkingDays(to.orderLate)} late for ${to.milestoneName}`] : []),
    tradeName,
  ];
  const note = change.aspects.includes('note') ? [`    Note: ${to?.note ?? 'taken out'}`] : [];
  return [`  ${placeText}, ${categoryName.toLowerCase()}: ${what}`, `    ${facts.join('; ')}`, ...note];
}

function money(amount: Cents): string {
  return amount === 0 ? 'unchanged' : printMoneyChange(amount, 'always');
}

const noticeWords = { appears: 'New', goes: 'Gone', changed: 'Changed' } as const;

function printNotices(notices: readonly NoticeChange[], rooms: readonly RoomChange[]): string {
  const titles = new Map(rooms.map((room) => [room.room, `${room.number} ${room.name}`]));
  return notices
    .map(({ kind, room, placeText, title, from, to, then }) => {
      const where = `${titles.get(room) ?? room}, ${placeText}`;
      return `${noticeWords[kind]}: ${where}: ${title}\n  ${to ?? from ?? ''}${kind === 'goes' ? '' : `\n  ${then}`}\n`;
    })
    .join('');
}
