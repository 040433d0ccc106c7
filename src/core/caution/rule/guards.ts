import type { FeatureMeasure } from '../../model/index.js';
import { fromInches, type Length } from '../../../base/units/index.js';
import type { Stair } from '../../feature/index.js';
import { isRailing, selectionsOn, stairOf } from '../look-up.js';
import type { RoomView, SelectionView } from '../view.js';

/** A fall of more than this wants a guard. Source: IRC 2018, R312.1.1. */
export const guardedDrop = fromInches(30);

/** Less of a going is a rung or a tread that one climbs: neither a stair nor a ship's ladder. Source: IRC 2018, R311.7.12, whose ship's
 *  ladders have treads of 5", from memory. */
const leastTread = fromInches(5);

export function isLadder({ going }: Pick<Stair, 'going'>): boolean {
  return going < leastTread;
}

/** A fall in a room, from an edge or from the open side of a stair. */
export interface Hazard {
  readonly feature: FeatureMeasure;
  readonly fall: Length;
  readonly isStair: boolean;
}

/** Falls of a room that want a guard. A stair without a recorded rail runs between walls. */
function hazardsOf({ measure }: RoomView): readonly Hazard[] {
  return measure.features.flatMap((feature) => {
    const stair = stairOf(feature);
    // Nobody walks along the side of a ladder.
    const fall = feature.drop ?? (stair && stair.rails > 0 && !isLadder(stair) ? stair.rise : undefined);
    return fall !== undefined && fall > guardedDrop ? [{ feature, fall, isStair: stair !== undefined }] : [];
  });
}

/** Railings of a room with the falls that each of them guards, and the falls that none does. */
export function guardsOf(room: RoomView): {
  readonly guards: readonly { readonly railing: SelectionView; readonly hazards: readonly [Hazard, ...Hazard[]] }[];
  readonly unguarded: readonly { readonly hazard: Hazard; readonly declined?: SelectionView }[];
} {
  const guards = new Map<SelectionView, [Hazard, ...Hazard[]]>();
  const unguarded: { hazard: Hazard; declined?: SelectionView }[] = [];
  for (const hazard of hazardsOf(room)) {
    const railings = selectionsOn(room, hazard.feature.id).filter(({ category }) => isRailing(category));
    const standing = railings.filter(({ options }) => options.length > 0);
    for (const railing of standing) {
      const found = guards.get(railing);
      if (found) found.push(hazard);
      else guards.set(railing, [hazard]);
    }
    const declined = railings.find(({ state }) => state === 'none');
    if (standing.length === 0) unguarded.push({ hazard, ...(declined && { declined }) });
  }
  return { guards: [...guards].map(([railing, hazards]) => ({ railing, hazards })), unguarded };
}
