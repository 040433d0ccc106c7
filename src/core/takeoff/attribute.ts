import type { Option } from '../model/index.js';

/** A number among an option's attributes whose name the category's record gives, such as how many coats; undefined when it
 *  has none. */
export function numberOf(option: Option, name: string): number | undefined {
  const value = option.attributes[name]?.value;
  return value?.kind === 'number' ? value.number : undefined;
}
