import { heightOn, lengthOf, nearTape, ringInFeet, stretchesIn, type Stretch } from '../../../base/geometry/index.js';
import { feet, type Length } from '../../../base/units/index.js';
import { ceilingOf, cornerOf, lineAt, placedPieces, ringsOf, type PlacedPiece, type TimberedRoom } from './pieces.js';
import type { Timber, TimberPlace } from './read.js';

/** A piece that is not all within its room. Lengths are whole nanometres; a tape's 1/16" is let pass. */
export interface TimberOutside {
  /** Its number, from the first of `timberPieces`. */
  readonly piece: number;
  /** Past a wall, or the upper end of its slope, by more than is added at its end; or higher than the ceiling over it. */
  readonly through: 'wall' | 'slope' | 'ceiling';
  readonly by: Length;
  /** Where, from the west side of the room and from its south side. */
  readonly x: Length;
  readonly y: Length;
}

/**
 * Pieces that leave their room: the clear length in plan by more than its end allowances, or what is highest of the section by
 * the ceiling over its two sides. What lies under a slope is held against the ends of the slope. None where no place is recorded.
 */
export function timbersOutside(timber: Timber, room: TimberedRoom): readonly TimberOutside[] {
  const { place } = timber;
  if (!place) return [];
  return placedPieces(timber, room).flatMap((piece, index) => {
    const found = piece.slope ? pastSlope(piece, piece.slope, timber) : pastRoom(piece, place, timber, room);
    return found.map(({ through, by, along }) => {
      const [east, north] = place.run === 'north-south' ? [piece.across, along] : [along, piece.across];
      return { piece: index + 1, through, by: lengthOf(by), x: lengthOf(east), y: lengthOf(north) };
    });
  });
}

/** In feet, `along` from the corner. */
interface Past {
  readonly through: TimberOutside['through'];
  readonly by: number;
  readonly along: number;
}

function pastSlope({ span }: PlacedPiece, slope: NonNullable<PlacedPiece['slope']>, { ends }: Timber): readonly Past[] {
  const [start, end] = slope.heights;
  const isUp = end > start;
  const factor = Math.hypot(1, (end - start) / (slope.to - slope.from));
  const [low, high] = ends.map((allowed) => feet(allowed) / factor) as [number, number];
  return past(span, slope, isUp ? [low, high] : [high, low], isUp ? ['wall', 'slope'] : ['slope', 'wall']);
}

/** A post is a short piece that runs east-west. */
function pastRoom(
  { across, span, from, to }: PlacedPiece,
  place: TimberPlace,
  { width, depth, ends }: Timber,
  room: TimberedRoom,
): readonly Past[] {
  const isPost = place.run === 'upright';
  const [half, deep] = [feet(width) / 2 - nearTape, feet(depth) / 2];
  const whole = isPost ? { from: span.from - deep, to: span.to + deep } : span;
  const allowed: [number, number] = isPost ? [0, 0] : [feet(ends[0]), feet(ends[1])];
  const top = isPost ? to[2] : from[2] + deep;
  const found = [-half, half].flatMap((aside) => {
    const { through, ahead } = lineAt(place, cornerOf(room), across + aside);
    const inside = mostOf(whole, stretchesIn([ringInFeet(room.plan)], through, ahead));
    if (!inside) return [{ through: 'wall' as const, by: whole.to - whole.from, along: whole.from }];
    const over = ceilingOf(room).flatMap(({ plane, patch }) =>
      stretchesIn(ringsOf(patch), through, ahead).flatMap((under) => {
        const [left, right] = [Math.max(under.from, whole.from), Math.min(under.to, whole.to)];
        if (right - left < nearTape) return [];
        return [left, right].map((along): Past => {
          const height = heightOn(plane, { x: through.x + ahead.x * along, y: through.y + ahead.y * along });
          return { through: 'ceiling', by: top - height, along };
        });
      }),
    );
    return [...past(whole, inside, allowed, ['wall', 'wall']), ...over.filter(({ by }) => by > nearTape)];
  });
  return (['wall', 'ceiling'] as const).flatMap((through) => most(found.filter((one) => one.through === through)));
}

function past(
  span: Stretch,
  within: Stretch,
  [first, second]: readonly [number, number],
  [atStart, atEnd]: readonly [TimberOutside['through'], TimberOutside['through']],
): readonly Past[] {
  return [
    { through: atStart, by: within.from - span.from - first, along: within.from },
    { through: atEnd, by: span.to - within.to - second, along: within.to },
  ].filter(({ by }) => by > nearTape);
}

/** The stretch of the room that a piece is in for most of its length. */
function mostOf(span: Stretch, stretches: readonly Stretch[]): Stretch | undefined {
  const shared = ({ from, to }: Stretch): number => Math.min(to, span.to) - Math.max(from, span.from);
  return stretches.filter((one) => shared(one) > 0).toSorted((one, other) => shared(other) - shared(one))[0];
}

/** The greatest; of several alike the first along the run. */
function most(list: readonly Past[]): readonly Past[] {
  const [first, ...more] = list.toSorted((one, other) => one.along - other.along);
  return first ? [more.reduce((best, one) => (one.by > best.by + nearTape ? one : best), first)] : [];
}
