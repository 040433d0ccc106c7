import type { HardwareSet } from '../core/book/index.js';
import { col, type Cell } from '../sheet/index.js';
import { capital, printAmount } from '../base/units/index.js';
import { schedule } from './schedule.js';

/** What each hardware set holds, and the doors that have it. */
export const hardware = schedule<HardwareSet>({
  table: {
    id: 'hardware',
    caption: 'Hardware sets; a door in brackets has the set as standard for now',
    named: 'set',
    anchor: 'set',
    rowId: ({ set }) => set,
    columns: [
      col.mark('set', 'Set', ({ set }) => set, { width: 'fit' }),
      col.words('function', 'Function', functionOf, { width: 'short', brief: true }),
      col.words('hardware', 'Hardware', ({ name, option }) => ({ text: name, place: { to: 'option', id: option } }), {
        width: 'words',
        brief: true,
      }),
      col.words('product', 'Maker and model', ({ product }) => product, { under: 'hardware' }),
      col.words('holds', 'One set holds', ({ holds }) => holds, { width: 'long' }),
      col.words('more', 'A pair has more', ({ more }) => more.map(moreWords).join(', '), { under: 'holds' }),
      col.words('functions', 'Functions made', ({ functions }) => functions, { width: 'words', not: ['pdf'] }),
      col.words('finish', 'Finish', ({ finish }) => finish, { width: 'short' }),
      col.length('backset', 'Backset', ({ backset }) => backset),
      col.list('doors', 'Doors', ({ doors }) => doors.map(doorOf), { width: 'long' }),
      col.count('sets', 'Sets', ({ doors }) => doors.length),
    ],
  },
  rows: ({ book }) => book.schedules.hardware,
});

function functionOf({ function: locks, leaves }: HardwareSet): string {
  const name = locks === undefined ? '' : capital(locks);
  return [name, leaves === 'pair' ? 'pair' : ''].filter((word) => word !== '').join(', ');
}

/** `flush bolt, top and bottom: 2`. */
function moreWords({ what, count, unit }: HardwareSet['more'][number]): string {
  return `${what}: ${printAmount(count, 1)}${unit === 'each' ? '' : ` ${unit}`}`;
}

function doorOf({ mark, standing, supply }: HardwareSet['doors'][number]): Cell {
  const place = { to: 'opening', id: mark } as const;
  const text = supply === 'owner-furnished' ? `${mark} owner-furnished` : mark;
  return { is: 'mark', text, bracketed: standing === 'standard', place };
}
