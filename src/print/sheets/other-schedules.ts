import type { InsulationRow, LookUp, RailingRow, SoundRow, StoneRow } from '../../book/index.js';
import { printAmount, printLength } from '../../units/index.js';
import { amountFigure } from './figure.js';
import type { Figure } from './figure.js';
import { lengthText, scheduledText } from './scheduled-text.js';
import type { ScheduledText } from './scheduled-text.js';

/** Railings, stone, insulation by assembly and sound-rated walls, as text. */
export interface OtherSchedules {
  readonly railings: readonly RailingLine[];
  readonly railingTotal: { readonly length: string; readonly posts: string };
  readonly stone: readonly StoneLine[];
  readonly insulation: readonly InsulationLine[];
  readonly sound: readonly SoundLine[];
  readonly zone: string;
}

export interface RailingLine {
  readonly name: string;
  readonly room: string;
  readonly railing: ScheduledText;
  readonly kind: string;
  readonly length: string;
  readonly posts: string;
  readonly height: string;
  readonly clearOpening: string;
  readonly drop: string;
  readonly mount: string;
}

export interface StoneLine {
  readonly place: string;
  readonly room: string;
  readonly stone: ScheduledText;
  readonly faces: readonly string[];
  readonly flats: Figure;
  readonly corners: Figure;
  readonly bed: string;
  readonly weight: string;
  readonly setting: string;
  readonly support: readonly string[];
}

export interface InsulationLine {
  readonly where: string;
  readonly layers: readonly ScheduledText[];
  readonly r: Figure;
  readonly depth: string;
  readonly area: Figure;
  readonly retarder: string;
  readonly cover: string;
  readonly rooms: string;
}

export interface SoundLine {
  readonly room: string;
  readonly walls: string;
  readonly batt: ScheduledText;
  readonly stc: string;
  readonly assembly: string;
  readonly area: Figure;
  readonly openings: string;
}

export function makeOtherSchedules(look: LookUp): OtherSchedules {
  const { railings, stone, insulation, sound } = look.book.schedules;
  return {
    railings: railings.rows.map((row) => railingLine(row, look)),
    railingTotal: { length: printLength(railings.length), posts: String(railings.posts) },
    stone: stone.map((row) => stoneLine(row, look)),
    insulation: insulation.map((row) => insulationLine(row, look)),
    sound: sound.map((row) => soundLine(row, look)),
    zone: look.book.house.climateZone,
  };
}

function railingLine(row: RailingRow, look: LookUp): RailingLine {
  const { name, kind, slope, length, posts, height, clearOpening, drop, mount = '–' } = row;
  return {
    name,
    room: look.roomTitle(row.room),
    railing: scheduledText(row.railing),
    kind: slope === undefined ? kind : `${kind}, rises ${printAmount(slope, 2)} for 1`,
    length: printLength(length),
    posts: posts === undefined ? '–' : String(posts),
    height: lengthText(height),
    clearOpening: lengthText(clearOpening),
    drop: lengthText(drop),
    mount,
  };
}

function stoneLine(row: StoneRow, look: LookUp): StoneLine {
  const { pounds, poundsPerSqFt, setting, joint } = row;
  const weights = [
    pounds === undefined ? '–' : `${printAmount(pounds, 0)} lb`,
    poundsPerSqFt === undefined ? '' : `${printAmount(poundsPerSqFt, 1)} lb / sq ft`,
  ];
  return {
    place: row.placeText,
    room: look.roomTitle(row.room),
    stone: scheduledText(row.stone),
    faces: row.faces.map(({ name, gross, net }) => {
      const of = net === gross ? '' : ` of ${printAmount(gross, 1)}`;
      return `${name}: ${printAmount(net, 1)}${of}`;
    }),
    flats: amountFigure(row.flats),
    corners: amountFigure(row.corners),
    bed: lengthText(row.bed),
    weight: weights.filter((text) => text !== '').join('; '),
    setting: [setting, joint].filter((text) => text !== undefined).join('; '),
    support: row.support.map(({ what, by }) => `${what} (${look.tradeName(by)})`),
  };
}

function insulationLine(row: InsulationRow, look: LookUp): InsulationLine {
  const { where, layers, r, area, rooms } = row;
  return {
    where: `${where.charAt(0).toUpperCase()}${where.slice(1)}`,
    layers: layers.map((layer) => scheduledText(layer)),
    r: amountFigure(r),
    depth: layers.map(({ thickness }) => lengthText(thickness)).join(' + '),
    area: amountFigure(area),
    retarder: layers.map(({ retarder = '–' }) => retarder).join('; '),
    cover: layers.some(({ mustBeCovered }) => mustBeCovered === true) ? 'must be covered' : '–',
    rooms: rooms.map((room) => look.room(room)?.number ?? room).join(', '),
  };
}

function soundLine(row: SoundRow, look: LookUp): SoundLine {
  return {
    room: look.roomTitle(row.room),
    walls: row.placeText,
    batt: scheduledText(row.batt),
    stc: String(row.stc),
    assembly: row.assembly ?? '–',
    area: amountFigure(row.area),
    openings: row.openings.length === 0 ? '–' : row.openings.join(', '),
  };
}
