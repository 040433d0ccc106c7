import type { Decimal } from '../units/index.js';

/** A share printed as a percentage with no more places than it has: `10 %`, `7.5 %`. */
export function printDecimalPercent({ amount, scale }: Decimal): string {
  return `${Number(((amount * 100) / 10 ** scale).toFixed(6))} %`;
}
