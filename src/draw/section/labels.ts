import { bounds, direction, dot, type Patch } from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { flightOf, stairOf, timberOf } from '../../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure } from '../../core/model/index.js';
import type { Convex, Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import { spotsInside } from '../inside.js';
import { lengthText, levelText } from '../length-text.js';
import { drawMark } from '../mark.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { lineOf } from './body-cut.js';
import { rightOf, type Cut } from './cut.js';
import { isInAny, pointsInFoot, spotOn } from './on-sheet.js';
import type { SectionScene } from './scene.js';

/** Steps of a flight, undersides of timbers, heights of the floor's parts, marks of openings seen. */
export function labelBodies(sheet: Sheet, measure: RoomMeasure, scene: SectionScene): void {
  for (const { mark } of measure.openings) markOpening(sheet, scene, mark);
  const solid = scene.bodies.flatMap((body) => body.shown);
  for (const feature of measure.features) {
    const shown = shownOf(scene, feature);
    if (shown.length === 0) continue;
    const headroom = headroomLine(feature, scene);
    if (headroom) {
      drawDimensions(sheet, {
        origin: spotOn(sheet, headroom.foot),
        along: [0, -1],
        outward: [1, 0],
        stops: [0, headroom.height],
        texts: [`${lengthText(headroom.height)} headroom`],
      });
    }
    const words = wordsOf(feature);
    if (words === undefined) continue;
    const { west, east, south, north } = bounds(shown.flatMap(({ outline }) => outline));
    const under = [0, 0.15, -0.15, 0.3, -0.3].map((share): Spot => {
      const [x, y] = spotOn(sheet, { x: (west + east) / 2 + (east - west) * share, y: south });
      return [x, y + 9];
    });
    const box = [
      { x: west, y: south },
      { x: east, y: south },
      { x: east, y: north },
      { x: west, y: north },
    ].map((corner) => spotOn(sheet, corner));
    const inside = spotsInside(box, 12).map(([x, y]): Spot => [x, y + 2.5]);
    // On what it is about, where that is seen from its side; what lies behind it is painted over there.
    const isOn = timberOf(feature) && !isCut(scene, feature) && (north - south) * pointsInFoot(sheet) > 11;
    const isClear = (figure: Convex): boolean =>
      figure.every((spot) => !isInAny(solid, { x: spot[0] / pointsInFoot(sheet), y: -spot[1] / pointsInFoot(sheet) }));
    if (isOn && sheet.tryWrite(inside, words, { size: sizes.note, ground: 'tone' }, 1, isClear)) continue;
    const places = timberOf(feature) ? under : [...inside, ...under];
    sheet.tryWrite(places, words, { size: sizes.note, ground: 'paper' });
  }
  labelLevels(sheet, scene);
}

/** What a section shows of a feature, cut or beyond, in feet. */
export function shownOf({ bodies, seen }: SectionScene, { id }: FeatureMeasure): readonly Patch[] {
  return [
    ...bodies.filter(({ feature }) => feature.id === id).flatMap(({ shown }) => shown),
    ...seen
      .filter(({ facet }) => facet.side === undefined && facet.id.startsWith(`${id}/`))
      .flatMap(({ patches }) => patches),
  ];
}

function isCut({ bodies }: SectionScene, { id }: FeatureMeasure): boolean {
  return bodies.some(({ feature }) => feature.id === id);
}

function wordsOf(feature: FeatureMeasure): string | undefined {
  const stair = stairOf(feature);
  if (stair) return stepWords(stair);
  const timber = timberOf(feature);
  const underside = timber?.place?.run === 'upright' ? undefined : timber?.place?.underside;
  return underside === undefined ? undefined : `${feature.name}, underside ${levelText(underside)}`;
}

/** `15 R at 7 1/2", 14 T at 10"`, as stair builders write it. */
export function stepWords(stair: { readonly rise: Length; readonly risers: number; readonly going: Length }): string {
  const { riser, treads } = flightOf(stair);
  return `${stair.risers} R at ${lengthText(riser)}, ${treads} T at ${lengthText(stair.going)}`;
}

/** Where over a flight the least headroom is, if the section runs along the flight and the ceiling is as high there. */
export function headroomLine(
  feature: FeatureMeasure,
  { cut, shell }: SectionScene,
): { readonly foot: { readonly x: number; readonly y: number }; readonly height: Length } | undefined {
  const [stair, line, { headroom }] = [stairOf(feature), lineOf(feature), feature];
  if (!stair || !line || !headroom) return undefined;
  const side = sideOf(cut, line);
  if (Math.abs(side) < 0.5) return undefined;
  const along = feet(headroom.along);
  const x = rightOf(cut, line.foot) + side * along;
  const y = (feet(stair.rise) / stair.risers) * (1 + along / feet(stair.going));
  const top = y + feet(headroom.height);
  // The ceiling may be lower beside the cut: then nothing is there to measure to.
  const isAt = (height: number): boolean => [-1e-3, 1e-3].some((by) => isInAny(shell.open, { x: x + by, y: height }));
  return isAt(top - 0.05) && !isAt(top + 0.05) ? { foot: { x, y }, height: headroom.height } : undefined;
}

/** 1 where the flight goes up to the right along the cut, -1 to the left, 0 across or askew. */
function sideOf(cut: Cut, { foot, top }: NonNullable<ReturnType<typeof lineOf>>): number {
  const side = dot(direction(foot, top), cut.right);
  return Math.abs(side) > 1 - 1e-6 ? Math.sign(side) : 0;
}

/** A mark in the opening, as far as it is seen. */
function markOpening(sheet: Sheet, scene: SectionScene, mark: string): void {
  const shown = scene.seen
    .filter(({ facet }) => facet.id === `${mark}/glass` || facet.id === `${mark}/leaf` || facet.id === `${mark}/beyond`)
    .flatMap(({ patches }) => patches);
  if (shown.length === 0) return;
  const { west, east, south, north } = bounds(shown.flatMap(({ outline }) => outline));
  const last = scene.seen.findLastIndex(({ facet }) => facet.id.startsWith(`${mark}/`));
  const nearer = [
    ...scene.seen.slice(last + 1).flatMap(({ facet, patches }) => (facet.role === 'rail' ? [] : patches)),
    ...scene.bodies.flatMap((body) => body.shown),
  ];
  const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].flatMap((across) =>
    [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map((up) => ({
      x: west + (east - west) * across,
      y: south + (north - south) * up,
    })),
  );
  const clear = places.filter((place) => !isInAny(nearer, place));
  drawMark(
    sheet,
    clear.map((place) => spotOn(sheet, place)),
    mark,
    true,
  );
}

/** Heights of what is not level with the rest of the floor. */
function labelLevels(sheet: Sheet, { shell }: SectionScene): void {
  for (const { floor } of shell.spaces)
    floor.slice(1).forEach((end, i) => {
      const start = floor[i]!;
      if (end.along - start.along < 0.5 || start.height !== end.height || Math.abs(start.height) < 1e-6) return;
      const [x, y] = spotOn(sheet, { x: (start.along + end.along) / 2, y: start.height });
      const height = Math.round(start.height * 304_800_000);
      sheet.tryWrite([[x, y - 4]], levelText(height), { size: sizes.note, ground: 'paper' });
    });
}
