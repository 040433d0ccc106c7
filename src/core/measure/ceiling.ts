import {
  areaOf,
  atLeast,
  facets,
  heightOn,
  intersect,
  lengthOf,
  patchArea,
  regionOf,
  riseDirection,
  slopeFactor,
  slopeOf,
  unfold,
  volumeUnder,
  weld,
  type Patch,
  type Plane,
} from '../../base/geometry/index.js';
import { takeOff, type Cut } from '../feature/index.js';
import type { CeilingFacet, CeilingMeasure, HiddenPiece, Surface } from '../model/index.js';
import type { Area } from '../../base/units/index.js';
import { planeName } from './form.js';
import type { Vault } from './vault.js';

/** A piece of one plane over a piece of the plan. */
export interface Facet {
  readonly name: string;
  readonly plane: Plane;
  readonly patch: Patch;
}

/** The ceiling over the patches, plane by plane. Pieces of one plane that do not hang together are numbered. */
export function facetsOf(vaults: readonly Vault[], patches: readonly Patch[]): readonly Facet[] {
  const found = vaults.flatMap(({ name, planes, over }) => {
    const under = over ? intersect(patches, over) : patches;
    const prefix = vaults.length > 1 ? `${name}: ` : '';
    return facets(under, planes).flatMap((parts, i) => {
      // A shape that is not convex comes in pieces; those of one plane that meet are one.
      const pieces = parts.length > 1 ? weld(parts) : parts;
      const plane = planes[i] as Plane;
      const words = planeName(plane);
      const label = prefix === '' ? words : prefix + words.toLowerCase();
      return pieces.map((patch, k) => ({ name: pieces.length > 1 ? `${label} ${k + 1}` : label, plane, patch }));
    });
  });
  return found;
}

/** Sloped areas; what voids and full-height features take off; each facet's true shape. */
export function measureCeiling(
  vaults: readonly Vault[],
  whole: readonly Patch[],
  cuts: readonly Cut[],
  leaning: ReadonlySet<Plane>,
): CeilingMeasure {
  const { taken, rest } = takeOff(whole, cuts);
  const ceilingOver = (patches: readonly Patch[]): readonly Facet[] =>
    facetsOf(vaults, patches).filter(({ plane }) => !leaning.has(plane));
  const left = ceilingOver(rest);
  const { surface, facets: measured } = surfaceOfFacets(
    { id: 'ceiling', name: 'Ceiling' },
    left,
    cuts,
    taken.map(ceilingOver),
  );
  return { ...surface, planArea: left.reduce((sum, { patch }) => sum + patchArea(patch), 0) as Area, facets: measured };
}

/** A surface of several planes: what is left of each, and what each cut has taken, in the cuts' order. */
export function surfaceOfFacets(
  { id, name }: Pick<Surface, 'id' | 'name'>,
  left: readonly Facet[],
  cuts: readonly Cut[],
  taken: readonly (readonly Facet[])[],
): { readonly surface: Surface; readonly facets: readonly CeilingFacet[] } {
  const deductions = cuts.flatMap(({ what, of, kind, by }, i) => {
    const under = taken[i] ?? [];
    const area = slopedArea(under);
    const hidden = by === undefined ? {} : { hidden: { by, pieces: under.map((piece) => hiddenPiece(piece, left)) } };
    return area > 0 ? [{ what, of, kind, area: area as Area, ...hidden }] : [];
  });
  const measured = left.map(measureFacet);
  const net = measured.reduce((sum, { area }) => sum + area, 0);
  const gross = deductions.reduce((sum, { area }) => sum + area, net);
  const regions = measured.map(({ shape }) => shape);
  return {
    surface: { id, name, gross: gross as Area, deductions, net: net as Area, regions },
    facets: measured,
  };
}

/** Least and greatest height, in feet. */
interface Heights {
  readonly lowest: number;
  readonly highest: number;
}

/** What the ceiling makes of the room below it, in feet. */
interface Space extends Heights {
  readonly volume: number;
  /** Floor area with at least that height. */
  areaFrom(height: number): number;
}

export function heightsUnder(list: readonly Facet[]): Heights {
  const heights = list.flatMap(({ plane, patch }) =>
    [patch.outline, ...patch.holes].flat().map((point) => heightOn(plane, point)),
  );
  return {
    lowest: heights.reduce((least, height) => Math.min(least, height), Infinity),
    highest: heights.reduce((most, height) => Math.max(most, height), -Infinity),
  };
}

export function spaceUnder(list: readonly Facet[]): Space {
  return {
    ...heightsUnder(list),
    volume: list.reduce((sum, { plane, patch }) => sum + volumeUnder(plane, patch), 0),
    areaFrom: (height) => list.reduce((sum, { plane, patch }) => sum + areaOf(atLeast([patch], plane, height)), 0),
  };
}

/** A piece of the ceiling that something hides, on the facet of its plane that is left. */
function hiddenPiece({ plane, patch }: Facet, left: readonly Facet[]): HiddenPiece {
  const facet = left.findIndex((other) => other.plane === plane);
  return { region: regionOf(unfold(plane, patch)), ...(facet >= 0 && { facet }) };
}

function measureFacet({ name, plane, patch }: Facet): CeilingFacet {
  return {
    name,
    plan: regionOf(patch),
    shape: regionOf(unfold(plane, patch)),
    slope: slopeOf(plane),
    riseDirection: riseDirection(plane),
    area: (patchArea(patch) * slopeFactor(plane)) as Area,
    highest: lengthOf(heightsUnder([{ name, plane, patch }]).highest),
  };
}

function slopedArea(list: readonly Facet[]): number {
  return list.reduce((sum, { plane, patch }) => sum + patchArea(patch) * slopeFactor(plane), 0);
}
