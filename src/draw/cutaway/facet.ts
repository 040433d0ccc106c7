import type { Patch, SpaceFace } from '../../base/geometry/index.js';
import { solidsOf, type SolidSpace } from '../../core/feature/index.js';
import type { FeatureMeasure, SwatchRole } from '../../core/model/index.js';
import type { Side } from './outline.js';

/** What a facet is: with a finish; cut through; the floor's edge; a hollow; glass; a frame or a leaf; what lies beyond an opening;
 *  where something stood that was taken away. */
export type FacetRole = 'finish' | 'cut' | 'slab' | 'hollow' | 'glass' | 'frame' | 'door' | 'beyond' | 'rail' | 'trace';

/** One flat piece of a room's picture. */
export interface Facet extends SpaceFace {
  /** `floor`, `north`, `W01/head`: unique in the room. */
  readonly id: string;
  readonly role: FacetRole;
  /** Places of selections whose finish it has, by the first of them that has one. */
  readonly places: readonly string[];
  /** Index among the planes of the ceiling or of the floor, by which layouts tell their surfaces apart. */
  readonly part?: number;
  /** Of what is made of several materials: which of them it is. */
  readonly tint?: SwatchRole;
  /** A piece of what is curved: its own edges are not seen. */
  readonly isSmooth?: boolean;
  /** Of a wall: the side of the outline that it is. */
  readonly side?: Side;
  /** What lies flat on it, in its own axes, whatever is chosen: a door's panels. */
  readonly decals?: readonly Decal[];
}

export interface Decal {
  readonly patches: readonly Patch[];
  readonly role: 'base' | 'trim' | 'panel' | 'knob';
  /** Place whose finish it has. */
  readonly place: string;
}

/** The faces of a feature's solids, by their place among them. */
export function solidFacets(feature: FeatureMeasure, space: SolidSpace): readonly Facet[] {
  return solidsOf(feature, space).map((face, i) => ({
    ...face,
    id: `${feature.id}/${i}`,
    role: face.role ?? 'finish',
  }));
}
