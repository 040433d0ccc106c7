import { feet } from '../../base/units/index.js';
import type { House } from '../model/index.js';

/** Feet from face to face of a wall with one board of 1/2" on each side, and of an outside wall from its inside face to the outside of its
 *  framing. Source: common practice, no source. */
const board = 0.5 / 12;
const usual = { inside: 4.5 / 12, outside: 6 / 12 };

/** What a wall measures across in feet, if it stands between rooms and if it stands outside. */
export interface Thickness {
  /** Its record names a type. */
  readonly isOwn: boolean;
  readonly inside: number;
  readonly outside: number;
}

/** By the type that the wall's record names, else by the house's usual types, else by its studs. */
export function thicknessOf(
  type: string | undefined,
  { wallTypes = [], studs }: Pick<House, 'wallTypes' | 'studs'>,
): Thickness {
  const own = wallTypes.find(({ id }) => id === type);
  if (own) return { isOwn: true, inside: feet(own.thickness), outside: feet(own.thickness) };
  const [inside, outside] = (['inside', 'outside'] as const).map((where) => {
    const found = wallTypes.find(({ usualFor }) => usualFor === where);
    return found && feet(found.thickness);
  });
  return {
    isOwn: false,
    inside: inside ?? (studs ? feet(studs.inside) + 2 * board : usual.inside),
    outside: outside ?? (studs ? feet(studs.outside) + board : usual.outside),
  };
}
