/** A quantity rounded up to whole pieces; what is over by less than a billionth is rounding of floats, not a piece. */
export function wholePieces(quantity: number): number {
  return Math.max(0, Math.ceil(quantity - 1e-9));
}

/** A quantity with an allowance for waste, a share: 0.1 for 10 %. */
export function withWaste(quantity: number, share: number): number {
  return quantity * (1 + share);
}
