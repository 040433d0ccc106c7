import { feet, type Length } from '../../../base/units/index.js';
import { wholePieces } from './whole.js';

/** Posts along one straight run: one at each end, and between them equal spaces no wider than `apart`, centre to centre.
 *  `spacing` is in feet. Common practice, no source. */
export function postsAlong(run: Length, apart: Length): { readonly posts: number; readonly spacing: number } {
  if (run <= 0) return { posts: 0, spacing: 0 };
  const spaces = apart > 0 ? Math.max(1, wholePieces(run / apart)) : 1;
  return { posts: spaces + 1, spacing: feet(run) / spaces };
}
