import type { DoorRow as Door, HardwareSet, LookUp, OpeningRow as Opening } from '../../book/index.js';
import { printLength } from '../../units/index.js';
import { lengthText, scheduledText, sideText, trimText } from './scheduled-text.js';
import type { ScheduledText } from './scheduled-text.js';

/** Door and opening schedule with the hardware sets. */
export interface OpeningSchedule {
  readonly doors: readonly DoorLine[];
  readonly hardware: readonly HardwareLine[];
  /** Cased openings and open passages, then windows. */
  readonly passages: readonly OpeningLine[];
  readonly windows: readonly OpeningLine[];
}

export interface DoorLine {
  readonly mark: string;
  readonly from: string;
  readonly to: string;
  readonly width: string;
  readonly height: string;
  readonly thickness: string;
  readonly door: ScheduledText;
  /** Core and face. */
  readonly make: string;
  readonly action: string;
  readonly roughWidth: string;
  readonly roughHeight: string;
  readonly jamb: string;
  readonly wall: string;
  readonly trim: readonly ScheduledText[];
  /** `H1`, in brackets while it is the standard for now. */
  readonly set: string;
  readonly note: string;
}

export interface HardwareLine {
  readonly set: string;
  readonly name: string;
  readonly product: string;
  readonly holds: string;
  readonly facts: string;
  readonly doors: string;
  readonly count: string;
}

export interface OpeningLine {
  readonly mark: string;
  readonly kind: string;
  readonly room: string;
  readonly to: string;
  readonly width: string;
  readonly height: string;
  readonly sill: string;
  readonly head: string;
  readonly trim: readonly ScheduledText[];
  readonly note: string;
}

export function makeOpeningSchedule(look: LookUp): OpeningSchedule {
  const { doors, openings, hardware } = look.book.schedules;
  const lines = openings.map((row) => ({ kind: row.kind, line: openingLine(row, look) }));
  return {
    doors: doors.map((row) => doorLine(row, look)),
    hardware: hardware.map(hardwareLine),
    passages: lines.filter(({ kind }) => kind !== 'window').map(({ line }) => line),
    windows: lines.filter(({ kind }) => kind === 'window').map(({ line }) => line),
  };
}

function doorLine(row: Door, look: LookUp): DoorLine {
  const { mark, width, height, thickness, core, face, rough, jamb, hardware } = row;
  const set = hardware?.set ?? scheduledText(hardware).text;
  return {
    mark,
    from: sideText(row.room, look),
    to: sideText(row.to, look),
    width: printLength(width),
    height: printLength(height),
    thickness: lengthText(thickness),
    door: scheduledText(row.door),
    make: [core === undefined ? undefined : `${core} core`, face].filter((word) => word !== undefined).join(', '),
    action: actionText(row, look),
    roughWidth: lengthText(rough?.width),
    roughHeight: lengthText(rough?.height),
    jamb: lengthText(jamb.made),
    wall: lengthText(jamb.wall),
    trim: trimText(row.trim, look),
    set: hardware?.standing === 'standard' ? `(${set})` : set,
    note: remarksOf(row),
  };
}

/** How it moves, from facts: 'hinges left seen from 101, into 104 Pantry; left hand'. */
function actionText({ operation, hinge, swing, hand, room }: Door, look: LookUp): string {
  if (operation !== 'swing' && operation !== 'double') return operation;
  const facts = [
    operation === 'double' ? 'pair' : '',
    hinge === undefined ? '' : `hinges ${hinge} seen from ${look.room(room)?.number ?? room}`,
    swing === undefined ? '' : `into ${sideText(swing, look)}`,
  ].filter((fact) => fact !== '');
  return [facts.join(', '), hand === undefined ? '' : `${hand} hand`].filter((fact) => fact !== '').join('; ');
}

function remarksOf({ note, jamb, hardware, fits, madeHeight }: Door): string {
  const made = madeHeight === undefined ? '' : `, made ${printLength(madeHeight)} high`;
  const remarks = [
    note ?? '',
    fits === false ? `door not made in this size${made}` : '',
    jamb.reaches === false ? 'wall deeper than the jamb' : '',
    hardware?.supply === 'owner-furnished' ? 'hardware furnished by the owner' : '',
  ];
  return remarks.filter((remark) => remark !== '').join('; ');
}

function hardwareLine({ set, name, product, holds, functions, finish, backset, doors }: HardwareSet): HardwareLine {
  const facts = [finish, functions, backset === undefined ? undefined : `backset ${printLength(backset)}`];
  return {
    set,
    name,
    product,
    holds: holds ?? '–',
    facts: facts.filter((fact) => fact !== undefined).join('; '),
    doors: doors.map(({ mark, standing }) => (standing === 'standard' ? `(${mark})` : mark)).join(', '),
    count: String(doors.length),
  };
}

function openingLine(row: Opening, look: LookUp): OpeningLine {
  const { mark, kind, width, height, sill, head, note = '' } = row;
  return {
    mark,
    kind: { window: 'Window', cased: 'Cased', open: 'Open' }[kind],
    room: sideText(row.room, look),
    to: sideText(row.to, look),
    width: printLength(width),
    height: printLength(height),
    sill: sill === 0 ? '–' : printLength(sill),
    head: printLength(head),
    trim: trimText(row.trim, look),
    note,
  };
}
