import { printLength } from '../../units/index.js';
import type { Length } from '../../units/index.js';

export function lengthText(length: Length | undefined): string {
  return length === undefined ? '' : printLength(length);
}
