import type { Region } from '../../core/model/index.js';
import type { Convex, Spot } from '../convex.js';
import { isInside, spotsInside } from '../inside.js';
import { sizes } from '../pen.js';
import type { ElevationFrame } from './frame.js';

/** Part of a wall that takes one finish: along it from the left and up, as `Surface.regions`. */
export interface FinishRegion {
  readonly label: string;
  readonly region: Region;
}

/** Tints the parts in turn and dashes their boundaries. Returns what writes their names once all lines stand, and says which
 *  found no place. */
export function drawFinishes({ sheet, at }: ElevationFrame, finishes: readonly FinishRegion[]): () => string[] {
  const labels = [...new Set(finishes.map(({ label }) => label))];
  const ground = (label: string): 'tone' | 'paper' => (labels.indexOf(label) % 2 === 0 ? 'tone' : 'paper');
  const rings = ({ outline, holes }: Region): Spot[][] =>
    [outline, ...holes].map((ring) => ring.map((point) => at(point.x, point.y)));
  for (const { label, region } of finishes) {
    sheet.region(rings(region), { pen: 'fine', dash: 'fine', fill: ground(label), layer: 'fill', quiet: true });
  }
  const write = (label: string, region: Region): boolean => {
    const [outline = [], ...holes] = rings(region);
    const look = { size: sizes.note, ground: ground(label) } as const;
    const spots = spotsInside(outline, 18);
    // Words stand on the finish, and not on a window in it.
    const isOnFinish = (box: Convex, spot: Spot): boolean => {
      const marks = [...box, between(box[0], box[1]), between(box[2], box[3]), spot];
      return marks.every((mark) => isInside(mark, outline) && !holes.some((hole) => isInside(mark, hole)));
    };
    return [0, -90].some((turn) => sheet.tryWrite(spots, label, { ...look, turn }, 2, isOnFinish));
  };
  // A finish that openings part is named once, where there is most room.
  return () =>
    labels.filter((label) => {
      const parts = finishes.filter((finish) => finish.label === label).sort((a, b) => extent(b) - extent(a));
      return !parts.some(({ region }) => write(label, region));
    });
}

function between(a: Spot | undefined, b: Spot | undefined): Spot {
  return [((a?.[0] ?? 0) + (b?.[0] ?? 0)) / 2, ((a?.[1] ?? 0) + (b?.[1] ?? 0)) / 2];
}

/** Width × height of the outline's bounding box. */
function extent({ region }: FinishRegion): number {
  const xs = region.outline.map(({ x }) => x);
  const ys = region.outline.map(({ y }) => y);
  return (Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys));
}
