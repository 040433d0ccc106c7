import { bounds, headings, pointInFeet, ringInFeet } from '../../base/geometry/index.js';
import { feet, fromFeet, type Length } from '../../base/units/index.js';
import { breastOf, stairOf, timberOf } from '../../core/feature/index.js';
import type { RoomMeasure, RoomSection } from '../../core/model/index.js';
import { lineOf } from './body-cut.js';

/** A section with the letter that it goes by in its room. */
export interface LetteredSection extends RoomSection {
  readonly letter: string;
  /** No record has it: it lies where it shows most. */
  readonly isChosen?: true;
}

/** Of a room whose record has none. */
const mostChosen = 2;

/** The sections that a room's record has; where it has none, through what a plan does not say: a flight, slopes of the ceiling or beams, a breast. */
export function sectionsOf(measure: RoomMeasure, recorded?: readonly RoomSection[]): readonly LetteredSection[] {
  if (recorded) return recorded.map((section, i) => ({ ...section, letter: letterOf(i) }));
  return [throughFlight(measure), throughCeiling(measure), throughBreast(measure)]
    .flatMap((section) => section ?? [])
    .slice(0, mostChosen)
    .map((section, i) => ({ ...section, letter: letterOf(i), isChosen: true }));
}

/** `A` to `Z`, then `A2`. */
function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letter}${Math.floor(index / 26) + 1}`;
}

/** Along the middle of a flight, which goes up to the right. */
function throughFlight(measure: RoomMeasure): RoomSection | undefined {
  for (const feature of measure.features) {
    const line = lineOf(feature);
    const stair = stairOf(feature);
    if (!line || !stair) continue;
    const name = `Through ${lowered(feature.name)}`;
    switch (stair.go) {
      case 'north':
        return { name, at: fromWest(measure, line.foot.x), looks: 'west' };
      case 'south':
        return { name, at: fromWest(measure, line.foot.x), looks: 'east' };
      case 'east':
        return { name, at: fromSouth(measure, line.foot.y), looks: 'north' };
      case 'west':
        return { name, at: fromSouth(measure, line.foot.y), looks: 'south' };
      default:
    }
  }
  return undefined;
}

/** Through the middle of the room, across the ridge; under a level ceiling across its beams. */
function throughCeiling(measure: RoomMeasure): RoomSection | undefined {
  const { west, east, south, north } = bounds(ringInFeet(measure.plan));
  const eastWest = { at: fromSouth(measure, (south + north) / 2), looks: 'north' } as const;
  const northSouth = { at: fromWest(measure, (west + east) / 2), looks: 'west' } as const;
  const sloped = measure.ceiling.facets.filter(({ slope }) => slope > 0);
  if (sloped.length > 0) {
    const [largest] = sloped.toSorted((one, other) => other.area - one.area);
    const isEastWest = Math.abs(Math.cos(((largest?.riseDirection ?? 0) * Math.PI) / 180)) > 0.7;
    return { name: 'Across the slopes of the ceiling', ...(isEastWest ? eastWest : northSouth) };
  }
  const beams = measure.features.find((feature) => {
    const run = timberOf(feature)?.place?.run;
    return run === 'east-west' || run === 'north-south';
  });
  if (!beams) return undefined;
  const isEastWest = timberOf(beams)?.place?.run === 'north-south';
  return { name: `Across ${lowered(beams.name)}`, ...(isEastWest ? eastWest : northSouth) };
}

/** Square to its wall, through the middle of the breast. */
function throughBreast(measure: RoomMeasure): RoomSection | undefined {
  for (const feature of measure.features) {
    const breast = breastOf(feature);
    const wall = breast && measure.walls.find(({ id }) => id === breast.wall);
    if (!wall) continue;
    const [a, b] = [pointInFeet(wall.from), pointInFeet(wall.to)];
    const share = (feet(breast.at) + feet(breast.width) / 2) / Math.hypot(b.x - a.x, b.y - a.y);
    const middle = { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
    const name = `Through ${lowered(feature.name)}`;
    if (Math.abs(a.y - b.y) < 1e-6) return { name, at: fromWest(measure, middle.x), looks: 'west' };
    if (Math.abs(a.x - b.x) < 1e-6) return { name, at: fromSouth(measure, middle.y), looks: 'north' };
  }
  return undefined;
}

function fromWest({ plan }: RoomMeasure, x: number): Length {
  return fromFeet(x - bounds(ringInFeet(plan)).west);
}

function fromSouth({ plan }: RoomMeasure, y: number): Length {
  return fromFeet(y - bounds(ringInFeet(plan)).south);
}

/** `main stair` of `Main stair`, within a sentence. */
function lowered(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** The two ends of a section's line in plan, over the whole of the room, left and right of who looks. */
export function lineInPlan(
  { plan }: Pick<RoomMeasure, 'plan'>,
  { at, looks }: RoomSection,
): readonly [{ readonly x: number; readonly y: number }, { readonly x: number; readonly y: number }] {
  const [xs, ys] = [plan.map(({ x }) => x), plan.map(({ y }) => y)];
  const [west, east, south, north] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const ends =
    looks === 'north' || looks === 'south'
      ? ([
          { x: west, y: south + at },
          { x: east, y: south + at },
        ] as const)
      : ([
          { x: west + at, y: south },
          { x: west + at, y: north },
        ] as const);
  const { x, y } = headings[looks];
  const isForward = (ends[1].x - ends[0].x) * y - (ends[1].y - ends[0].y) * x > 0;
  return isForward ? ends : [ends[1], ends[0]];
}
