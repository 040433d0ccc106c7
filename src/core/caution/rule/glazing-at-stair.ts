import { edges, lengthOf, pointInFeet, stretchDistance, type Xy } from '../../../base/geometry/index.js';
import { feet, fromInches, printLength, type Length } from '../../../base/units/index.js';
import { flightOf, stairOf, type Stair } from '../../feature/index.js';
import type { FeatureMeasure, OpeningMeasure } from '../../model/index.js';
import type { HouseView, RoomView } from '../view.js';
import type { ExampleRooms } from './example.js';
import { glassWords, isDoubtful, openingLine, paneFinding, planDistance } from './glazing.js';
import { isLadder } from './guards.js';
import { alongStair } from './stair-line.js';
import type { Finding, Rule } from './rule.js';
import { residentialCode } from './source.js';

/** Source: IRC 2018, R308.4.6 and R308.4.7, from memory. */
const limit = { above: fromInches(36), beside: fromInches(36), foot: fromInches(60) };

export const glazingAtStair: Rule = {
  id: 'glazing-at-stair',
  title: 'Glass beside a stair',
  source: residentialCode('R308.4.6 and R308.4.7, from memory'),
  limits: () => [
    {
      what: 'Bottom of the glass above the nosings or the floor at the foot, less than',
      text: printLength(limit.above),
    },
    { what: 'and from the side of the stair, level, less than', text: printLength(limit.beside) },
    { what: 'or from its lowest nosing, at most', text: printLength(limit.foot) },
  ],
  examples: [
    {
      what: 'A window beside a stair, its sill 35" above the nosing there',
      sees: '2\'-11" above the nosings',
      rooms: stairBeside('12"', '119"'),
    },
    { what: 'The same window 36" above it, at the limit', sees: null, rooms: stairBeside('12"', '120"') },
    { what: 'The window of 35" at a stair that is 36" away', sees: null, rooms: stairBeside('36"', '119"') },
    { what: 'A window that ends below the nosings', sees: null, rooms: stairBeside('12"', '6"') },
  ],
  find: (house) =>
    house.rooms.flatMap((room) =>
      room.measure.openings
        .filter((opening) => opening.kind === 'window' && isDoubtful(opening))
        .flatMap((pane) => room.measure.features.flatMap((feature) => besideStair(house, room, pane, feature))),
    ),
};

function besideStair(
  house: HouseView,
  room: RoomView,
  pane: OpeningMeasure,
  feature: FeatureMeasure,
): readonly Finding[] {
  const stair = stairOf(feature);
  const line = openingLine(room, pane);
  const { footprint } = feature;
  if (!stair || isLadder(stair) || !line || !footprint) return [];
  const place = whereBeside({ stair, line, pane, footprint });
  if (place === undefined) return [];
  const seen = `Window ${pane.mark} of ${room.name} is beside ${feature.name}, its bottom ${place}, and ${glassWords(pane)}.`;
  const says = `Glass less than ${printLength(limit.above)} above the nosings of a stair and nearer than ${printLength(limit.beside)}, or that low within ${printLength(limit.foot)} of its lowest nosing, is safety glazing, tempered or laminated.`;
  return [paneFinding(house, room, pane, seen, says)];
}

/** How low it is, in words; undefined where it is too high, too far or wholly below the treads. */
function whereBeside({
  stair,
  line,
  pane,
  footprint,
}: {
  readonly stair: Stair;
  readonly line: readonly [Xy, Xy];
  readonly pane: OpeningMeasure;
  readonly footprint: NonNullable<FeatureMeasure['footprint']>;
}): string | undefined {
  const along = line.map((point) => alongStair(stair, footprint, point));
  const [low, high] = [Math.min(...along), Math.max(...along)];
  const run = feet(flightOf(stair).run);
  if (high > 0 && low < run && planDistance(line, footprint) < limit.beside) {
    const bottom = (pane.sill - nosingAt(stair, Math.min(high, run))) as Length;
    const isBelow = pane.sill + pane.height <= nosingAt(stair, Math.max(low, 0));
    if (bottom < limit.above && !isBelow) return `${heightWords(bottom)} the nosings`;
  }
  const foot = edges(footprint.map(pointInFeet))[0];
  if (!foot || low >= 0 || pane.sill >= limit.above) return undefined;
  if (lengthOf(stretchDistance(line, foot)) > limit.foot) return undefined;
  return `${printLength(pane.sill)} above the floor at its foot`;
}

/** Height of the line of the nosings above the floor at its foot, so many feet along. */
function nosingAt(stair: Stair, along: number): Length {
  const { riser } = flightOf(stair);
  return Math.min(stair.rise, riser + (riser * along) / feet(stair.going)) as Length;
}

function heightWords(bottom: Length): string {
  return bottom < 0 ? `${printLength(-bottom as Length)} below` : `${printLength(bottom)} above`;
}

/** A flight of 12 risers of 7" over goings of 10" that goes east along the north wall, so far from it. The window reaches to its head, 110" along,
 *  where the nosings are at 84". */
function stairBeside(away: string, sill: string): ExampleRooms {
  const W1 = { kind: 'window', to: 'outside', at: '80"', width: '30"', height: '36"', sill } as const;
  const y = `${120 - 36 - Number.parseInt(away)}"`;
  const stair = {
    kind: 'stair',
    rise: '84"',
    risers: 12,
    going: '10"',
    width: '36"',
    x: '0"',
    y,
    go: 'east',
    rails: 0,
    handrails: 1,
  };
  return { hall: { openings: { W1 }, features: { stair } } };
}
