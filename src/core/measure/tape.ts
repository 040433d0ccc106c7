import { lengthOf, type findCrossing, type Ring } from '../../base/geometry/index.js';
import { printLength, printQuantity } from '../../base/units/index.js';

/** Square feet to two places, for a message: `12.5 sq ft`. */
export function printArea(area: number): string {
  return printQuantity(area, 'sq ft', 2);
}

/** Where an outline crosses itself, from the south-west of `corner`: `corners 1 to 2 and 3 to 4 meet x 5'-0", y 5'-0" …`. */
export function crossingWords(
  ring: Ring,
  { first, second, at }: NonNullable<ReturnType<typeof findCrossing>>,
  { west, south }: { readonly west: number; readonly south: number },
): string {
  const side = (index: number): string => `${index + 1} to ${((index + 1) % ring.length) + 1}`;
  const place = `x ${printLength(lengthOf(at.x - west))}, y ${printLength(lengthOf(at.y - south))}`;
  return `corners ${side(first)} and ${side(second)} meet ${place} from its south-west`;
}
