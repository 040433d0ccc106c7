import type { DoorRow } from '../core/book/index.js';
import { col, type Column, type Names } from '../sheet/index.js';
import { capital, printLength } from '../base/units/index.js';
import { schedule } from './schedule.js';
import { finishOf, trimOf } from './scheduled.js';
import { shapeOf } from './shape-of.js';

const columns: readonly Column<DoorRow>[] = [
  col.mark('mark', 'Mark', ({ mark }) => mark, { width: 'fit' }),
  col.room('from', 'From', ({ room }, names) => names.room(room), { width: 'short', brief: true }),
  col.room('to', 'To', ({ to }, names) => names.room(to), { width: 'short', brief: true }),
  col.length('width', 'Width, height', ({ width }) => width, { brief: true }),
  col.length('height', 'Height', ({ height }) => height, { under: 'width' }),
  col.words('shape', 'Shape', (row) => shapeOf(row), { under: 'width' }),
  col.length('leaf', 'Leaf, undercut', ({ thickness }) => thickness),
  col.length('undercut', 'Undercut', ({ undercut }) => undercut, { under: 'leaf' }),
  col.finish('door', 'Door', ({ door }, names) => finishOf(door, names), { width: 'long' }),
  col.words('core', 'Core', ({ core }) => core && capital(`${core} core`), { under: 'door' }),
  col.words('face', 'Face', ({ face }) => face && capital(face), { under: 'door' }),
  col.words('glass', 'Glass', ({ glass }) => glass && capital(glass), { under: 'door' }),
  col.words('fireRating', 'Fire rating', ({ fireRating }) => fireRating && `Rated ${fireRating}`, { under: 'door' }),
  col.swing('swing', '', swingOf, { under: 'moves' }),
  col.words('moves', 'How it moves', movesOf, { width: 'long' }),
  col.length('roughWidth', 'Rough width, height', ({ rough }) => rough?.width),
  col.length('roughHeight', 'Rough height', ({ rough }) => rough?.height, { under: 'roughWidth' }),
  col.length('jamb', 'Jamb, wall', ({ jamb }) => jamb.made),
  col.length('wall', 'Wall', ({ jamb }) => jamb.wall, { under: 'jamb' }),
  col.words('function', 'Function', ({ function: locks }) => locks && capital(locks), { width: 'fit' }),
  col.words('stop', 'Stop', ({ stop }) => stop && (stop === 'none' ? 'No stop' : `${capital(stop)} stop`), {
    under: 'function',
  }),
  col.count('hinges', 'Hinges', ({ hinges }) => hinges?.count),
  col.words('hingesWith', 'Bought with', ({ hinges }) => hinges?.with && hingesWith[hinges.with], {
    under: 'hinges',
    not: ['pdf'],
  }),
  col.lines('trim', 'Trim', ({ trim }, names) => trimOf(trim, names), { width: 'words' }),
  col.mark('set', 'Set', setOf, { width: 'fit' }),
  col.finish('hardware', 'Hardware', ({ hardware }, names) => finishOf(hardware, names), { not: ['pdf'] }),
  col.words('hardwareFinish', 'Finish', ({ finish }) => finish && capital(finish), { under: 'set', not: ['pdf'] }),
  col.words('remarks', 'Remarks', remarksOf, { width: 'long' }),
  col.words('note', 'Note', ({ note }) => note, { under: 'remarks' }),
];

/** Each door once, in order of mark, under the room that records it. */
export const doors = schedule<DoorRow>({
  table: {
    id: 'doors',
    caption: 'Door schedule',
    columns,
    named: 'mark',
    anchor: 'opening',
    rowId: ({ mark }) => mark,
  },
  rows: ({ book }) => book.schedules.doors,
});

function swingOf({ operation, hinge, swing, room }: DoorRow) {
  if (operation !== 'swing' && operation !== 'double') return undefined;
  const into = swing === undefined ? 'unknown' : swing === room ? 'near' : 'far';
  return { leaves: operation === 'double' ? 'pair' : 'single', into, ...(hinge && { hinge }) } as const;
}

/** How it moves, from facts: `Hinges left, into 104 Pantry, left hand`. */
function movesOf({ operation, hinge, slides, swing, hand }: DoorRow, names: Names): string {
  if (operation === 'pocket') return slides ? `Pocket, slides ${slides}` : 'Pocket, side not recorded';
  if (operation !== 'swing' && operation !== 'double') return capital(operation);
  return capital(
    [
      operation === 'double' ? 'pair' : '',
      hinge === undefined ? '' : `hinges ${hinge}`,
      swing === undefined ? '' : `into ${swing === 'outside' ? 'outside' : names.title(swing)}`,
      hand === undefined ? '' : `${hand} hand`,
    ]
      .filter((fact) => fact !== '')
      .join(', '),
  );
}

function setOf({ hardware }: DoorRow) {
  if (hardware?.set === undefined) return undefined;
  const { set, standing } = hardware;
  return { text: set, bracketed: standing === 'standard', place: { to: 'set', id: set } } as const;
}

const hingesWith = { door: 'With the door', hardware: 'With the hardware', twice: 'With both' } as const;

/** What the figures say by themselves. */
function remarksOf({ fits, madeHeight, jamb, hinges, functionIsMade, isFlush, function: locks }: DoorRow): string {
  const made = madeHeight === undefined ? '' : ` (made ${printLength(madeHeight)} high)`;
  return [
    fits === false ? `Not made in this size${made}: no rough opening until one of them changes` : '',
    functionIsMade === false ? `Hardware is not made in ${locks ?? 'this function'}` : '',
    hinges?.with === 'twice' ? 'Hinges come with the door and with the hardware: buy them once' : '',
    isFlush ? 'Flush in the wall, no casing' : '',
    jamb.reaches === false ? 'Wall deeper than the jamb: extension, or a deeper jamb' : '',
  ]
    .filter((remark) => remark !== '')
    .join('. ');
}
