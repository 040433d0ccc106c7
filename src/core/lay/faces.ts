import { lengthOf, nearestHeading } from '../../base/geometry/index.js';
import { compass, feet, type Area } from '../../base/units/index.js';
import type { OutsideFace, RoomAround, Surface } from '../model/index.js';
import { bandOver } from './band.js';
import type { Placed } from './placed.js';
import { noEdges, roofEdgesOf, type RoofEdges } from './roof-edge.js';

/** What lies around a room, and what of its walls stands in the open. */
export interface Surroundings {
  readonly around: RoomAround;
  readonly open: readonly Surface[];
}

/** What looks each way from a level, in feet. */
interface Face extends RoofEdges {
  readonly run: number;
  readonly gross: number;
  readonly openings: number;
  readonly height: number;
  readonly band: number;
}

const none: Face = { ...noEdges, run: 0, gross: 0, openings: 0, height: 0, band: 0 };

/** All that stands in the open of a level's rooms, by the way it looks. `above`: the rooms over the level; `wall`: what an outside wall measures
 *  across, in feet. */
export function facesOf(
  placed: readonly Placed[],
  surroundings: ReadonlyMap<string, Surroundings>,
  above: readonly Placed[],
  wall: number,
): readonly OutsideFace[] {
  const bandAt = bandOver(
    above.filter(({ room }) => room.level === lowestOf(above)),
    wall,
  );
  const found = new Map<OutsideFace['looks'], Face>();
  for (const one of placed) {
    const own = surroundings.get(one.room.slug);
    for (const surface of own?.open ?? []) {
      const side = one.room.sides.find(({ wall }) => wall.id === surface.id);
      if (!side) continue;
      const looks = nearestHeading(side.out);
      const stretches = own?.around.walls.find(({ wall }) => wall === surface.id)?.stretches ?? [];
      const outside = stretches
        .filter(({ behind }) => !behind)
        .map(({ from, to }) => ({ from: feet(from), to: feet(to) }));
      const edges = roofEdgesOf(one, side, outside, above);
      const face = found.get(looks) ?? none;
      found.set(looks, {
        run: face.run + outside.reduce((sum, { from, to }) => sum + to - from, 0),
        gross: face.gross + surface.gross,
        openings: face.openings + openingsIn(surface),
        height: Math.max(face.height, ...side.wall.top.map(({ height }) => feet(height))),
        band: face.band + outside.reduce((sum, { from, to }) => sum + bandAt(one, side, from, to), 0),
        eaves: face.eaves + edges.eaves,
        rakes: face.rakes + edges.rakes,
        unknown: face.unknown + edges.unknown,
      });
    }
  }
  return compass.flatMap((looks): readonly OutsideFace[] => {
    const face = found.get(looks);
    if (!face) return [];
    const { run, gross, openings, height, band, eaves, rakes, unknown } = face;
    return [
      {
        looks,
        run: lengthOf(run),
        gross: gross as Area,
        openings: openings as Area,
        net: (gross - openings) as Area,
        height: lengthOf(height),
        ...(band > 0 && { band: band as Area }),
        roof: { eaves: lengthOf(eaves), rakes: lengthOf(rakes), unknown: lengthOf(unknown) },
      },
    ];
  });
}

function lowestOf(above: readonly Placed[]): number {
  return Math.min(...above.map(({ room }) => room.level));
}

function openingsIn({ deductions }: Surface): number {
  return deductions.reduce((sum, { kind, area }) => (kind === 'opening' ? sum + area : sum), 0);
}
