import { feet, type Area, type Length } from '../../../base/units/index.js';
import { withWaste } from './whole.js';

/** Feet of board that cover a square foot: 12 / face in inches. Not for diagonal work. Source: WWPA coverage estimator. */
export function linealFactor(face: Length): number {
  return 1 / feet(face);
}

/** Board feet that cover a square foot: nominal width / face, times the nominal thickness, all in inches; stock under 1"
 *  counts as 1". Not for diagonal work. Source: WWPA coverage estimator; PS 20 for the count of thin stock. */
export function boardFootFactor(nominal: { readonly width: number; readonly thickness: number }, face: Length): number {
  return (nominal.width * Math.max(1, nominal.thickness)) / (feet(face) * 12);
}

/** Feet of board for a surface: openings come off, trim and waste are added, then the factor is applied, in this order.
 *  Source: WWPA coverage estimator, which adds 10 %. */
export function boardLength(surface: {
  readonly gross: Area;
  readonly openings: Area;
  readonly trimAndWaste: number;
  readonly face: Length;
}): number {
  const net = Math.max(0, surface.gross - surface.openings);
  return withWaste(net, surface.trimAndWaste) * linealFactor(surface.face);
}
