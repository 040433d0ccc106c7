import { heightOn, nearFeet, ringInFeet, type Plane, type Profile, type Ring } from '../../base/geometry/index.js';
import { placeAt, stretchesOf, type Cut } from './cut.js';

/** A straight piece of a ceiling or a floor as it is cut: where it begins and ends, and its heights there. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  readonly at: (x: number) => number;
}

export interface Sloped {
  readonly rings: readonly Ring[];
  readonly plane: Plane;
}

export function piecesOf(cut: Cut, parts: readonly Sloped[]): readonly Piece[] {
  return parts
    .flatMap(({ rings, plane }) =>
      stretchesOf(cut, rings).map(({ from, to }) => ({
        from,
        to,
        at: (x: number): number => heightOn(plane, placeAt(cut, x)),
      })),
    )
    .toSorted((one, other) => one.from - other.from);
}

/**
 * The pieces over a stretch as one profile. What stands up to a ceiling, or on a floor, leaves a gap in it: there the pieces beside it go on
 * until they meet, and where they do not, as one went before.
 */
export function profileOver(pieces: readonly Piece[], from: number, to: number): Profile {
  const within = pieces.filter((piece) => piece.to > from + nearFeet && piece.from < to - nearFeet);
  const points: { along: number; height: number }[] = [];
  const add = (along: number, height: number): void => {
    const last = points.at(-1);
    if (last && Math.abs(last.along - along) < 1e-6 && Math.abs(last.height - height) < 1e-6) return;
    points.push({ along, height });
  };
  within.forEach((piece, i) => {
    const before = within[i - 1];
    const start = Math.max(from, piece.from);
    if (!before) add(from, piece.at(from));
    else if (start - before.to > 1e-6) {
      const meet = meetingOf(before, piece);
      add(meet ?? start, before.at(meet ?? start));
    }
    if (!before || start - before.to <= 1e-6 || meetingOf(before, piece) === undefined) add(start, piece.at(start));
    const end = i === within.length - 1 ? to : Math.min(to, piece.to);
    add(end, piece.at(end));
  });
  return points;
}

/** Where two pieces meet in the gap between them, if they do. */
function meetingOf(before: Piece, after: Piece): number | undefined {
  const [low, high] = [before.to, after.from];
  const [first, last] = [before.at(low) - after.at(low), before.at(high) - after.at(high)];
  if (Math.abs(first) < 1e-6) return low;
  if (Math.abs(last) < 1e-6) return high;
  return first * last < 0 ? low + ((high - low) * first) / (first - last) : undefined;
}

export function regionRings({
  outline,
  holes,
}: {
  readonly outline: Parameters<typeof ringInFeet>[0];
  readonly holes: readonly Parameters<typeof ringInFeet>[0][];
}): readonly Ring[] {
  return [outline, ...holes].map(ringInFeet);
}
