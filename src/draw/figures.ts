import type { FeatureMeasure, Region } from '../core/model/index.js';

/** A length from a feature's own record by its path, such as `['hearth', 'height']`; undefined when it holds none. */
export function figureAt(feature: FeatureMeasure, path: readonly string[]): number | undefined {
  let value: unknown = feature.data;
  for (const key of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Readonly<Record<string, unknown>>)[key];
  }
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

/** Extent of a face of the feature, by the end of its id, in nanometres. */
export function faceExtent(feature: FeatureMeasure, face: string): Extent | undefined {
  const surface = feature.faces.find((candidate) => candidate.id.endsWith(`/${face}`));
  return surface === undefined ? undefined : extentOf(surface.regions);
}

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function extentOf(regions: readonly Region[]): Extent | undefined {
  const points = regions.flatMap((region) => region.outline);
  if (points.length === 0) return undefined;
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** The firebox of a breast's front face, from the hole in it (or the notch, when it stands on the floor). */
export function fireboxOf(feature: FeatureMeasure): Extent | undefined {
  const front = feature.faces.find((face) => face.id.endsWith('/front'));
  const width = figureAt(feature, ['firebox', 'width']);
  const height = figureAt(feature, ['firebox', 'height']);
  const whole = front === undefined ? undefined : extentOf(front.regions);
  if (whole !== undefined && width !== undefined && height !== undefined) {
    const sill = figureAt(feature, ['firebox', 'sill']) ?? 0;
    const middle = (whole.left + whole.right) / 2;
    return { left: middle - width / 2, right: middle + width / 2, bottom: sill, top: sill + height };
  }
  const hole = front?.regions.flatMap((region) => region.holes)[0];
  return hole === undefined ? undefined : extentOf([{ outline: hole, holes: [] }]);
}
