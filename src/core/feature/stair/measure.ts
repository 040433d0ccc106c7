import { counterClockwise, lengthOf, pointsOf } from '../../../base/geometry/index.js';
import type { FeatureMeasure, FeatureRecord } from '../../model/index.js';
import type { Outcome } from '../../../base/problem/index.js';
import { feet, printLength, type Length } from '../../../base/units/index.js';
import type { RoomSpace } from '../kind.js';
import { footprint } from '../place.js';
import type { Stair } from './read.js';

/** A straight flight: the floor above is its last step, so there is one tread fewer than risers. */
export function measure(data: Stair, feature: FeatureRecord, space: RoomSpace): Outcome<FeatureMeasure> {
  const { rise, going, width } = data;
  const { riser, treads, run, slope } = flightOf(data);
  const pieces = Array.from({ length: data.rails }, () => slope);
  const value: FeatureMeasure = {
    kind: 'stair',
    id: feature.id,
    name: feature.name,
    faces: [],
    runs: [
      {
        id: `${feature.id}/rail`,
        name: 'Rail along the slope',
        length: (slope * data.rails) as Length,
        pieces,
        slope: riser / going,
      },
    ],
    counts: [
      { id: `${feature.id}/treads`, name: 'Treads', count: treads },
      { id: `${feature.id}/risers`, name: 'Risers', count: data.risers },
    ],
    footprint: pointsOf(counterClockwise(footprint(space, { ...data, run }).ring)),
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
