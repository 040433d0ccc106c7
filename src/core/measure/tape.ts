import { perimeter, type Patch } from '../../base/geometry/index.js';

/** What a tape cannot tell around a shape: 1/16" along its outline, in square feet. Gaps and overlaps below it are let pass. */
export function slackAround({ outline }: Patch): number {
  return perimeter(outline) / 16 / 12;
}

/** Square feet to two places, for a message: `12.5 sq ft`. */
export function printArea(area: number): string {
  return `${Math.round(area * 100) / 100} sq ft`;
}
