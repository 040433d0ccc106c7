import { roomUses, type RoomUse } from '../../core/model/index.js';
import { didYouMean } from '../../base/problem/index.js';
import {
  isMetric,
  parseLength,
  parseSize,
  printLength,
  read,
  unread,
  type Length,
  type Reading,
} from '../../base/units/index.js';
import { readName } from '../record/name.js';
import { isRoomUse, useNamed } from '../record/use.js';

/** What a line says of a room beside its shape. */
export interface RoomName {
  readonly name: string;
  /** Absent where neither the line nor the name tells. */
  readonly use?: RoomUse;
}

/** A rectangular room as people say it in one line. */
export interface RoomLine extends RoomName {
  /** East-west by north-south, as written: `14' x 12'`. */
  readonly size: string;
}

/** No side of a room is longer: 500 ft, in nanometres. */
const longestSide = 500 * 304_800_000;

/** Reads `Kitchen 14' x 12'`, `Kitchen 4.2 x 3.6 m`, and `Sun room 12' x 10' as study` where the name does not tell the use. A unit that
 *  stands once, behind both, is of both. */
export function readRoomLine(text: string): Reading<RoomLine> {
  const used = withUse(text);
  if (!used.ok) return used;
  const parted = nameAndSize(used.value.before);
  if (!parted.ok) return parted;
  const named = nameOf(parted.value.name, used.value.use);
  return named.ok ? read({ ...named.value, size: parted.value.size }) : named;
}

/** Reads `Kitchen`, and `Sun room as study`. */
export function readRoomName(text: string): Reading<RoomName> {
  const used = withUse(text);
  return used.ok ? nameOf(used.value.before, used.value.use) : used;
}

function nameOf(text: string, said: RoomUse | undefined): Reading<RoomName> {
  const name = readName(text);
  if (!name.ok) return unread(`its name: ${name.why}`, name.fix);
  const use = said ?? useNamed(name.value);
  return read({ name: name.value, ...(use !== undefined && { use }) });
}

/** What stands before `as study`, and the use. */
function withUse(text: string): Reading<{ readonly before: string; readonly use?: RoomUse }> {
  const [, before = text, word] = /^(.*\S)\s+as\s+([a-z]+)\s*$/isu.exec(text) ?? [];
  if (word === undefined) return read({ before: before.trim() });
  if (isRoomUse(word)) return read({ before: before.trim(), use: word });
  return unread(`there is no use '${word}'`, didYouMean(word, roomUses) ?? `uses are ${roomUses.join(', ')}`);
}

/** A size by itself, with its unit once or twice. */
export function readRoomSize(text: string): Reading<string> {
  const written = withBothUnits(text.trim().replace(/\s+/gu, ' '));
  const size = parseSize(written);
  if (!size.ok) return size;
  const { eastWest, northSouth } = size.value;
  if (Math.max(eastWest, northSouth) <= longestSide) return read(written);
  return unread(`a side of '${text}' is longer than ${printLength(longestSide as Length)}`, 'check the units');
}

/** The longest end of the line that is a size; where none is, what the end that looks like one lacks. */
function nameAndSize(text: string): Reading<{ readonly name: string; readonly size: string }> {
  const ends = [...text.matchAll(/[\s,:]+(?=[\d.½¼¾-])/gu)].map(({ index, 0: gap }) => ({
    name: text.slice(0, index),
    end: text.slice(index + gap.length),
  }));
  let refused: Reading<string> | undefined;
  for (const { name, end } of ends) {
    const size = readRoomSize(end);
    if (size.ok) return read({ name, size: size.value });
    if (/[x×X]/u.test(end)) refused = size;
  }
  if (refused && !refused.ok) return refused;
  const example = isMetric() ? 'Kitchen 4.2 x 3.6 m' : `Kitchen 14' x 12'`;
  return unread('it has no size', `write the name and the size, east-west by north-south: ${example}`);
}

/** `4.2 x 3.6 m` is `4.2 m x 3.6 m`. */
function withBothUnits(size: string): string {
  const [first = '', second = '', more] = size.split(/ ?[x×X] ?/u);
  const unit = /(?:mm|cm|m|ft\.?|feet|['′’])$/iu.exec(second)?.[0];
  if (more !== undefined || unit === undefined || !/^[\d.,]+$/u.test(first)) return size;
  const both = `${first} ${unit} x ${second}`.replace(` '`, `'`);
  return parseLength(`${first} ${unit}`).ok ? both : size;
}
