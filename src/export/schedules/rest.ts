import { lookUp } from '../../book/index.js';
import type { Book } from '../../book/index.js';
import { lengthText, standingText } from './text.js';

export function railingRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.railings.rows.map((row) => ({
    room: look.roomTitle(row.room),
    run: row.name,
    railing: standingText(row.railing),
    kind: row.kind,
    slope: row.slope ?? '',
    length: lengthText(row.length),
    posts: row.posts ?? '',
    height: lengthText(row.height),
    clearOpening: lengthText(row.clearOpening),
    postSpacing: lengthText(row.postSpacing),
    mount: row.mount ?? '',
    drop: lengthText(row.drop),
  }));
}

export function stoneRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.stone.map((row) => ({
    room: look.roomTitle(row.room),
    place: row.placeText,
    stone: standingText(row.stone),
    flatsSqFt: row.flats,
    cornersLinFt: row.corners,
    bed: lengthText(row.bed),
    setOn: row.setting ?? '',
    pounds: row.pounds ?? '',
    poundsPerSqFt: row.poundsPerSqFt ?? '',
    support: row.support.map(({ what, by }) => `${what} (${look.tradeName(by)})`).join('; '),
  }));
}

export function insulationRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.insulation.map(({ where, layers, r, area, rooms }) => ({
    where,
    assembly: layers.map((layer) => standingText({ ...layer, selection: '' })).join(' + '),
    rValue: r,
    thickness: layers.map(({ thickness }) => lengthText(thickness)).join(' + '),
    vaporRetarder: layers.map(({ retarder }) => retarder ?? '').join(' + '),
    areaSqFt: area,
    rooms: rooms.map((room) => look.room(room)?.number ?? room).join(' '),
  }));
}

export function soundRows(book: Book): readonly object[] {
  const look = lookUp(book);
  return book.schedules.sound.map((row) => ({
    room: look.roomTitle(row.room),
    walls: row.placeText,
    insulation: standingText(row.batt),
    stc: row.stc,
    testedWith: row.assembly ?? '',
    thickness: lengthText(row.thickness),
    areaSqFt: row.area,
    openings: row.openings.join(' '),
  }));
}
