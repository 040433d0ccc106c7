import { faceUnder, heightAt, isIn, noFace, spotAt, strip, within, type Cut, type Face } from './face.js';
import { facesOf, footprintArea, footprintOf, runsOf } from './feature.js';
import { feetOf, sum, text, type Fields } from './paper.js';
import { shoelace, type CeilingPart, type Drawn, type Side, type Spot } from './room.js';

export interface RoomFigures {
  readonly plan: number;
  readonly floor: number;
  readonly ceiling: { readonly gross: number; readonly net: number; readonly plan: number };
  readonly walls: ReadonlyMap<string, Face>;
  readonly steps: number;
  readonly volume: number;
  readonly lowest: number;
  readonly highest: number;
  readonly fiveFeet: number;
  readonly sevenFeet: number;
  readonly perimeter: number;
  readonly wallRun: number;
  /** Faces and runs of features by id, in square feet and feet. */
  readonly faces: ReadonlyMap<string, Face>;
  readonly runs: ReadonlyMap<string, number>;
}

export function figuresOf(room: Drawn): RoomFigures {
  const plan = shoelace(room);
  const standing = room.sides.filter(({ openTo }) => openTo === undefined);
  const breast = room.features.find(({ kind }) => kind === 'chimney-breast');
  const over = overhead(room, breast && footprintOf(room, breast, 'depth'));
  return {
    plan,
    floor: plan - sum(room.features.map((feature) => footprintArea(room, feature))),
    ...over,
    walls: new Map(room.sides.map((side) => [side.name, side.openTo === undefined ? wallFace(room, side) : noFace])),
    steps: sum(room.ceiling.flatMap((high) => room.ceiling.map((low) => stepBetween(low, high)))),
    perimeter: sum(room.sides.map(({ run }) => run)),
    wallRun: sum(standing.map(({ run }) => run)),
    faces: new Map(room.features.flatMap((feature) => facesOf(room, feature))),
    runs: new Map(room.features.flatMap(runsOf)),
  };
}

/** All that is overhead, cell by cell: strips across the room, and in each the stretches that lie in the plan. Its area along the slope is
 *  that of the plan times the length of the slope's normal. */
function overhead(
  room: Drawn,
  hidden: CeilingPart['over'] | undefined,
): Pick<RoomFigures, 'ceiling' | 'volume' | 'lowest' | 'highest' | 'fiveFeet' | 'sevenFeet'> {
  const found = { gross: 0, net: 0, plan: 0, volume: 0, lowest: Infinity, highest: 0, fiveFeet: 0, sevenFeet: 0 };
  for (let row = 0; row < Math.round(room.depth / strip); row += 1) {
    const y = (row + 1 / 2) * strip;
    for (const [from, to] of stretchesAt(room, y)) {
      const count = Math.ceil((to - from) / strip - within);
      const wide = (to - from) / count;
      for (let column = 0; column < count; column += 1) {
        const spot = { x: from + (column + 1 / 2) * wide, y };
        const height = heightAt(room, spot);
        const acrossX = (heightAt(room, { x: spot.x + within, y }) - height) / within;
        const acrossY = (heightAt(room, { x: spot.x, y: y + within }) - height) / within;
        const [plan, factor] = [wide * strip, Math.hypot(1, acrossX, acrossY)];
        const [half, other] = [(Math.abs(acrossX) * wide) / 2, (Math.abs(acrossY) * strip) / 2];
        found.gross += plan * factor;
        found.volume += plan * height;
        if (!hidden || !isIn(hidden, spot)) {
          found.net += plan * factor;
          found.plan += plan;
        }
        found.lowest = Math.min(found.lowest, height - half - other);
        found.highest = Math.max(found.highest, height + half + other);
        if (height > 5) found.fiveFeet += plan;
        if (height > 7) found.sevenFeet += plan;
      }
    }
  }
  const { gross, net, plan, ...rest } = found;
  return { ceiling: { gross, net, plan }, ...rest };
}

/** Where a line from west to east is within the plan: between crossings, two by two. */
function stretchesAt({ sides }: Drawn, y: number): readonly (readonly [number, number])[] {
  const crossings = sides
    .filter(({ from, to }) => from.y < y !== to.y < y)
    .map(({ from, to }) => from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y))
    .sort((a, b) => a - b);
  return crossings.flatMap((from, index) => (index % 2 === 0 ? [[from, crossings[index + 1] ?? NaN] as const] : []));
}

function wallFace(room: Drawn, side: Side): Face {
  const cuts = [
    ...room.openings
      .filter(({ wall }) => wall === side.name)
      .map(({ mark, at, width, sill, height }) => ({
        of: mark,
        by: 'opening' as const,
        from: at,
        to: at + width,
        low: sill,
        high: sill + height,
      })),
    ...room.features.filter(({ wall }) => wall === side.name).flatMap((feature) => coverOf(room, side, feature)),
  ];
  return faceUnder(side.run, (along) => heightAt(room, spotAt(side, along, 0)), cuts);
}

function coverOf(room: Drawn, side: Side, feature: Fields): readonly Omit<Cut, 'area'>[] {
  const kind = text(feature['kind']);
  if (kind !== 'built-in' && kind !== 'niche' && kind !== 'chimney-breast') return [];
  const from = feetOf(feature['at']);
  const cut = { of: text(feature['id']), by: kind, from, to: from + feetOf(feature['width']) } as const;
  if (kind === 'chimney-breast') return [{ ...cut, low: 0, high: 1000 }];
  const low = kind === 'niche' ? feetOf(feature['sill']) : 0;
  return [{ ...cut, low, high: low + feetOf(feature['height']) }];
}

/** What stands between two parts that meet, from the lower ceiling to the higher, or to where that is open above. */
function stepBetween(low: CeilingPart, high: CeilingPart): number {
  const { x, y, width, depth } = high.over;
  const around: readonly (readonly [Spot, Spot, Spot])[] = [
    [
      { x, y },
      { x, y: y + depth },
      { x: -1, y: 0 },
    ],
    [
      { x: x + width, y },
      { x: x + width, y: y + depth },
      { x: 1, y: 0 },
    ],
    [
      { x, y },
      { x: x + width, y },
      { x: 0, y: -1 },
    ],
    [
      { x, y: y + depth },
      { x: x + width, y: y + depth },
      { x: 0, y: 1 },
    ],
  ];
  return sum(
    around.map(([from, to, out]) => {
      const run = to.x - from.x + to.y - from.y;
      const pieces = Math.round(run / strip);
      const each = run / pieces;
      return sum(
        Array.from({ length: pieces }, (_, index) => {
          const share = (index + 1 / 2) / pieces;
          const spot = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
          const beyond = { x: spot.x + out.x * 0.01, y: spot.y + out.y * 0.01 };
          if (low === high || !isIn(low.over, beyond)) return 0;
          return each * Math.max(0, Math.min(high.height(spot), high.openFrom ?? Infinity) - low.height(spot));
        }),
      );
    }),
  );
}
