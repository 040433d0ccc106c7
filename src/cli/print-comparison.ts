import { printDay, printWorkingDays } from '../calendar/index.js';
import {
  aspectWords,
  isTold,
  laterWords,
  leadWords,
  mainMeasures,
  measureDifference,
  measureWords,
  moneyParts,
  movedByProduct,
  poundsWords,
  quantityChangeWords,
  sideWords,
  togetherWords,
} from '../compare/index.js';
import type { Comparison, NoticeChange, RoomChange, SelectionChange } from '../compare/index.js';
import { printMoney, printMoneyChange } from '../units/index.js';
import type { Cents } from '../units/index.js';
import { printTable } from './table.js';

/** A comparison for a terminal, in the order in which one tells it on the phone: the totals and where the difference comes
 *  from, then room by room in sentences, then what lies outside the rooms. */
export function printComparison(comparison: Comparison): string {
  const { house, from, to, rooms } = comparison;
  const sections = [
    ['', `${house.name}, job ${house.number}\n${from.label} → ${to.label}\n`],
    ['', printTotals(comparison)],
    ...rooms.filter(isTold).map((room) => [roomTitle(room), printRoom(room)] as const),
    ['Not chosen anew, moved by prices, terms or whole packs', printMoved(rooms)],
    ['Price book', printPriceBook(comparison)],
    ['Allowances', printAllowances(comparison)],
    ['Terms', printFields(comparison.terms)],
    ['Days', printDays(comparison)],
    ['Cautions', printNotices(comparison.cautions, rooms)],
    ['Scope', printNotices(comparison.scope, rooms)],
    ['Trades to tell', printTrades(comparison)],
    ['Records', printRecords(comparison)],
  ] as const;
  return sections
    .filter(([, text]) => text !== '')
    .map(([title, text]) => (title === '' ? text : `${title}\n\n${text}`))
    .join('\n');
}

function printTotals(comparison: Comparison): string {
  const { from, to, money } = comparison;
  const parts = moneyParts(comparison);
  const rows = [
    { what: `Total, ${from.label}`, amount: printMoney(from.today, 'always') },
    ...parts.map(({ what, amount }) => ({ what: `  ${what}`, amount: printMoneyChange(amount, 'always') })),
    { what: 'Difference', amount: printMoneyChange(money.difference, 'always') },
    { what: `Total, ${to.label}`, amount: printMoney(to.today, 'always') },
  ];
  const note = parts.length === 0 ? undefined : togetherWords(money.together);
  return `${printTable(rows, [
    { head: 'Money', align: 'left', text: (row) => row.what },
    { head: '', align: 'right', text: (row) => row.amount },
  ])}${note === undefined ? '' : `${note}\n`}`;
}

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

function printMoved(rooms: readonly RoomChange[]): string {
  const products = movedByProduct(rooms);
  const dated = rooms
    .flatMap((room) => room.selections)
    .filter(({ own, cost, contract }) => !own && cost === 0 && contract === 0).length;
  const table =
    products.length === 0
      ? ''
      : printTable(products, [
          { head: 'Product', align: 'left', text: (row) => row.product },
          { head: 'What', align: 'left', text: (row) => row.categoryName },
          { head: 'Places', align: 'right', text: (row) => String(row.places) },
          { head: 'Cost in place', align: 'right', text: (row) => printMoneyChange(row.cost, 'always') },
          { head: 'Contract', align: 'right', text: (row) => printMoneyChange(row.contract, 'always') },
        ]);
  const rest =
    dated === 0
      ? ''
      : `${dated === 1 ? '1 place moves' : `${dated} places move`} in days, lead time or weight alone.\n`;
  return `${table}${rest}`;
}

function printPriceBook({ priceBook }: Comparison): string {
  const rows = priceBook.flatMap(({ name, kind, renamedFrom, fields }) => {
    const first = kind === 'changed' ? [] : [{ name, field: kind, from: renamedFrom ?? '', to: '' }];
    return [...first, ...fields.map((field) => ({ name, ...field }))];
  });
  if (rows.length === 0) return '';
  return printTable(rows, [
    { head: 'Option', align: 'left', text: (row) => row.name },
    { head: 'Field', align: 'left', text: (row) => row.field },
    { head: 'Was', align: 'right', text: (row) => row.from },
    { head: 'Now', align: 'right', text: (row) => row.to },
  ]);
}

function printAllowances({ allowances }: Comparison): string {
  return allowances
    .flatMap(({ name, kind, fields, drawn, contract }) => [
      `${name}${{ added: ', new', removed: ', taken out', kept: '' }[kind]}: ${drawnWords(drawn)}; contract ${money(contract)}\n`,
      ...fields.map(({ field, from, to }) => `  ${field}: ${from} → ${to}\n`),
    ])
    .join('');
}

function drawnWords({ from, to }: Comparison['allowances'][number]['drawn']): string {
  const now = printMoney(to, 'always');
  return from === to ? `draws ${now} as before` : `draws ${printMoney(from, 'always')} → ${now}`;
}

function printFields(fields: Comparison['terms']): string {
  return fields.map(({ field, from, to }) => `${capital(field)}: ${from} → ${to}\n`).join('');
}

function printDays({ milestones }: Comparison): string {
  return milestones
    .map(({ name, from, to, days }) => {
      if (from === undefined) return `${name}: new, ${to === undefined ? '' : printDay(to)}\n`;
      if (to === undefined) return `${name}: taken out, was ${printDay(from)}\n`;
      return `${name}: ${printDay(from)} → ${printDay(to)}, ${laterWords(days ?? 0)}\n`;
    })
    .join('');
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

function printTrades({ trades }: Comparison): string {
  return trades
    .map(({ name, selections }) => `${name}: ${selections === 1 ? '1 selection' : `${selections} selections`}\n`)
    .join('');
}

function printRecords({ records }: Comparison): string {
  if (records.length === 0) return 'No record differs.\n';
  return records
    .map(({ path, kind, renamedFrom }) => `${kind} ${path}${renamedFrom === undefined ? '' : `, was ${renamedFrom}`}\n`)
    .join('');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
