import type { Patch, Plane, Profile } from '../../base/geometry/index.js';
import type {
  FeatureMeasure,
  FeatureRecord,
  FloorVoid,
  MeasuredArc,
  MeasuredLean,
  Point,
  Polygon,
} from '../model/index.js';
import type { Outcome, Origin } from '../../base/problem/index.js';
import type { Length } from '../../base/units/index.js';
import type { FaceMark, PlanMark } from './mark.js';
import type { SolidFace, SolidSpace } from './solid.js';

/** One plane of the ceiling over its part of the plan, in feet. */
export interface CeilingPiece {
  readonly plane: Plane;
  readonly patch: Patch;
}

/** One level, or ramp, of the floor over its part of the plan, in feet. */
export interface FloorPiece {
  readonly name: string;
  /** Of a ramp, of its low edge. */
  readonly height: Length;
  readonly plane: Plane;
  readonly patches: readonly Patch[];
}

/** What a feature may know of its room when it is measured. */
export interface RoomSpace {
  /** Clockwise from above, in the room's own coordinates. */
  readonly plan: Polygon;
  /** South-west corner of the plan's bounding box: `x` and `y` in a feature's record are from here. */
  readonly corner: Point;
  readonly walls: readonly {
    readonly name: string;
    readonly from: Point;
    readonly to: Point;
    readonly run: Length;
    readonly arc?: MeasuredArc;
    readonly lean?: MeasuredLean;
    /** Heights of the floor along it, where it is not level with the rest of the room's. */
    readonly foot?: Profile;
    /** No wall stands here. */
    readonly openTo?: string;
  }[];
  readonly floor: readonly FloorPiece[];
  readonly voids: readonly FloorVoid[];
  /** Ceiling height along a straight line of the plan, in feet, with a point at each break; two at one place are a step. */
  topAlong(from: Point, to: Point): Profile;
  /** The ceiling, plane by plane, before anything is taken off it but holes that it has in common with the floor. */
  readonly ceiling: readonly CeilingPiece[];
  readonly origin: Origin;
}

/** The part of a room where people look for a choice. */
export type PlaceGroup = 'fireplace' | 'ceiling' | 'walls' | 'floor' | 'openings' | 'stairs' | 'timber' | 'built-ins';

/** A kind of feature: its schema, reader, measure and drawing, all in one folder. */
export interface FeatureKind<Data> {
  readonly kind: string;
  /** Where finishes on it are looked for. */
  readonly group: PlaceGroup;
  /** JSON Schema (2020-12) of the record as written. */
  readonly schema: object;
  /** Reads a record that the schema has passed. */
  read(raw: Readonly<Record<string, unknown>>): Data;
  measure(data: Data, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure>;
  /** On the plan; absent, its footprint with its name. */
  plan?(data: Data, measure: FeatureMeasure): readonly PlanMark[];
  /** On the wall that its record names; absent, what it covers of a wall. */
  face?(data: Data, measure: FeatureMeasure): readonly FaceMark[];
  /** How much more a picture is worth that shows it, in square feet of wall. As drawn. */
  readonly worthSeeing?: number;
  /** What of it is seen in space; absent: nothing. */
  solids?(data: Data, measure: FeatureMeasure, space: SolidSpace): readonly SolidFace[];
}
