import type { LookUp } from '../core/book/index.js';
import { col, layOut, type Column, type Finish, type HouseBlock, type Output, type Table } from '../sheet/index.js';
import {
  countsWords,
  countWords,
  cuttingWords,
  resistanceWords,
  statementOf,
  statementWords,
  supplyWords,
  takeoffAsPrinted,
  timesOf,
  type PrintedTakeoff,
  type Takeoff,
} from '../core/takeoff/index.js';
import { leftByRounding, lower, printAmount, shown } from '../base/units/index.js';
import { namesOf } from './names-of.js';
import { schedule } from './schedule.js';
import { assemblySteps, stepWords, takeoffSteps } from './steps.js';
import { quantityLines, usedLines, type QuantityLine, type UsedLine } from './takeoff-lines.js';

/** For data alone: people read it group by group, or step by step. */
const dataOnly: readonly Output[] = ['html', 'pdf', 'text'];

/** A line with its figures as they are printed. */
interface PrintedLine extends QuantityLine {
  readonly printed: PrintedTakeoff;
}

const printedLines = (lines: readonly QuantityLine[]): readonly PrintedLine[] =>
  lines.map((line) => ({ ...line, printed: takeoffAsPrinted(line.takeoff) }));

const room: Column<PrintedLine> = col.room('room', 'Room', (line, names) => names.room(line.room), { width: 'short' });

const columns: readonly Column<PrintedLine>[] = [
  col.words('trade', 'Trade', ({ trade }, names) => names.trade(trade), { not: dataOnly }),
  col.words('place', 'Place', ({ place, selection }) => ({ text: place, place: { to: 'selection', id: selection } }), {
    width: 'short',
    brief: true,
  }),
  col.finish('finish', 'Finish', finishOf, { width: 'words' }),
  col.words('category', 'Kind', ({ category }, names) => names.category(category), { not: dataOnly }),
  col.words('part', 'Part', ({ takeoff }) => takeoff.part, { not: dataOnly }),
  col.ticked('gross', 'Gross', (line) => ticked(line, line.takeoff.gross), { not: ['html'] }),
  col.ticked('less', 'Less', (line) => ticked(line, line.takeoff.gross - line.takeoff.net), { not: ['html'] }),
  col.ticked('net', 'Net', (line) => ticked(line, line.takeoff.net), { brief: true }),
  col.exact(2)('times', 'Coats or layers', ({ takeoff }) => moreThanOnce(takeoff.factors)),
  col.exact(2)('waste', 'Waste, %', ({ takeoff }) => takeoff.waste.percent),
  col.quantity('required', 'With waste', ({ takeoff: { required, unit } }) => ({ amount: required, unit })),
  col.unit('unit', 'Unit', ({ takeoff }) => takeoff.unit, { width: 'fit', brief: true }),
  col.quantity(
    'laid',
    'As laid',
    ({ takeoff: { layout } }) => layout && { amount: layout.surface.bought, unit: 'sq ft' },
  ),
  col.words('order', 'Order by', ({ takeoff }) => takeoff.layout?.orderBy, { width: 'fit' }),
  col.words('counted', 'Counted', ({ takeoff }) => countedOf(takeoff), { not: dataOnly }),
  col.words('rule', 'Rule', ({ takeoff }) => takeoff.rule, { not: dataOnly }),
  col.words('why', 'How this was figured', ({ takeoff }) => whyOf(takeoff), { not: dataOnly }),
  col.words('state', 'Status', ({ state }) => state, { not: dataOnly }),
];

const table: Table<PrintedLine> = {
  id: 'quantities',
  caption: 'Quantities',
  named: 'room',
  rowId: ({ selection, takeoff }) => `${selection}-${takeoff.part}`,
  columns: [room, ...columns],
  notes: roundingNotes,
};

/** What every place takes of its finish, with the figures that lead to it. */
export const quantities = schedule<PrintedLine>({
  table,
  rows: (look) => printedLines(quantityLines(look)),
  trades: ({ trade }) => [trade],
});

/** What is used up with the finishes, place by place. */
export const used = schedule<UsedLine>({
  table: {
    id: 'used',
    caption: 'Supplies, used up with the finishes, place by place',
    named: 'room',
    rowId: ({ selection, part, used: { what } }) => `${selection}-${part}-${what}`,
    columns: [
      col.words('trade', 'Trade', ({ trade }, names) => names.trade(trade)),
      col.room('room', 'Room', (line, names) => names.room(line.room)),
      col.words('place', 'Place', ({ place }) => place),
      col.words('supply', 'Supply', ({ used: { what } }) => what),
      col.words('finish', 'For', ({ name }) => name),
      col.words('part', 'Part', ({ part }) => part),
      col.quantity('net', 'Net', ({ used: { net, unit } }) => ({ amount: net, unit })),
      col.exact(2)('times', 'Times', ({ used: { factors } }) => moreThanOnce(factors)),
      col.percent('waste', 'Waste, %', ({ used: { waste } }) => waste.percent),
      col.quantity('required', 'With waste', ({ used: { required, unit } }) => ({ amount: required, unit })),
      col.unit('unit', 'Unit', ({ used: { unit } }) => unit),
      col.words('rule', 'Source', ({ used: { source } }) => source),
      col.words('why', 'How this was figured', ({ used: one }) => supplyWords(one)),
    ],
  },
  rows: (look) => usedLines(quantityLines(look)),
  trades: ({ trade }) => [trade],
});

/** Of one trade, by kind of finish with the rule of each. */
export function quantitiesOfTrade(trade: string, lines: readonly QuantityLine[], look: LookUp): HouseBlock {
  const ofTrade: Table<PrintedLine> = {
    ...table,
    id: `quantities-${trade}`,
    caption: `Quantities of ${lower(look.tradeName(trade))}`,
    group: ({ category }) => {
      const { name = category, section = '', measure } = look.category(category) ?? {};
      return {
        title: `${name} ${section}`.trim(),
        ...(measure && { why: `${measure.words} Source: ${measure.source}.` }),
      };
    },
  };
  const kinds = look.book.categories.map(({ slug }) => slug);
  return layOut(
    ofTrade,
    printedLines(kinds.flatMap((kind) => lines.filter(({ category }) => category === kind))),
    namesOf(look),
  );
}

/** Of one room. The rule stands beside each where it is read on a page. */
export function quantitiesOfRoom(title: string, lines: readonly QuantityLine[], look: LookUp): HouseBlock {
  const ofRoom = columns.map((column) =>
    column.key === 'rule' ? { ...column, width: 'long' as const, not: ['pdf', 'text'] as const } : column,
  );
  const caption = `What ${title} needs, with what is counted today`;
  return layOut(
    { ...table, id: 'quantities-table', caption, named: 'place', columns: ofRoom },
    printedLines(lines),
    namesOf(look),
  );
}

/** What the place takes; what is not chosen is counted as the standard. */
function finishOf(
  { name, option, state, supply, selection, takeoff: { part } }: QuantityLine,
  names: {
    readonly urgency: (selection: string) => Finish['urgency'];
  },
): Finish {
  const urgency = names.urgency(selection);
  return {
    name: part === 'main' ? name : `${name}, ${part}`,
    standing: state === 'open' ? 'standard' : 'chosen',
    by: supply,
    ...(urgency && { urgency }),
    place: { to: 'option', id: option },
    selection,
  };
}

/** Coats and the like; nothing where it is done once. */
function moreThanOnce(factors: Takeoff['factors']): number | undefined {
  const times = timesOf(factors);
  return times === 1 ? undefined : times;
}

/** With the digits that lead from gross to net, and with coats and waste to what is required. */
function ticked({ takeoff, printed }: PrintedLine, value: number) {
  return { value: shown(value, takeoff.unit).amount, digits: printed.digits };
}

/** Where gross less what is taken off misses the net as printed, it is said: no figure is bent to another. */
function roundingNotes(lines: readonly PrintedLine[]): readonly string[] {
  const missed = lines.flatMap(({ place, name, printed: { gross, less, net, digits } }) => {
    const left = leftByRounding([gross, -less], net, digits);
    return left === 0 ? [] : [`${place}, ${name}, by ${printAmount(Math.abs(left), digits)}`];
  });
  if (missed.length === 0) return [];
  return [`Each figure is rounded by itself; gross and what is taken off miss the net: ${missed.join('; ')}.`];
}

const countedOf = ({ counts = [], assemblies = [] }: Takeoff): string =>
  [countsWords(counts), ...assemblies.map(resistanceWords)].filter((text) => text !== '').join('; ');

/** Which count is the order, where it is laid out. */
export const statementLines = (takeoff: Takeoff): readonly string[] => {
  const statement = statementOf(takeoff);
  return statement ? [statementWords(statement)] : [];
};

const whyOf = (takeoff: Takeoff): string =>
  [
    ...takeoffSteps(takeoff).map(stepWords),
    ...statementLines(takeoff),
    ...(takeoff.cutting ? cuttingWords(takeoff.cutting) : []),
    ...(takeoff.counts ?? []).map((count) => `${countWords(count)}: ${count.why}`),
    ...(takeoff.notes ?? []).map((note) => `${note.what}: ${note.words}`),
    ...(takeoff.assemblies ?? []).flatMap((assembly) => [assembly.name, ...assemblySteps(assembly).map(stepWords)]),
  ].join('; ');
