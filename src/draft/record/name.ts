import { read, unread, type Reading } from '../../base/units/index.js';

const longest = 80;

/** What no name has: control characters, halves of letters, marks that turn the direction of what follows. */
const unprintable = /[\p{Cc}\p{Cs}\p{Co}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFFF9-\uFFFB\uFFFE\uFFFF\uFEFF]/u;

/** A name as printed, with single spaces: at most 80 characters, at least one that is seen. */
export function readName(text: string): Reading<string> {
  const isControlled = unprintable.test(text.trim());
  if (isControlled) return unread('it has a character that cannot be printed', 'write it in letters, digits and signs');
  const name = text.trim().replace(/\s+/gu, ' ');
  if (!/[\p{L}\p{N}\p{P}\p{S}]/u.test(name)) return unread('it is empty', 'write a name');
  if ([...name].length > longest) return unread(`it is longer than ${longest} characters`, 'write a shorter name');
  return read(name);
}
