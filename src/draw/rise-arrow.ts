import { printPitch } from '../base/units/index.js';
import { PathBuilder, path } from '../base/svg/index.js';
import type { CeilingFacet } from '../core/model/index.js';
import type { Spot } from './convex.js';
import { isInside } from './inside.js';
import { pens, sizes } from './pen.js';
import type { Sheet } from './sheet.js';

/** An arrow up a slope with its pitch, where it first finds room in the outline; false where it finds none. */
export function drawRise(
  sheet: Sheet,
  facet: Pick<CeilingFacet, 'slope' | 'riseDirection'>,
  outline: readonly Spot[],
  spots: readonly Spot[],
): boolean {
  const turn = (facet.riseDirection * Math.PI) / 180;
  const up: Spot = [Math.cos(turn), -Math.sin(turn)];
  for (const overLines of [false, true]) {
    for (const half of [16, 10]) {
      const place = spots.find((spot) => {
        const box = arrowBox(spot, up, half);
        return box.every((corner) => isInside(corner, outline)) && sheet.isFree(box, 2, overLines);
      });
      if (place === undefined) continue;
      drawArrow(sheet, place, up, half, printPitch(facet.slope));
      sheet.reserve(arrowBox(place, up, half));
      return true;
    }
  }
  return false;
}

/** Ground of the arrow and of the pitch beside it. */
function arrowBox([x, y]: Spot, up: Spot, half: number): Spot[] {
  const isUpright = Math.abs(up[1]) > 0.5;
  const [wide, high] = isUpright ? [16, half + 2] : [half + 4, 12];
  return [
    [x - wide, y - high],
    [x + wide + (isUpright ? 8 : 0), y - high],
    [x + wide + (isUpright ? 8 : 0), y + high],
    [x - wide, y + high],
  ];
}

function drawArrow(sheet: Sheet, [x, y]: Spot, up: Spot, half: number, words: string): void {
  const tail: Spot = [x - up[0] * half, y - up[1] * half];
  const tip: Spot = [x + up[0] * half, y + up[1] * half];
  const barb = (side: number): Spot => [
    tip[0] - up[0] * 6 - up[1] * 2.4 * side,
    tip[1] - up[1] * 6 + up[0] * 2.4 * side,
  ];
  sheet.polyline([tail, tip], { pen: 'fine', color: 'accent', layer: 'label' });
  const head = new PathBuilder().polygon([tip, barb(1), barb(-1)]).data;
  sheet.place('label', path(head, { fill: 'accent', stroke: 'accent', 'stroke-width': pens.hair }), [
    [tip, barb(1), barb(-1)],
  ]);
  const isUpright = Math.abs(up[1]) > 0.5;
  const look = { size: sizes.dimension, weight: 600, color: 'accent', ground: 'paper' } as const;
  if (isUpright) sheet.write([x + 4 + Math.abs(up[0]) * 4, y + 2.6], words, { ...look, anchor: 'start' });
  else sheet.write([x, y - 4 - Math.abs(up[1]) * 6], words, look);
}
