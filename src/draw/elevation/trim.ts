import { heightAlong, stretchLess, type Profile } from '../../base/geometry/index.js';
import { feet, fromFeet, fromInches, type Length } from '../../base/units/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import { wallFoot, type OpeningMeasure, type WallMeasure } from '../../core/model/index.js';
import type { ElevationFrame } from './frame.js';

/** Trim of a wall as its options' records tell it. */
export interface WallTrim {
  /** By the opening's mark; none where no trim is chosen, or its option has no width, as a return of board. */
  readonly casings: ReadonlyMap<string, Casing>;
  /** Height of the base. */
  readonly base?: Length;
}

export interface Casing {
  readonly width: Length;
  /** How its head meets its legs; absent: not recorded. */
  readonly joint?: SeenFinish['joint'];
  /** It is still to be chosen, and drawn as wide as it often is. */
  readonly isOpen?: true;
}

/** Width of a casing that nobody chose yet. As drawn. */
const usualCasing = fromInches(3.5);

export function trimOn(wall: WallMeasure, openings: readonly OpeningMeasure[], seen: readonly SeenFinish[]): WallTrim {
  const last = (role: 'trim' | 'base', place: string): SeenFinish | undefined =>
    seen.findLast((one) => one.role === role && one.places.includes(place));
  const base = last('base', wall.id)?.face;
  return {
    casings: new Map(
      openings.flatMap(({ kind, mark }) => {
        const casing = kind === 'open' ? undefined : casingOf(last('trim', mark));
        return casing ? [[mark, casing] as const] : [];
      }),
    ),
    ...(base !== undefined && { base }),
  };
}

function casingOf(trim: SeenFinish | undefined): Casing | undefined {
  if (!trim) return undefined;
  if (trim.option === undefined) return { width: usualCasing, isOpen: true };
  return trim.face === undefined ? undefined : { width: trim.face, ...(trim.joint && { joint: trim.joint }) };
}

/** The top of the base along the wall's foot, with its ends, between casings and what stands before the wall down to the floor. */
export function drawBase(
  { sheet, wall, measure, at }: ElevationFrame,
  openings: readonly OpeningMeasure[],
  { base, casings }: WallTrim,
): void {
  if (base === undefined) return;
  const foot: Profile = wallFoot(wall).map(({ along, height }) => ({ along: feet(along), height: feet(height) }));
  // Does what stands from there up to there, as high above the floor, stand in the base's way?
  const isLow = (low: number, { from, to }: { readonly from: number; readonly to: number }): boolean =>
    low < heightAlong(foot, (from + to) / 2) + feet(base) - 1e-6;
  const gaps = [
    ...openings.flatMap(({ mark, at: left, width, sill }) => {
      const beside = feet(casings.get(mark)?.width ?? (0 as Length));
      const gap = { from: feet(left) - beside, to: feet(left) + feet(width) + beside };
      return isLow(feet(sill), gap) ? [gap] : [];
    }),
    ...measure.features.flatMap(({ covers }) =>
      covers.flatMap((cover) => {
        const gap = { from: feet(cover.from), to: feet(cover.to) };
        return cover.wall === wall.id && isLow(feet(cover.sill ?? (0 as Length)), gap) ? [gap] : [];
      }),
    ),
  ];
  const spot = (along: number, up: number) => at(fromFeet(along), fromFeet(heightAlong(foot, along) + up));
  for (const { from, to } of stretchLess({ from: 0, to: feet(wall.run) }, gaps)) {
    const bends = foot.map(({ along }) => along).filter((along) => along > from + 1e-6 && along < to - 1e-6);
    const top = [from, ...bends, to].map((along) => spot(along, feet(base)));
    sheet.polyline([spot(from, 0), ...top, spot(to, 0)], { pen: 'hair', color: 'ink', layer: 'fine', quiet: true });
  }
}
