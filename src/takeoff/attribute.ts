import type { Option } from '../model/index.js';
import type { Length } from '../units/index.js';

/** Values of an option's attributes by kind; undefined when it has none of that name and kind. */
export function numberOf(option: Option, name: string): number | undefined {
  const value = option.attributes[name]?.value;
  return value?.kind === 'number' ? value.number : undefined;
}

export function lengthAttribute(option: Option, name: string): Length | undefined {
  const value = option.attributes[name]?.value;
  return value?.kind === 'length' ? value.length : undefined;
}
