import type { Area } from '../../../base/units/index.js';
import { wholePieces, withWaste } from './whole.js';

/** Whole sheets for an area. Source: Estimating in Building Construction, example 16-3. */
export function sheetsFor(area: Area, sheet: Area): number {
  return wholePieces(area / sheet);
}

/** Sheets to order for several parts of a building: each part in whole sheets, then waste on their sum, then whole sheets
 *  again. Source: Estimating in Building Construction, example 16-3. */
export function sheetOrder(parts: readonly Area[], sheet: Area, waste: number): number {
  const whole = parts.reduce((sum, area) => sum + sheetsFor(area, sheet), 0);
  return wholePieces(withWaste(whole, waste));
}
