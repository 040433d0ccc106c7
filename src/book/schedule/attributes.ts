import type { Attribute, Category } from '../../model/index.js';
import type { Length } from '../../units/index.js';
import type { BookCategory, BookOption } from '../book.js';

/** Attributes by which schedules know a kind of product and read its figures. A category whose options carry `leaf` is of
 *  doors, `backset` of door hardware, `r-value` of insulation, `stc` of sound-rated walls. */
export const attributeNames = {
  leaf: 'leaf',
  roughWidth: 'rough-width',
  roughHeight: 'rough-height',
  core: 'core',
  face: 'face',
  panels: 'panels',
  jamb: 'jamb',
  undercut: 'undercut',
  backset: 'backset',
  holds: 'holds',
  functions: 'function',
  finish: 'finish',
  height: 'height',
  widths: 'widths',
  clearOpening: 'clear-opening',
  postSpacing: 'post-spacing',
  mount: 'mount',
  bed: 'bed',
  setting: 'setting',
  joint: 'joint',
  rValue: 'r-value',
  inPlace: 'thickness-in-place',
  type: 'type',
  retarder: 'vapor-retarder',
  needsCover: 'needs-cover',
  stc: 'stc',
  assembly: 'assembly',
} as const;
export type AttributeName = keyof typeof attributeNames;

/** Do options of the category carry the attribute? */
export function carries(
  category: Pick<BookCategory | Category, 'attributes'> | undefined,
  name: AttributeName,
): boolean {
  return category?.attributes.some((rule) => rule.name === attributeNames[name]) ?? false;
}

export function lengthOf(option: BookOption | undefined, name: AttributeName): Length | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'length' ? value.length : undefined;
}

export function lengthsOf(option: BookOption | undefined, name: AttributeName): readonly Length[] | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'lengths' ? value.lengths : undefined;
}

export function numberOf(option: BookOption | undefined, name: AttributeName): number | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'number' ? value.number : undefined;
}

export function textOf(option: BookOption | undefined, name: AttributeName): string | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'text' ? value.text : undefined;
}

export function isYes(option: BookOption | undefined, name: AttributeName): boolean | undefined {
  const value = valueOf(option, name);
  return value?.kind === 'yes-no' ? value.yes : undefined;
}

function valueOf(option: BookOption | undefined, name: AttributeName): Attribute['value'] | undefined {
  return option?.attributes.find((each) => each.name === attributeNames[name])?.attribute.value;
}
