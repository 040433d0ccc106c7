import { factOf, type Telling } from '../../fact/index.js';
import { feet, fromFeet, type Length } from '../../../base/units/index.js';
import { balustersIn, cablesUnder } from '../arithmetic/index.js';
import type { Infill, RailPiece } from './rail.js';

/** What fills the bays of a piece, by the facts that the option records: balusters, cables or panels. Balusters and panels stand plumb,
 *  so that a bay on a slope is as wide as it is on the level; cables run along it. */
export function fillBays(
  { length, bays, spacing }: Pick<RailPiece, 'length' | 'bays' | 'spacing'>,
  slope: number,
  option: Telling,
): Infill | undefined {
  const post = factOf(option, 'railing', 'post-width') ?? (0 as Length);
  const level = feet(spacing) / Math.hypot(1, slope);
  const bay = fromFeet(Math.max(0, level - feet(post)));
  const baluster = factOf(option, 'railing', 'baluster-width');
  const opening = factOf(option, 'railing', 'clear-opening');
  if (baluster !== undefined && opening !== undefined) {
    const { balusters, gap } = balustersIn(bay, baluster, opening);
    return { fill: 'balusters', count: balusters * bays, bay, gap };
  }
  const apart = factOf(option, 'railing', 'cable-spacing');
  const height = factOf(option, 'railing', 'height');
  if (apart !== undefined && height !== undefined) return { fill: 'cables', count: cablesUnder(height, apart), length };
  const gap = factOf(option, 'railing', 'panel-gap');
  if (gap === undefined) return undefined;
  return { fill: 'panels', count: bays, bay, width: fromFeet(Math.max(0, feet(bay) - 2 * feet(gap))) };
}
