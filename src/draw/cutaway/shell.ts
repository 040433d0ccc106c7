import {
  clipAll,
  distance,
  opposed,
  patchFrom,
  pointInFeet,
  ringInFeet,
  slopedPlane,
  spaceDot,
  uprightPlane,
  type Patch,
  type Xyz,
  patchInFeet,
} from '../../base/geometry/index.js';
import { feet, type Length } from '../../base/units/index.js';
import { facetPlane } from '../../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure, UprightFace } from '../../core/model/index.js';
import {
  awayFacet,
  awayLines,
  ceilingCuts,
  endCuts,
  holeEdges,
  nearCut,
  tag,
  topCuts,
  type CeilingPart,
} from './cuts.js';
import type { Facet } from './facet.js';
import { sidePlane, type Side } from './outline.js';
import type { Axonometry, View } from './view.js';

/** Below this a face is seen so flat that nothing of it is. */
const grazing = 0.02;

/** What is left of a room when its near walls are taken away. */
export interface Shell {
  readonly facets: readonly Facet[];
  /** Sides whose walls stand in the picture. */
  readonly standing: readonly Side[];
  /** Edges of what was taken away. */
  readonly away: readonly (readonly Xyz[])[];
}

export function shellOf(measure: RoomMeasure, sides: readonly Side[], view: View, camera: Axonometry): Shell {
  const isSeen = (side: Side): boolean => !side.isOpen && spaceDot(sidePlane(side).faces, camera.toward) > grazing;
  const standing = sides.filter(isSeen);
  const ceiling = ceilingFacets(measure).filter(
    ({ plane }) => view.ceiling === 'seen' && spaceDot(plane.faces, camera.toward) > grazing,
  );
  return {
    standing,
    facets: [
      ...floorFacets(measure),
      ...holeEdges(measure),
      ...sides.flatMap((side, i) => (isSeen(side) ? [] : nearCut(side, measure, i))),
      // What leans ends in the ceiling, and is cut with it.
      ...standing
        .filter(({ wall }) => !wall.lean)
        .flatMap((side) => [...topCuts(side), ...endCuts(side, sides, isSeen)]),
      ...standing.map((side) => wallFacet(side)),
      ...(measure.risers ?? []).flatMap(uprights),
      ...(view.ceiling === 'seen' ? (measure.steps ?? []).flatMap(uprights) : []),
      ...ceiling,
      ...ceilingCuts(ceiling, standing),
    ],
    away: [
      ...sides.filter((side) => !isSeen(side)).flatMap((side) => awayLines(side, sides, isSeen)),
      ...ceilingFacets(measure)
        .filter(({ id }) => !ceiling.some((facet) => facet.id === id))
        .flatMap(awayFacet),
    ],
  };
}

export function wallFacet(side: Side): Facet {
  const { wall, from, to } = side;
  const whole = wall.regions.map(patchInFeet);
  const patches = wall.arc ? between(whole, from, to) : whole;
  const id = wall.arc ? `${wall.id}/${tag(from)}` : wall.id;
  return {
    id,
    role: 'finish',
    places: [wall.id],
    plane: sidePlane(side),
    patches,
    side,
    ...(wall.arc && { isSmooth: true }),
  };
}

/** What of patches lies between two places of x. */
function between(patches: readonly Patch[], from: number, to: number): readonly Patch[] {
  return clipAll(clipAll(patches, { a: 1, b: 0, c: -from }), { a: -1, b: 0, c: to });
}

function floorFacets({ floor }: RoomMeasure): readonly Facet[] {
  const { levels } = floor;
  // Under what stands on it the floor goes on.
  const under = floor.deductions.flatMap(({ hidden }) => hidden?.pieces.map(({ region }) => region) ?? []);
  if (!levels) {
    const plane = slopedPlane({ a: 0, b: 0, c: 0 });
    return [
      { id: 'floor', role: 'finish', places: ['floor'], plane, patches: [...floor.regions, ...under].map(patchInFeet) },
    ];
  }
  return levels.map((level, part) => ({
    id: `floor/${part}`,
    role: 'finish',
    places: ['floor'],
    part,
    plane: slopedPlane(facetPlane(level)),
    patches: [patchInFeet(level.shape)],
  }));
}

export function ceilingFacets({ ceiling }: RoomMeasure): readonly CeilingPart[] {
  return ceiling.facets.map((facet, part) => {
    const plane = slopedPlane(facetPlane(facet));
    return {
      id: `ceiling/${part}`,
      role: 'finish',
      places: ['ceiling'],
      part,
      plane: { ...plane, faces: opposed(plane.faces) },
      patches: [patchInFeet(facet.shape)],
      facet,
    };
  });
}

export function uprights({ id, regions, lines }: UprightFace): readonly Facet[] {
  let start = 0;
  return lines.map(({ from, to }, i) => {
    const [a, b] = [pointInFeet(from), pointInFeet(to)];
    const run = distance(a, b);
    const plane = uprightPlane(a, b);
    const shift = start;
    start += run;
    const patches = between(regions.map(patchInFeet), shift, shift + run).map(({ outline, holes }) => ({
      outline: outline.map(({ x, y }) => ({ x: x - shift, y })),
      holes: holes.map((hole) => hole.map(({ x, y }) => ({ x: x - shift, y }))),
    }));
    return { id: `${id}/${i}`, role: 'finish' as const, places: [id], plane, patches };
  });
}

/** Where something stood that was taken away. */
export function trace({ id, footprint, floor }: FeatureMeasure): readonly Facet[] {
  if (!footprint) return [];
  const plane = slopedPlane({ a: 0, b: 0, c: feet(floor ?? (0 as Length)) });
  return [{ id: `${id}/trace`, role: 'trace', places: [], plane, patches: [patchFrom(ringInFeet(footprint))] }];
}
