import { lookUp } from '../../book/index.js';
import type { Book, DoorRow, LookUp } from '../../book/index.js';
import { lengthText, standingText, supplyText } from './text.js';

export function doorRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.doors.map((row) => ({
    mark: row.mark,
    from: look.roomTitle(row.room),
    to: sideText(row.to, look),
    width: lengthText(row.width),
    height: lengthText(row.height),
    thickness: lengthText(row.thickness),
    door: standingText(row.door),
    face: row.face ?? '',
    core: row.core ?? '',
    operation: row.operation,
    hinges: row.hinge ?? '',
    swingsInto: row.swing === undefined ? '' : sideText(row.swing, look),
    hand: row.hand ?? '',
    fits: row.fits === undefined ? '' : row.fits ? 'yes' : 'no',
    roughWidth: lengthText(row.rough?.width),
    roughHeight: lengthText(row.rough?.height),
    jamb: lengthText(row.jamb.made),
    wall: lengthText(row.jamb.wall),
    trim: trimText(row.trim, look),
    hardwareSet: row.hardware?.set ?? '',
    hardware: standingText(row.hardware),
    hardwareBy: supplyText(row.hardware),
    remarks: row.note ?? '',
  }));
}

export function openingRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.openings.map((row) => ({
    mark: row.mark,
    kind: row.kind,
    room: look.roomTitle(row.room),
    wall: row.wall,
    to: sideText(row.to, look),
    width: lengthText(row.width),
    height: lengthText(row.height),
    sill: lengthText(row.sill),
    head: lengthText(row.head),
    area: row.area,
    trim: trimText(row.trim, look),
    remarks: row.note ?? '',
  }));
}

export function hardwareRows({ schedules }: Book): readonly object[] {
  return schedules.hardware.map(({ set, name, product, finish, functions, backset, holds, doors }) => ({
    set,
    hardware: name,
    product,
    finish: finish ?? '',
    functions: functions ?? '',
    backset: lengthText(backset),
    holds: holds ?? '',
    doors: doors.map(({ mark, standing }) => (standing === 'standard' ? `(${mark})` : mark)).join(' '),
    sets: doors.length,
  }));
}

function sideText(room: string, look: LookUp): string {
  return room === 'outside' ? 'Outside' : look.roomTitle(room);
}

function trimText(trim: DoorRow['trim'], look: LookUp): string {
  return trim.map((each) => `${look.room(each.room)?.number ?? each.room}: ${standingText(each)}`).join('; ');
}
