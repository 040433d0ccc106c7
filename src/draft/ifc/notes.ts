import { counted, printAmount } from '../../base/units/index.js';
import type { Model } from './model.js';
import { attempt } from './refused.js';
import type { Turn } from './room/turn.js';

/** How the plan was turned, and what `north` in house.md says where the model has true north. */
export function northLines(model: Model, turn: Turn): readonly string[] {
  const context = model.all('IFCGEOMETRICREPRESENTATIONCONTEXT').find(({ args }) => args[5] !== undefined);
  const way = context && attempt(() => model.direction(context.args[5]));
  const isKnown = way !== undefined && 'value' in way;
  const trueNorth = isKnown ? (Math.atan2(way.value.y, way.value.x) * 180) / Math.PI : 90;
  const north = (((90 + turn - trueNorth) % 360) + 360) % 360;
  const turned = printAmount(Math.abs(turn), 4);
  const ways = turn > 0 ? 'clockwise' : 'counter-clockwise';
  return [
    ...(turn === 0 ? [] : [`plans are turned ${turned}° ${ways}, so that most walls run along the compass`]),
    ...(isKnown ? [`the model has true north: north: ${Number(north.toFixed(4))} in content/house.md`] : []),
  ];
}

export function railingLines(model: Model): readonly string[] {
  const count = model.all('IFCRAILING').length;
  if (count === 0) return [];
  return [
    `${counted(count, 'railing')} of the model ${count === 1 ? 'is' : 'are'} not drafted: record them as rails of stairs and drop edges`,
  ];
}
