import { fitOf } from './fit.js';
import type { Misfit } from './joint.js';
import { jointsOf } from './joints.js';
import type { LayRoom } from './laid-room.js';
import { layRooms, type Laying } from './lay-rooms.js';
import type { Suspect } from './suspect.js';

type NotFacing = Extract<Misfit, { readonly kind: 'not-facing' }>;

/** Walls that an opening may be in instead, so that its two sides face each other: what fits best first. */
export function wallSuspects({ rooms }: Laying, { opening, room, other, would }: NotFacing): readonly Suspect[] {
  const { mark } = opening;
  const tries = [...would.room.map((wall) => ({ room, wall })), ...would.other.map((wall) => ({ room: other, wall }))];
  return tries
    .map(({ room: where, wall }): Suspect => {
      const changed = rooms.map((one) => (one.index === where.index ? withOpeningIn(one, mark, wall) : one));
      const gain = -fitOf(layRooms(changed, jointsOf(changed).joints)).score;
      return { tape: { of: 'wall', room: where, mark, wall }, by: 0, gain };
    })
    .toSorted((a, b) => b.gain - a.gain);
}

function withOpeningIn(room: LayRoom, mark: string, wall: string): LayRoom {
  const openings = room.measure.openings.map((opening) => (opening.mark === mark ? { ...opening, wall } : opening));
  return { ...room, measure: { ...room.measure, openings } };
}
