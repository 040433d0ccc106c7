import {
  between,
  edges,
  lengthOf,
  pointInFeet,
  ringInFeet,
  stretchDistance,
  type Xy,
} from '../../../base/geometry/index.js';
import type { Length } from '../../../base/units/index.js';
import { sillOverFloor, wallLine, type OpeningMeasure, type PlanPoint, type Polygon } from '../../model/index.js';
import { isFraming, tradesOf } from '../look-up.js';
import type { HouseView, RoomView } from '../view.js';
import type { Finding } from './rule.js';

/** Glass that nothing says to be tempered or laminated. */
export function isDoubtful({ glass }: OpeningMeasure): boolean {
  return glass !== 'tempered' && glass !== 'laminated';
}

/** Windows of a room whose glass is in doubt and whose bottom is lower than `bottom` above the floor before it. */
export function lowGlass({ measure }: RoomView, bottom: Length): readonly OpeningMeasure[] {
  return measure.openings.filter(
    (opening) => opening.kind === 'window' && isDoubtful(opening) && sillOverFloor(opening) < bottom,
  );
}

/** `its glass is recorded as plain`. */
export function glassWords({ glass }: OpeningMeasure): string {
  return glass === undefined ? 'what its glass is, is not recorded' : `its glass is recorded as ${glass}`;
}

/** What is seen at a pane. Who sets the windows reads it. */
export function paneFinding(
  house: HouseView,
  room: RoomView,
  { mark, kind }: OpeningMeasure,
  seen: string,
  says: string,
): Finding {
  return {
    room: room.slug,
    place: mark,
    placeText: `${kind === 'door' ? 'Door' : 'Window'} ${mark}`,
    selections: [],
    trades: tradesOf(house, isFraming),
    seen,
    says,
    ask: 'the window and door supplier what was ordered, and the building office',
  };
}

/** Where an opening lies in the plan, in feet: straight from side to side, also in an arc. */
export function openingLine(
  { measure }: RoomView,
  { wall, at, width }: Pick<OpeningMeasure, 'wall' | 'at' | 'width'>,
): readonly [Xy, Xy] | undefined {
  const found = measure.walls.find(({ id }) => id === wall);
  if (!found || found.run === 0) return undefined;
  const line = wallLine(found);
  return [placeOn(line, at), placeOn(line, at + width)];
}

function placeOn(line: readonly PlanPoint[], along: number): Xy {
  const next = line.findIndex((point, index) => index > 0 && point.along >= along);
  const [from, to] = line.slice(next < 0 ? -2 : next - 1) as [PlanPoint, PlanPoint];
  return between(pointInFeet(from.at), pointInFeet(to.at), (along - from.along) / (to.along - from.along));
}

/** How near a stretch of the plan comes to what stands there. */
export function planDistance(line: readonly [Xy, Xy], outline: Polygon): Length {
  return lengthOf(Math.min(...edges(ringInFeet(outline)).map((edge) => stretchDistance(line, edge))));
}
