import { feet, type Length } from '../../../base/units/index.js';
import { wholePieces, withWaste } from './whole.js';

/** What is used up with a quantity, at so much for so much: 380 lin ft of tape for 1,000 sq ft of board. */
export function usedWith(quantity: number, usage: { readonly amount: number; readonly per: number }): number {
  return (quantity / usage.per) * usage.amount;
}

/** Whole packs, such as rolls of 50 lin ft, after waste. Source: Estimating in Building Construction, example 16-3. */
export function packsFor(quantity: number, waste: number, holds: number): number {
  return wholePieces(withWaste(quantity, waste) / holds);
}

/** Cubic feet of joint in a square foot of pieces set with a joint on all sides, as deep as they are thick. Hexagons by the
 *  width across their flats have the same share of joint as squares. Source: geometry. */
export function jointVolume(
  { length, width, thickness }: { readonly length: Length; readonly width: Length; readonly thickness: Length },
  joint: Length,
): number {
  const [long, wide, gap] = [feet(length), feet(width), feet(joint)];
  return feet(thickness) * (1 - (long * wide) / ((long + gap) * (wide + gap)));
}
