import {
  isMetric,
  plural,
  printAmount,
  printDay,
  printLength,
  printMoney,
  printMoneyChange,
  printPieces,
  printPitch,
  type IsoDate,
} from '../base/units/index.js';
import type { Cell, Finish, HouseCell, Place, Status } from './cell.js';
import { inCurrency } from './in-currency.js';
import { statusWords } from './words.js';

/** A piece of text with what it means, the same for every output that people read. */
export interface Run {
  readonly text: string;
  readonly tone?: 'quiet' | 'strong' | 'open' | 'more' | 'less' | 'mark';
  readonly place?: Place;
  /** A sign that stands before the words; it repeats them. */
  readonly sign?: Status | 'owner-furnished';
  /** Digits after the point that the column keeps room for. */
  readonly figure?: number;
  /** The day that the words name. */
  readonly day?: IsoDate;
}

/** Runs of one line. */
export type Line = readonly Run[];

const dash: Run = { text: '–', tone: 'quiet' };

/** The words of a cell, line by line. */
export function say(cell: HouseCell): readonly Line[] {
  if (cell.is !== 'lines') return [line(cell)];
  return cell.of.map(({ at, after, cell: one }) => [
    ...(at === undefined ? [] : [{ text: `${at} `, tone: 'quiet' as const }]),
    ...line(one).map(inText),
    ...(after === undefined ? [] : [{ text: ` ${after}`, tone: 'quiet' as const }]),
  ]);
}

/** Among words a figure stands on no point. */
const inText = (run: Run): Run => (run.figure === undefined ? run : { ...run, figure: 0 });

function line(cell: HouseCell): Line {
  switch (cell.is) {
    case 'nothing':
      return [dash];
    case 'words': {
      const { text, place, tone = 'plain' } = cell;
      return [{ text, ...(tone !== 'plain' && { tone }), ...(place && { place }) }];
    }
    case 'prose':
      return [{ text: cell.text }];
    case 'room': {
      const { number, name, place } = cell;
      const to = place && { place };
      return [
        { text: number, tone: 'mark', ...to },
        { text: `${number === '' ? '' : ' '}${name}`, ...to },
      ];
    }
    case 'mark': {
      const { text, place, bracketed = false } = cell;
      return [{ text: bracketed ? `(${text})` : text, tone: 'mark', ...(place && { place }) }];
    }
    case 'length':
      return [{ text: printLength(cell.nm), figure: 0 }];
    case 'span':
      return [{ text: `${printLength(cell.from)} to ${printLength(cell.to)}`, figure: 0 }];
    case 'amount': {
      const { value, digits, unit } = cell;
      const text = printAmount(value, digits);
      return [unit === undefined ? { text, figure: digits } : { text: `${text} ${unit}` }];
    }
    case 'count':
      return [{ text: printAmount(cell.value, 0), figure: 0 }];
    case 'pitch':
      return [{ text: isMetric() ? printPitch(cell.slope) : `rise ${printAmount(cell.slope * 12, 1)} in 12` }];
    case 'percent':
      return [{ text: printAmount(cell.value, 1), figure: 1 }];
    case 'unit':
      return [{ text: cell.unit, tone: 'quiet' }];
    case 'pack':
      return [{ text: packWords(cell) }];
    case 'pieces':
      return [{ text: printPieces(cell.of) }];
    case 'days':
      return [{ text: daysWords(cell.working) }];
    case 'day':
      return [{ text: printDay(cell.day), day: cell.day }];
    case 'rooms':
      return [{ text: roomsWords(cell.numbers, cell.all) }];
    case 'finish':
      return finish(cell);
    case 'status':
      return [{ text: statusWords[cell.status], sign: cell.status, ...(cell.place && { place: cell.place }) }];
    case 'swing':
      return [];
    case 'list':
      return cell.of.flatMap((one, index): Line => [...(index > 0 ? [{ text: cell.parted }] : []), ...line(one)]);
    case 'lines':
      return cell.of.flatMap(({ cell: one }) => line(one));
    case 'money':
      return [inCurrency(cell, () => moneyRun(cell))];
  }
}

function moneyRun({ cents, change = false, strong = false, zero }: Extract<HouseCell, { is: 'money' }>): Run {
  if (cents === 0 && zero === undefined) return { ...dash, figure: 2 };
  const figure = { figure: 2, ...(strong && { tone: 'strong' as const }) };
  if (!change || cents === 0) return { text: printMoney(cents, 'always'), ...figure };
  return { text: printMoneyChange(cents, 'always'), figure: 2, tone: cents > 0 ? 'more' : 'less' };
}

/** What stands, how certain it is, and who furnishes it. */
function finish({ name, standing, urgency, by, key, keyOnly = false, place, selection, kind }: Finish): Line {
  const toChoice = selection === undefined ? {} : { place: { to: 'selection', id: selection } as const };
  const isKey = key !== undefined && (keyOnly || standing !== 'open');
  const isForNow = standing === 'standard' || standing === 'considered';
  const keyed: Line = isKey ? [{ text: isForNow ? `(${key})` : key, tone: 'mark', place: { to: 'key', id: key } }] : [];
  const named: Line =
    keyOnly && isKey
      ? []
      : standing === 'none' || standing === 'open'
        ? [
            {
              text: `${kind === undefined ? '' : `${kind} `}${statusWords[standing === 'none' ? 'none' : 'undecided']}`,
              ...(isKey ? {} : toChoice),
            },
          ]
        : [{ text: name, ...(place && { place }) }];
  return [
    ...keyed,
    ...(keyed.length > 0 && named.length > 0 ? [{ text: ' ' }] : []),
    ...named,
    ...(standing === 'standard' && !keyOnly ? [{ text: ', standard for now', tone: 'quiet' as const }] : []),
    ...(standing === 'considered' ? [{ text: ', if chosen', tone: 'quiet' as const }] : []),
    ...((isForNow || standing === 'open') && urgency
      ? [{ text: ' ' }, { text: statusWords[urgency], sign: urgency, tone: 'open' as const, ...toChoice }]
      : []),
    ...(by === 'owner-furnished'
      ? [{ text: ' ' }, { text: statusWords['owner-furnished'], sign: 'owner-furnished' as const }]
      : []),
  ];
}

/** `18 bundles of 24 sq ft`. */
export function packWords({ count, name, holds, unit }: Omit<Extract<Cell, { is: 'pack' }>, 'is'>): string {
  return `${printAmount(count, 0)} ${count === 1 ? name : plural(name)} of ${printAmount(holds, 2)} ${unit}`;
}

/** `6 weeks`, `3 days`, `none`: of working days, five to a week. */
function daysWords(working: number): string {
  if (working === 0) return 'none';
  const [count, noun] = working % 5 === 0 ? [working / 5, 'week'] : [working, 'day'];
  return `${printAmount(count, 0)} ${count === 1 ? noun : `${noun}s`}`;
}

const longestList = 8;

function roomsWords(numbers: readonly string[], all = false): string {
  return numbers.length > longestList && !all ? `${numbers.length} rooms` : numbers.join(', ');
}

const joined = (runs: Line): string => runs.map(({ text }) => text).join('');

/** The words of a cell in one line. */
export const plainWords = (cell: HouseCell): string =>
  say(cell)
    .map(joined)
    .filter((text) => text !== '')
    .join('; ');
