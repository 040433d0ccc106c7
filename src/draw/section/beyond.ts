import {
  areaOf,
  common,
  faceBetween,
  faceBeyond,
  patchFrom,
  placeOn,
  spaceDot,
  unite,
  xyz,
  type Patch,
} from '../../base/geometry/index.js';
import { solidSpace } from '../../core/feature/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import { solidFacets, type Facet } from '../cutaway/facet.js';
import { openingFacets } from '../cutaway/opening.js';
import { backToFront, layFacet } from '../cutaway/order.js';
import { footOver, sidePlane, topOver, type Side } from '../cutaway/outline.js';
import { railFacets } from '../cutaway/railing.js';
import { ceilingFacets, uprights, wallFacet } from '../cutaway/shell.js';
import { rightOf, type Cut } from './cut.js';

/** Something that is seen beyond a plane, as it lies on the sheet, in the plane's axes. */
export interface Seen {
  readonly facet: Facet;
  /** Is it of the room's shell, or does it stand in the room? */
  readonly isShell: boolean;
  readonly patches: readonly Patch[];
}

/** Below this a face is seen so flat that nothing of it is. */
const grazing = 0.01;

/** All faces of a room, whoever looks at them. */
export function facesOf(measure: RoomMeasure, sides: readonly Side[], seen: readonly SeenFinish[]): readonly Facet[] {
  const space = solidSpace(measure);
  return [
    ...shellFaces(measure, sides),
    ...measure.features.flatMap((feature) => solidFacets(feature, space)),
    ...railFacets(seen, measure),
  ];
}

function shellFaces(measure: RoomMeasure, sides: readonly Side[]): readonly Facet[] {
  const walls = sides.filter(({ isOpen }) => !isOpen);
  return [
    ...walls.map(wallFacet),
    ...sides.filter(({ isOpen }) => isOpen).flatMap(openFacet),
    ...walls.flatMap((side) => openingFacets(side, measure)),
    ...[...(measure.steps ?? []), ...(measure.risers ?? [])].flatMap(uprights),
    ...ceilingFacets(measure),
  ];
}

/** Where the room runs on into another. */
function openFacet(side: Side): readonly Facet[] {
  const patches = faceBetween(footOver(side), topOver(side));
  return patches.length === 0
    ? []
    : [{ id: side.wall.id, role: 'beyond', places: [side.wall.id], plane: sidePlane(side), patches, side }];
}

/** What is seen through what a plane opens, back to front: what is nearer is painted over what it hides. */
export function seenBeyond(cut: Cut, faces: readonly Facet[], open: readonly Patch[]): readonly Seen[] {
  const { camera } = cut;
  const ahead = faces
    .filter(({ plane }) => spaceDot(plane.faces, camera.toward) > grazing)
    .map((face) => ({ ...face, patches: faceBeyond(face, xyz(cut.looks, 0), cut.ahead) }))
    .filter(({ patches }) => areaOf(patches) > 1e-5);
  const laid = backToFront(
    ahead.map((facet) => layFacet(facet, camera)),
    camera,
  );
  return laid.flatMap(({ facet }) => {
    const flat = facet.patches.map(({ outline, holes }) => {
      const turn = (ring: typeof outline) =>
        ring.map((corner) => {
          const place = placeOn(facet.plane, corner);
          return { x: rightOf(cut, place), y: place.z };
        });
      return patchFrom(turn(outline), holes.map(turn));
    });
    const patches = common(unite(flat), open);
    return areaOf(patches) > 1e-5 ? [{ facet, isShell: isShell(facet), patches }] : [];
  });
}

/** Jambs are of the wall that they are in. */
function isShell({ side, id }: Facet): boolean {
  return side !== undefined || id.startsWith('ceiling/') || id.includes('/reveal-');
}
