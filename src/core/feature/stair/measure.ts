import {
  between,
  counterClockwise,
  lengthOf,
  pointOf,
  pointsOf,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, RunLine } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { footprint, touchesWall } from '../place.js';
import type { Stair } from './read.js';

/** A straight flight: the floor above is its last step, so there is one tread fewer than risers. */
export function measure(data: Stair, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { rise, going, width } = data;
  const { riser, treads, run, slope } = flightOf(data);
  const { ring } = footprint(space, { ...data, run });
  const why = `${treads} times the slope of a riser of ${printLength(riser)} over a going of ${printLength(going)}`;
  const along = (count: number) => ({
    length: (slope * count) as Length,
    pieces: Array.from({ length: count }, () => slope),
    slope: riser / going,
    why: count > 1 ? `${count} rails, each ${why}` : why,
  });
  const lines = railLines(data, ring, space);
  const value: FeatureMeasure = {
    kind: 'stair',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [
      {
        id: `${feature.id}/rail`,
        name: 'Rail along the slope',
        ...along(data.rails),
        ...(lines && { lines }),
      },
      ...(data.handrails > 0
        ? [{ id: `${feature.id}/handrail`, name: 'Handrail on the wall', ...along(data.handrails) }]
        : []),
    ],
    counts: [
      { id: `${feature.id}/treads`, name: 'Treads', count: treads },
      { id: `${feature.id}/risers`, name: 'Risers', count: data.risers },
    ],
    footprint: pointsOf(counterClockwise(ring)),
    covers: [],
    facts: [
      { label: 'Total rise', text: printLength(rise) },
      { label: 'Riser', text: `${data.risers} of ${printLength(riser)}` },
      { label: 'Going', text: `${treads} of ${printLength(going)}` },
      { label: 'Run', text: printLength(run) },
      { label: 'Width', text: printLength(width) },
      { label: 'Along the slope', text: printLength(slope) },
    ],
  };
  return { value, problems: [] };
}

/** Where the guards of a flight stand, from its foot: at both sides, or at the one that is recorded or that has no wall. */
function railLines({ rails, railSide }: Stair, ring: Ring, space: RoomSpace): readonly RunLine[] | undefined {
  const [leftFoot, rightFoot, rightTop, leftTop] = ring as readonly [Xy, Xy, Xy, Xy];
  const sides = { left: [leftFoot, leftTop], right: [rightFoot, rightTop] } as const;
  const names = ['left', 'right'] as const;
  const open = names.filter((name) => !touchesWall(between(...sides[name], 1 / 2), space));
  const standing = rails === 2 ? names : railSide ? [railSide] : open;
  if (standing.length !== rails) return undefined;
  return standing.map((name) => ({ from: pointOf(sides[name][0]), to: pointOf(sides[name][1]) }));
}

/** Riser height = rise / risers; run = treads × going. The slope runs from the first nosing to the last, which is the floor
 *  above: as many hypotenuses of riser and going as there are treads. */
export function flightOf({ rise, risers, going }: Pick<Stair, 'rise' | 'risers' | 'going'>): {
  readonly riser: Length;
  readonly treads: number;
  readonly run: Length;
  readonly slope: Length;
} {
  const treads = risers - 1;
  const riser = feet(rise) / risers;
  return {
    riser: lengthOf(riser),
    treads,
    run: (going * treads) as Length,
    slope: lengthOf(treads * Math.hypot(riser, feet(going))),
  };
}
