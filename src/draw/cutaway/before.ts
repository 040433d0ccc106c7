import { timberOf } from '../../core/feature/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import type { Facet } from './facet.js';
import { covers, type Laid } from './order.js';

/** So much of what is looked for may timbers hide before they are drawn faint. */
const mostHidden = 0.15;
/** Places of a facet that are looked at, each way. */
const steps = 10;

/** Ids of timbers that hide something of some places, if together they hide a good part of it: a picture that is made for these shows them through. None
 *  for the floor, the ceiling or walls, which are the room itself. */
export function timbersBefore(
  laid: readonly Laid[],
  places: readonly string[],
  { features, walls }: RoomMeasure,
): ReadonlySet<string> {
  const shell = ['floor', 'ceiling', ...walls.map(({ id }) => id)];
  const timbers = features.filter((feature) => timberOf(feature) && !places.includes(feature.id));
  if (timbers.length === 0 || places.some((place) => shell.includes(place))) return new Set();
  const isLooked = ({ facet }: Laid): boolean => facet.places.some((place) => places.includes(place));
  const spots = laid.flatMap((one, index) => (isLooked(one) ? spotsOn(one).map((spot) => ({ index, spot })) : []));
  const over = laid.flatMap((one, index) => {
    const timber = timbers.find(({ id }) => isOf(id, one.facet));
    return timber ? [{ one, index, id: timber.id }] : [];
  });
  const hiding = spots.map(({ index, spot }) => over.filter((one) => one.index > index && covers(one.one, spot)));
  const hidden = hiding.filter((one) => one.length > 0);
  if (hidden.length <= mostHidden * spots.length) return new Set();
  return new Set(hidden.flat().map(({ id }) => id));
}

export function isOf(feature: string, { id }: Facet): boolean {
  return id.startsWith(`${feature}/`);
}

function spotsOn(one: Laid): readonly Spot[] {
  const shares = Array.from({ length: steps }, (_, i) => (i + 0.5) / steps);
  return shares
    .flatMap((x) =>
      shares.map((y): Spot => [one.left + (one.right - one.left) * x, one.top + (one.bottom - one.top) * y]),
    )
    .filter((spot) => covers(one, spot));
}
