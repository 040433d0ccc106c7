import { isMetric, printLength, printQuantity, type Length } from '../base/units/index.js';

/** A distance on a drawing, in nanometres, as written beside it: `14'-6 1/2"`. */
export function lengthText(distance: number): string {
  return printLength(distance as Length);
}

/** A height above the rest of the floor: `+7"`, `−1'-2"`. */
export function levelText(height: number): string {
  return `${height > 0 ? '+' : ''}${lengthText(height)}`;
}

/** An area for the ear, whole: `388 square feet`, `36 m²`. */
export function areaWords(area: number): string {
  return isMetric() ? printQuantity(area, 'sq ft', 0) : `${Math.round(area)} square feet`;
}
