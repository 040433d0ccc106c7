import type { FeatureMeasure, RoomMeasure } from '../../model/index.js';
import type { Spot } from '../convex.js';
import { countOf, faceExtent, figureAt, fireboxOf, wordAt } from '../figures.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { timberLines, timberNote } from '../timber-lines.js';
import type { WallLine } from './wall-line.js';

/** What a symbol may know. */
interface Place {
  readonly sheet: Sheet;
  readonly measure: RoomMeasure;
  readonly feature: FeatureMeasure;
  readonly lines: readonly WallLine[];
}

/** Draws a feature on the plan. Returns words for it that wait until all lines stand, and a note when it has no place. */
export function drawFeature(place: Place): { readonly label?: () => void; readonly note?: string } {
  return (symbols[place.feature.kind] ?? outlined)(place);
}

type Symbol = (place: Place) => { readonly label?: () => void; readonly note?: string };

const symbols: Readonly<Record<string, Symbol>> = {
  'chimney-breast': chimneyBreast,
  stair,
  'drop-edge': dropEdge,
  'built-in': outlined,
  'half-wall': halfWall,
  niche,
  timber,
};

function chimneyBreast(place: Place): ReturnType<Symbol> {
  const { sheet, feature } = place;
  const cover = feature.covers[0];
  const line = place.lines.find((candidate) => candidate.wall.id === cover?.wall);
  const side = faceExtent(feature, 'left');
  if (cover === undefined || line === undefined || side === undefined) return outlined(place);
  const k = sheet.perNanometre;
  const [left, right, depth] = [cover.from * k, cover.to * k, (side.right - side.left) * k];
  const middle = (left + right) / 2;
  const hearth = faceExtent(feature, 'hearth');
  if (hearth !== undefined) {
    const half = ((hearth.right - hearth.left) * k) / 2;
    const reach = depth + (hearth.top - hearth.bottom) * k;
    sheet.polygon(
      [
        line.at(middle - half, -depth),
        line.at(middle + half, -depth),
        line.at(middle + half, -reach),
        line.at(middle - half, -reach),
      ],
      {
        pen: 'fine',
        fill: 'tone',
        layer: 'fill',
      },
    );
  }
  sheet.polygon([line.at(left, 0), line.at(right, 0), line.at(right, -depth), line.at(left, -depth)], {
    pen: 'cut',
    fill: 'poche',
    layer: 'cut',
  });
  const firebox = fireboxOf(feature);
  if (firebox !== undefined) {
    const half = ((firebox.right - firebox.left) * k) / 2;
    const deep = depth * 0.72;
    sheet.polygon(
      [
        line.at(middle - half, -depth),
        line.at(middle - half * 0.68, -depth + deep),
        line.at(middle + half * 0.68, -depth + deep),
        line.at(middle + half, -depth),
      ],
      { pen: 'fine', fill: 'paper', layer: 'cut' },
    );
  }
  return {};
}

function stair(place: Place): ReturnType<Symbol> {
  const { sheet, feature } = place;
  const corners = feature.footprint?.map((point) => sheet.spot(point));
  if (corners === undefined || corners.length !== 4) return outlined(place);
  // The footprint starts with the two corners at the foot.
  const [a, b, c, d] = corners as [Spot, Spot, Spot, Spot];
  const treads = countOf(feature, 'treads') ?? 1;
  sheet.polygon(corners, { pen: 'object', fill: 'paper', layer: 'fill' });
  for (let index = 1; index < treads; index++) {
    const share = index / treads;
    sheet.polyline([between(a, d, share), between(b, c, share)], { pen: 'fine', color: 'hair' });
  }
  const foot = between(a, b, 0.5);
  const head = between(d, c, 0.5);
  const length = Math.hypot(head[0] - foot[0], head[1] - foot[1]);
  const ahead: Spot = [(head[0] - foot[0]) / length, (head[1] - foot[1]) / length];
  const start = between(foot, head, 0.5 / treads);
  const tip: Spot = [head[0] - ahead[0] * 3, head[1] - ahead[1] * 3];
  sheet.polyline([start, tip], { pen: 'fine', color: 'accent', layer: 'object' });
  const barb = (side: number): Spot => [
    tip[0] - ahead[0] * 6 - ahead[1] * 2.6 * side,
    tip[1] - ahead[1] * 6 + ahead[0] * 2.6 * side,
  ];
  sheet.polygon([tip, barb(1), barb(-1)], { pen: 'fine', color: 'accent', fill: 'accent', layer: 'object' });
  const risers = countOf(feature, 'risers');
  const words = risers === undefined ? 'UP' : `UP ${risers} R`;
  const label = (): void => {
    // The words stand across the arrow, on a ground that hides the lines behind them.
    const spots = [0.22, 0.3, 0.4, 0.5, 0.6].map((share) => lowered(between(foot, head, share)));
    sheet.tryWrite(spots, words, { size: sizes.note, weight: 600, color: 'accent', ground: 'paper' }, 0.5);
  };
  return { label };
}

function dropEdge({ sheet, feature, lines }: Place): ReturnType<Symbol> {
  const k = sheet.perNanometre;
  const run = feature.runs[0]?.length ?? 0;
  const cover = feature.covers[0];
  const wall = cover?.wall ?? wordAt(feature, 'wall');
  const line = lines.find((candidate) => candidate.wall.id === wall);
  const fall = feature.drop === undefined ? feature.name : `${feature.name}: falls ${lengthText(feature.drop)}`;
  if (line === undefined) return { note: fall };
  const from = cover === undefined ? (figureAt(feature, ['at']) ?? 0) : cover.from;
  const to = cover === undefined || cover.to <= cover.from ? from + run : cover.to;
  const [low, high] = [from * k, to * k];
  const inset = -1.75 * 25_400_000 * k * 1.5;
  for (const v of [inset - 1.1, inset + 1.1])
    sheet.polyline([line.at(low, v), line.at(high, v)], { pen: 'fine', color: 'accent', layer: 'object' });
  const posts = Math.max(1, Math.ceil((high - low) / (6 * 304_800_000 * k)));
  for (let index = 0; index <= posts; index++) {
    const u = low + ((high - low) * index) / posts;
    const half = 1.7;
    sheet.polygon(
      [
        line.at(u - half, inset - half),
        line.at(u + half, inset - half),
        line.at(u + half, inset + half),
        line.at(u - half, inset + half),
      ],
      {
        pen: 'fine',
        color: 'accent',
        fill: 'paper',
        layer: 'object',
      },
    );
  }
  const turn = readable(line.along);
  const label = (): void => {
    const middle = (low + high) / 2;
    const spots = [0, -0.2, 0.2, -0.35, 0.35].map((shift) =>
      centered(line.at(middle + (high - low) * shift, inset - 8), turn),
    );
    const look = { size: sizes.note, color: 'accent', turn, ground: 'paper' } as const;
    if (sheet.tryWrite(spots, fall, look) || feature.drop === undefined) return;
    sheet.tryWrite(spots, `falls ${lengthText(feature.drop)}`, look);
  };
  return { label };
}

function halfWall(place: Place): ReturnType<Symbol> {
  const { sheet, feature } = place;
  const corners = feature.footprint?.map((point) => sheet.spot(point));
  if (corners === undefined) return {};
  sheet.polygon(corners, { pen: 'object', fill: 'deep', layer: 'object' });
  return { label: () => writeNear(place, corners) };
}

function niche({ sheet, feature, lines }: Place): ReturnType<Symbol> {
  const cover = feature.covers[0];
  const line = lines.find((candidate) => candidate.wall.id === cover?.wall);
  if (cover === undefined || line === undefined) return {};
  const k = sheet.perNanometre;
  const sides = faceExtent(feature, 'sides');
  const depth = Math.min((sides === undefined ? 3.5 * 25_400_000 : sides.top - sides.bottom) * k, line.thickness * 0.8);
  sheet.polygon(
    [
      line.at(cover.from * k, 0),
      line.at(cover.to * k, 0),
      line.at(cover.to * k, depth),
      line.at(cover.from * k, depth),
    ],
    {
      pen: 'fine',
      fill: 'paper',
      layer: 'label',
      quiet: true,
    },
  );
  const turn = readable(line.along);
  const label = (): void => {
    const middle = ((cover.from + cover.to) / 2) * k;
    sheet.tryWrite(
      [-8, -16, -24].map((v) => centered(line.at(middle, v), turn)),
      feature.name,
      { size: sizes.note, color: 'muted', turn, ground: 'paper' },
    );
  };
  return { label };
}

function timber({ sheet, measure, feature }: Place): ReturnType<Symbol> {
  const { lines, width } = timberLines(sheet, measure, feature);
  if (lines.length === 0) return { note: timberNote(feature) };
  for (const [from, to] of lines) {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const side: Spot = [(-(to[1] - from[1]) / length) * (width / 2), ((to[0] - from[0]) / length) * (width / 2)];
    for (const sign of [1, -1]) {
      sheet.polyline(
        [
          [from[0] + side[0] * sign, from[1] + side[1] * sign],
          [to[0] + side[0] * sign, to[1] + side[1] * sign],
        ],
        { pen: 'hair', dash: 'hidden', quiet: true },
      );
    }
  }
  const label = (): void => {
    const middle = lines[Math.floor((lines.length - 1) / 2)];
    if (middle === undefined) return;
    const [from, to] = middle;
    const along: Spot = [to[0] - from[0], to[1] - from[1]];
    const turn = readable(along);
    const spots = [0.2, 0.8, 0.32, 0.68, 0.5].map((share) => centered(between(from, to, share), turn));
    sheet.tryWrite(spots, `${feature.name} above`, { size: sizes.note, color: 'muted', turn, ground: 'paper' });
  };
  return { label };
}

function outlined(place: Place): ReturnType<Symbol> {
  const { sheet, feature } = place;
  const corners = feature.footprint?.map((point) => sheet.spot(point));
  if (corners === undefined) return {};
  sheet.polygon(corners, { pen: 'object', fill: 'tone', layer: 'fill' });
  return { label: () => writeNear(place, corners) };
}

/** The feature's name in it, lengthwise where it is upright, else beside it. */
function writeNear({ sheet, feature }: Place, corners: readonly Spot[]): void {
  const xs = corners.map((spot) => spot[0]);
  const ys = corners.map((spot) => spot[1]);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const middle: Spot = [(left + right) / 2, (top + bottom) / 2];
  const look = { size: sizes.note, color: 'muted' } as const;
  if (sheet.tryWrite([centered(middle, 0)], feature.name, look)) return;
  if (sheet.tryWrite([centered(middle, -90)], feature.name, { ...look, turn: -90 })) return;
  const around: Spot[] = [
    [middle[0], top - 4],
    [middle[0], bottom + 9],
  ];
  const beside = { ...look, ground: 'paper' } as const;
  if (sheet.tryWrite(around, feature.name, beside)) return;
  sheet.tryWrite(
    [
      [left - 4, middle[1]],
      [right + 9, middle[1]],
    ],
    feature.name,
    { ...beside, turn: -90 },
  );
}

export function between(a: Spot, b: Spot, share: number): Spot {
  return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
}

/** Degrees that text along a direction is turned, never upside down. */
export function readable([x, y]: Spot): number {
  const degrees = (Math.atan2(y, x) * 180) / Math.PI;
  if (degrees > 89.9) return degrees - 180;
  return degrees < -90.1 ? degrees + 180 : degrees;
}

/** Baseline place of small text whose middle is to be at the spot. */
export function centered([x, y]: Spot, turn: number): Spot {
  const radians = (turn * Math.PI) / 180;
  const drop = sizes.note * 0.3;
  return [x - Math.sin(radians) * drop, y + Math.cos(radians) * drop];
}

function lowered([x, y]: Spot): Spot {
  return [x, y + sizes.note * 0.34];
}
