import { currency, moneyNumber, printPieces, shown, unitName } from '../base/units/index.js';
import type { HouseCell, Kind } from './cell.js';
import { unitOfHead } from './head.js';
import { inCurrency } from './in-currency.js';
import { packWords } from './say.js';

/** What a cell is worth to a machine: numbers as numbers, in the unit that the column's head names. */
export function raw(cell: HouseCell | undefined): string | number {
  if (!cell) return '';
  switch (cell.is) {
    case 'nothing':
    case 'swing':
      return '';
    case 'words':
    case 'prose':
      return cell.text;
    case 'room':
      return `${cell.number} ${cell.name}`.trim();
    case 'mark':
      return cell.bracketed ? `(${cell.text})` : cell.text;
    case 'unit':
      return cell.unit;
    case 'length':
      return inches(cell.nm);
    case 'span':
      return `${inches(cell.from)} to ${inches(cell.to)}`;
    case 'amount':
    case 'percent':
      return Number(cell.value.toFixed(6));
    case 'count':
      return cell.value;
    case 'pitch':
      return Number(cell.slope.toFixed(6));
    case 'days':
      return cell.working;
    case 'day':
      return cell.day;
    case 'pack':
      return packWords(cell);
    case 'pieces':
      return printPieces(cell.of);
    case 'rooms':
      return cell.numbers.join(', ');
    case 'finish':
      if (cell.keyOnly && cell.key !== undefined)
        return cell.standing === 'standard' || cell.standing === 'considered' ? `(${cell.key})` : cell.key;
      return cell.standing === 'open' || cell.standing === 'none' ? cell.standing : cell.name;
    case 'status':
      return cell.status;
    case 'money':
      return inCurrency(cell, () => moneyNumber(cell.cents));
    case 'list':
      return cell.of.map(raw).join(cell.parted);
    case 'lines':
      return cell.of
        .map(({ at, after, cell: one }) => [at, raw(one), after].filter((part) => part !== undefined).join(' '))
        .join('; ');
  }
}

/** Inches, or millimetres in a metric house, to a millionth: 1/64 inch and 1 mm are told apart. */
const inches = (nm: number): number => Number(shown(nm / 25_400_000, 'in').amount.toFixed(6));

function unitOf(kind: Kind): string | undefined {
  switch (kind) {
    case 'length':
    case 'span':
      return unitName('in');
    case 'days':
      return 'working days';
    case 'percent':
      return '%';
    case 'money':
      return currency().sign;
    default:
      return undefined;
  }
}

/** `rough width (in)`: a column's head in data. An amount has its unit from the head that people read: `Area, sq ft`. */
export function dataHead({
  key,
  kind,
  head,
}: {
  readonly key: string;
  readonly kind: Kind;
  readonly head: string;
}): string {
  const words = key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const unit = kind === 'amount' ? unitOfHead(head) : unitOf(kind);
  return unit === undefined ? words : `${words} (${unit})`;
}
