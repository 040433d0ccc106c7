import type { WallMeasure } from '../core/model/index.js';
import { isMetric, printLength, printQuantity, type Length } from '../base/units/index.js';

/** A distance on a drawing, in nanometres, as written beside it: `14'-6 1/2"`. */
export function lengthText(distance: number): string {
  return printLength(distance as Length);
}

/** A height above the rest of the floor: `+7"`, `−1'-2"`. */
export function levelText(height: number): string {
  return `${height > 0 ? '+' : ''}${lengthText(height)}`;
}

/** What is not straight and plumb of a wall, after its length: ` on an arc of 10'-0" radius`, ` leaning in by 2'-0" at 8'-0"`. */
export function wallWords({ arc, lean }: Pick<WallMeasure, 'arc' | 'lean'>): string {
  if (arc) return ` on an arc of ${lengthText(arc.radius)} radius`;
  return lean ? ` leaning in by ${lengthText(lean.by)} at ${lengthText(lean.at)}` : '';
}

/** What to know of an elevation whose wall is not straight and plumb. */
export function wallNotes({ arc, lean }: Pick<WallMeasure, 'arc' | 'lean'>): readonly string[] {
  if (arc) return [`Unfolded: the wall is an arc of ${lengthText(arc.radius)} radius, bowing ${arc.bows}`];
  if (!lean) return [];
  const by = `by ${lengthText(lean.by)} at ${lengthText(lean.at)}`;
  return [`Drawn in its own plane: the wall leans into the room ${by}; heights go along it`];
}

/** An area for the ear, whole: `388 square feet`, `36 m²`. */
export function areaWords(area: number): string {
  return isMetric() ? printQuantity(area, 'sq ft', 0) : `${Math.round(area)} square feet`;
}
