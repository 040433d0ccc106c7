import { counted, printLength } from '../../../base/units/index.js';
import type { RailPiece } from './rail.js';

/** `12'-0" in 3 spaces of 4'-0"`. */
export function spacesWords({ length, bays, spacing }: Pick<RailPiece, 'length' | 'bays' | 'spacing'>): string {
  return `${printLength(length)} in ${counted(bays, 'space')} of ${printLength(spacing)}`;
}
