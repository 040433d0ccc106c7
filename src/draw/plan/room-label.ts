import { printQuantity } from '../../base/units/index.js';
import { floorArea, type RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { boxAround, isInside, spotsInside } from '../inside.js';
import { lengthText } from '../length-text.js';
import { drawNumber, numberRadius } from '../mark.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { textWidth } from '../text-width.js';

/** Number in its circle, name, floor area and ceiling height, in the free place nearest to the middle of the room. In a small room
 *  the number alone; its name is in the title anyway. */
export function drawRoomLabel(sheet: Sheet, measure: RoomMeasure, room: { number: string; name: string }): void {
  const outline = measure.plan.map((point) => sheet.spot(point));
  const radius = numberRadius(room.number);
  const facts = [printQuantity(floorArea(measure.floor), 'sq ft', 0), `ceiling ${heights(measure)}`];
  const forms = [
    { lines: [room.name, facts.join(' · ')] },
    { lines: [room.name, ...facts] },
    { lines: [room.name] },
    { lines: [] },
  ];
  const spots = spotsInside(outline, 24);
  for (const overLines of [false, true]) {
    for (const { lines } of forms) {
      const width = Math.max(
        2 * radius,
        ...lines.map((line, index) => textWidth(line, index === 0 ? sizes.name : sizes.note, index === 0 ? 600 : 400)),
      );
      const height = 2 * radius + (lines.length > 0 ? 12 : 0) + Math.max(0, lines.length - 1) * 9.5;
      const spot = spots.find((place) => {
        const box = boxAround(place, width + 6, height + 6);
        return box.every((corner) => isInside(corner, outline)) && sheet.isFree(box, 1, overLines);
      });
      if (spot === undefined) continue;
      writeLabel(sheet, spot, room.number, lines, height, radius);
      return;
    }
  }
}

function writeLabel(
  sheet: Sheet,
  [x, y]: Spot,
  number: string,
  lines: readonly string[],
  height: number,
  radius: number,
): void {
  const top = y - height / 2;
  drawNumber(sheet, [x, top + radius], number);
  let baseline = top + 2 * radius + 11;
  lines.forEach((line, index) => {
    const look =
      index === 0 ? { size: sizes.name, weight: 600 as const } : { size: sizes.note, color: 'muted' as const };
    sheet.write([x, baseline], line, { ...look, ground: 'paper' });
    baseline += 9.5;
  });
}

function heights({ lowest, highest }: RoomMeasure): string {
  const low = lengthText(lowest);
  const high = lengthText(highest);
  return low === high ? low : `${low} to ${high}`;
}
