import { bounds } from '../../base/geometry/index.js';
import { fromFeet } from '../../base/units/index.js';
import { breastOf, stairOf, timberOf } from '../../core/feature/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import { drawDimensions } from '../dimension.js';
import { lengthText } from '../length-text.js';
import type { Sheet } from '../sheet.js';
import { shownOf } from './labels.js';
import { spotOn } from './on-sheet.js';
import type { SectionScene } from './scene.js';
import type { Space } from './shell-cut.js';

/** Nearer than this is one stop: a sixteenth of an inch. */
const close = 1_600_000;

/** Between inner faces, under what is cut. */
export function drawWidths(sheet: Sheet, { shell }: SectionScene): void {
  const stops = unique(shell.spaces.flatMap(({ from, to }) => [fromFeet(from), fromFeet(to)]));
  if (stops.length < 2) return;
  const foot = Math.min(...shell.spaces.flatMap(({ floor }) => floor.map(({ height }) => height)));
  const under = spotOn(sheet, { x: 0, y: foot })[1];
  let below = sheet.bounds.bottom + 20;
  const string = (list: readonly number[]): number =>
    drawDimensions(sheet, {
      origin: [0, below],
      along: [1, 0],
      outward: [0, 1],
      stops: list,
      targets: list.map((stop) => [stop * sheet.perNanometre, under]),
    });
  below += string(stops) + 13;
  if (stops.length > 2) string([stops[0]!, stops.at(-1)!]);
}

/** To the left what one measures up the wall there and the heights within the room, to the right the other wall, the highest place and a flight's rise. */
export function drawHeights(sheet: Sheet, measure: RoomMeasure, scene: SectionScene): void {
  const { spaces } = scene.shell;
  const [first, last] = [spaces[0], spaces.at(-1)];
  if (!first || !last) return;
  const [start, end] = [endOf(first, 'left', scene), endOf(last, 'right', scene)];
  const peak = Math.max(...spaces.flatMap(({ ceiling }) => ceiling.map(({ height }) => fromFeet(height))));
  const reach = sheet.bounds;
  let left = reach.left - 13;
  const inside = heightsWithin(measure, scene).filter((height) => height > start.foot && height < start.top - close);
  const details = unique([start.foot, ...start.opening, start.top]);
  const heights = unique([start.foot, ...inside, start.top]);
  const string = (x: number, out: -1 | 1, stops: readonly number[], edge: number, texts?: readonly string[]): number =>
    drawDimensions(sheet, {
      origin: [x, 0],
      along: [0, -1],
      outward: [out, 0],
      stops,
      targets: stops.map((stop) => [edge, -stop * sheet.perNanometre]),
      ...(texts && { texts }),
    });
  for (const stops of [details, heights])
    if (stops.length > 2) left -= string(left, -1, stops, spotOn(sheet, { x: first.from, y: 0 })[0]) + 7;
  if (start.top - start.foot > close)
    string(left, -1, [start.foot, start.top], spotOn(sheet, { x: first.from, y: 0 })[0]);

  let right = reach.right + 19;
  const edge = spotOn(sheet, { x: last.to, y: 0 })[0];
  const others = unique([end.foot, ...end.opening, end.top]);
  if (others.length > 2) right += string(right, 1, others, edge) + 15;
  const differs = Math.abs(end.top - start.top) > close || Math.abs(end.foot - start.foot) > close;
  if ((differs || others.length > 2) && end.top - end.foot > close)
    right += string(right, 1, [end.foot, end.top], edge) + 15;
  if (peak - Math.max(start.top, end.top) > close) right += string(right, 1, [0, peak], edge) + 15;
  for (const feature of measure.features) {
    const stair = stairOf(feature);
    if (!stair || shownOf(scene, feature).length === 0) continue;
    right += string(right, 1, [0, stair.rise], edge, [`${lengthText(stair.rise)} floor to floor`]) + 15;
  }
}

interface End {
  readonly foot: number;
  readonly top: number;
  /** Sill and head of what is cut there. */
  readonly opening: readonly number[];
}

function endOf(space: Space, which: 'left' | 'right', { shell }: SectionScene): End {
  const [foot, top] =
    which === 'left' ? [space.floor[0], space.ceiling[0]] : [space.floor.at(-1), space.ceiling.at(-1)];
  const x = which === 'left' ? space.from : space.to;
  const gaps = shell.gaps.filter(({ inner }) => Math.abs(inner - x) < 1e-6);
  return {
    foot: fromFeet(foot?.height ?? 0),
    top: fromFeet(top?.height ?? 0),
    opening: gaps.flatMap(({ sill, head }) => [fromFeet(sill), fromFeet(head)]),
  };
}

/** Of hearths, of what stands on the floor, and of the undersides of timbers and of what hangs, where the section shows them. */
function heightsWithin(measure: RoomMeasure, scene: SectionScene): readonly number[] {
  return measure.features.flatMap((feature): readonly number[] => {
    const shown = shownOf(scene, feature);
    if (shown.length === 0) return [];
    const timber = timberOf(feature);
    if (timber) return timber.place?.run !== 'upright' ? [timber.place?.underside ?? 0] : [];
    const hearth = breastOf(feature)?.hearth;
    if (hearth) return [(feature.floor ?? 0) + hearth.height];
    if (stairOf(feature)) return [];
    const { south, north } = bounds(shown.flatMap(({ outline }) => outline));
    if (feature.footprint) return [fromFeet(north)];
    return feature.overhead ? [fromFeet(south)] : [];
  });
}

function unique(stops: readonly number[]): number[] {
  return [...stops].sort((a, b) => a - b).filter((stop, index, all) => index === 0 || stop - all[index - 1]! > close);
}
