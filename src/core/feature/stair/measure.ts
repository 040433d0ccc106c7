import {
  between,
  counterClockwise,
  lengthOf,
  nearFeet,
  pointOf,
  pointsOf,
  type Ring,
  type Xy,
} from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord, RunLine } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { touchesWall } from '../place.js';
import { footprint } from '../wall-frame.js';
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
  const headroom = headroomOf(data, ring, space);
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
    ...(headroom && { headroom }),
    facts: [
      { label: 'Total rise', text: printLength(rise) },
      { label: 'Riser', text: `${data.risers} of ${printLength(riser)}` },
      { label: 'Going', text: `${treads} of ${printLength(going)}` },
      { label: 'Run', text: printLength(run) },
      { label: 'Width', text: printLength(width) },
      { label: 'Along the slope', text: printLength(slope) },
      ...(headroom ? [{ label: 'Headroom', text: `${printLength(headroom.height)} over the nosings` }] : []),
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

/** Lines up the flight that are looked at, as shares of its width: both sides just within, where the ceiling of the flight counts and not that of
 *  the room beside it, and the middle. */
const sightLines = [0.001, 0.5, 0.999];

/** Height of the ceiling over the line of the nosings, from the lowest to the floor above, at its least. A ceiling between straight breaks is
 *  least at one of them. Where it comes down to the nosings, the hole that the flight goes up through is not recorded: nothing is known. */
function headroomOf(data: Stair, ring: Ring, space: RoomSpace): FeatureMeasure['headroom'] {
  const [leftFoot, rightFoot, rightTop, leftTop] = ring as readonly [Xy, Xy, Xy, Xy];
  const riser = feet(data.rise) / data.risers;
  const heights = sightLines.flatMap((share) =>
    space
      .topAlong(pointOf(between(leftFoot, rightFoot, share)), pointOf(between(leftTop, rightTop, share)))
      .map(({ along, height }) => ({ along, clear: height - riser * (1 + along / feet(data.going)) })),
  );
  const [first, ...rest] = heights;
  if (!first) return undefined;
  const least = rest.reduce((low, one) => (one.clear < low.clear ? one : low), first);
  return least.clear > nearFeet ? { height: lengthOf(least.clear), along: lengthOf(least.along) } : undefined;
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
