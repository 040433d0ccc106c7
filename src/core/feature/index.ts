/** Kinds of features: things in a room that finishes attach to and that have measures of their own. */
import { builtIn } from './built-in/index.js';
import { chimneyBreast } from './chimney-breast/index.js';
import { dropEdge } from './drop-edge/index.js';
import { halfWall } from './half-wall/index.js';
import type { FeatureMeasure } from '../model/index.js';
import type { FeatureKind, PlaceGroup } from './kind.js';
import { boxOf, type FaceMark, type PlanMark, type Spot } from './mark.js';
import { niche } from './niche/index.js';
import type { SolidFace, SolidSpace } from './solid.js';
import { skylight } from './skylight/index.js';
import { soffit } from './soffit/index.js';
import { stair } from './stair/index.js';
import { timber } from './timber/index.js';
import { wetPlace } from './wet-place/index.js';

export * from './data.js';
export * from './kind.js';
export type * from './mark.js';
export * from './surface.js';
export { facetPlane } from './ceiling-plane.js';
export { box, levelFace, sidesOf, solidSpace, standing, type SolidFace, type SolidSpace } from './solid.js';
export type { ChimneyBreast } from './chimney-breast/read.js';
export { flightOf } from './stair/measure.js';
export { flightProfile } from './stair/solids.js';
export { edgeStretch, type DropEdge } from './drop-edge/read.js';
export type { Skylight } from './skylight/read.js';
export type { Stair } from './stair/read.js';
export { timberPieces, type TimberPiece } from './timber/pieces.js';
export { timbersOutside, type TimberOutside } from './timber/outside.js';
export { pieceLength, type Timber, type TimberPlace } from './timber/read.js';
export { lengthWords, poundsByDensity, sectionWords } from './timber/words.js';

/** Every kind, in the order in which people meet them in the book. A new kind is one folder and one line here. */
export const featureKinds: readonly FeatureKind<unknown>[] = [
  chimneyBreast,
  dropEdge,
  stair,
  timber,
  niche,
  halfWall,
  builtIn,
  wetPlace,
  skylight,
  soffit,
];

/** What a plan shows of a feature. */
export function planMarks(feature: FeatureMeasure): readonly PlanMark[] {
  const kind = drawnKind(feature);
  if (kind?.plan) return kind.plan(feature.data, feature);
  return feature.footprint ? [{ role: 'body', outline: feature.footprint }] : [];
}

/** What an elevation of a wall shows of a feature: of what covers a part of it, or is an open side along it. */
export function faceMarks(feature: FeatureMeasure, wall: string): readonly FaceMark[] {
  const kind = drawnKind(feature);
  const cover = feature.covers.find((candidate) => candidate.wall === wall);
  const isOn = cover !== undefined || (feature.data as { readonly wall?: unknown } | undefined)?.wall === wall;
  if (isOn && kind?.face) return kind.face(feature.data, feature).map((mark) => onFloor(mark, feature.floor ?? 0));
  return cover ? [{ role: 'body', outlines: [boxOf(cover.from, cover.sill ?? 0, cover.to, cover.height)] }] : [];
}

export function worthSeeing(feature: FeatureMeasure): number {
  return drawnKind(feature)?.worthSeeing ?? 0;
}

/** A kind that was not read, as of an older record, is looked for among what is built in. */
export function featureGroup({ kind }: Pick<FeatureMeasure, 'kind'>): PlaceGroup {
  return featureKinds.find((candidate) => candidate.kind === kind)?.group ?? 'built-ins';
}

/** What is seen of a feature in space. */
export function solidsOf(feature: FeatureMeasure, space: SolidSpace): readonly SolidFace[] {
  return drawnKind(feature)?.solids?.(feature.data, feature, space) ?? [];
}

/** A kind draws from the floor that it stands on. */
function onFloor(mark: FaceMark, floor: number): FaceMark {
  const raised = (outline: readonly Spot[]): readonly Spot[] => outline.map(({ x, y }) => ({ x, y: y + floor }));
  if (mark.role === 'guard' || floor === 0) return mark;
  return 'outlines' in mark
    ? { ...mark, outlines: mark.outlines.map(raised) }
    : { ...mark, outline: raised(mark.outline) };
}

/** A kind draws from its record's own figures. */
function drawnKind({ kind, data }: FeatureMeasure): FeatureKind<unknown> | undefined {
  return data === undefined ? undefined : featureKinds.find((candidate) => candidate.kind === kind);
}
