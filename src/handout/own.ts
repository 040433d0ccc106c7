import { shapeWords } from '../core/opening/index.js';
import type { Sieved } from '../sheet/index.js';
import {
  capital as capitalOf,
  printAmount,
  printArea,
  printAreaBeside,
  printDay,
  printLength,
  printLengthBeside,
  printQuantity,
  printSize,
  type Area,
  type IsoDate,
  type Length,
  type Unit,
  printWeight,
  printWeightPer,
} from '../base/units/index.js';

/** Words of the program itself. */
export type Own = string & { readonly own: true };

/** Words that a handout may print: the program's own, or a record's behind the sieve. */
export type Said = Own | Sieved;

/** The program's own words: what is written in the code, never a string that came from elsewhere. */
export function own<const L extends string>(text: string extends L ? never : L): Own {
  return text as string as Own;
}

/** A sentence of the program with values in it, each of which may be printed by itself. */
export function told(parts: TemplateStringsArray, ...values: readonly (Said | number)[]): Own {
  return parts.reduce((text, part, index) => `${text}${values[index - 1] ?? ''}${part}`) as Own;
}

/** Joined by words of the program; empty ones are left out. */
export function joined(values: readonly Said[], by: ', ' | '; ' | '. ' | ' '): Own {
  return values.filter((value) => value !== '').join(by) as Own;
}

export const capital = (text: Own): Own => capitalOf(text) as Own;

/** Figures, as people read them: from numbers and days alone. */
export const amount = (value: number, digits: number): Own => printAmount(value, digits) as Own;
/** With its unit, or without where that stands beside. */
export const quantity = (value: number, unit: string, digits = 1): Own => printQuantity(value, unit, digits) as Own;
export const size = (value: number, unit: string): Own => printSize(value, unit) as Own;
export const weightPer = (weight: { readonly pounds: number; readonly per: Unit }): Own =>
  printWeightPer(weight) as Own;
export const weight = (pounds: number): Own => printWeight(pounds) as Own;
export const length = (value: Length): Own => printLength(value) as Own;
/** Nothing for a rectangle. */
export const shape = (opening: Parameters<typeof shapeWords>[0]): Own => (shapeWords(opening) ?? '') as Own;
export const lengthBeside = (value: Length): Own => printLengthBeside(value) as Own;
export const area = (value: Area): Own => printArea(value) as Own;
export const areaBeside = (value: Area): Own => printAreaBeside(value) as Own;
/** Nothing for what is no day. */
export const day = (date: IsoDate): Own => (/^\d{4}-\d\d-\d\d$/u.test(date) ? printDay(date) : '') as Own;

/** Texts of Markdown one after the other. */
export const markdown = (texts: readonly Said[]): Own => texts.filter((text) => text !== '').join('\n\n') as Own;
