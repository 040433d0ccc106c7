import type { GuardBeyond } from '../../core/book/index.js';
import type { OpeningMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import { topAt, type ElevationFrame } from './frame.js';

const inch = 25_400_000;
/** As high as guards usually are, where no height is known: drawn without a figure. */
const usual = 42 * inch;

/** A guard of the room behind, which stands in the opening: its rails and posts, of dashes while it is not chosen. Returns what writes its words. */
export function drawGuardBeyond(
  frame: ElevationFrame,
  { at: left, sill, width, height }: Pick<OpeningMeasure, 'at' | 'sill' | 'width' | 'height'>,
  { name, guard, from, to, posts }: GuardBeyond,
): () => void {
  const { sheet, at, wall } = frame;
  const high = guard?.guardHeight ?? usual;
  const isTold = guard?.guardHeight !== undefined;
  const look = { pen: 'fine', color: 'ink', layer: 'object', ...(!isTold && { dash: 'hidden' as const }) } as const;
  const along = (spot: number): number => left + Math.min(width, Math.max(0, spot));
  // The ceiling, or the head of the opening, may be lower.
  const upTo = (spot: number, up: number): number => Math.min(sill + Math.min(up, height), topAt(wall, spot));
  for (const up of [high, high - 3 * inch, 4 * inch])
    sheet.polyline([at(along(from), upTo(along(from), up)), at(along(to), upTo(along(to), up))], look);
  for (const post of posts)
    sheet.polyline([at(along(post), sill), at(along(post), upTo(along(post), high))], { ...look, quiet: true });
  const size = guard?.guardHeight === undefined ? '' : `, ${lengthText(guard.guardHeight)} high`;
  const words = `${name}: ${guard ? `${guard.guard}${size}` : 'guard as selected'}`;
  return () => {
    const [x, y] = at((along(from) + along(to)) / 2, sill + high / 2);
    sheet.tryWrite(
      [2.5, -8, 12, -20].map((shift): Spot => [x, y + shift]),
      words,
      { size: sizes.note, color: 'muted', ground: 'paper' },
    );
  };
}
