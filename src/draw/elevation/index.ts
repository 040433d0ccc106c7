import type { DrawnGuard, DrawnRoom, GuardBeyond, SeenFinish } from '../../core/book/index.js';
import {
  isDownToFloor,
  wallFoot,
  type OpeningMeasure,
  type RoomMeasure,
  type WallMeasure,
} from '../../core/model/index.js';
import { shapeWords, springingOf } from '../../core/opening/index.js';
import type { Spot } from '../convex.js';
import { drawDimensions } from '../dimension.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { fitDrawing } from '../issue.js';
import { lengthText, wallNotes, wallWords } from '../length-text.js';
import { sizes } from '../pen.js';
import type { Sheet } from '../sheet.js';
import { textWidth } from '../text-width.js';
import { drawFeatureFace, isGuarded } from './feature-face.js';
import { drawFinishes, type FinishRegion } from './finish-region.js';
import { drawGuardBeyond } from './guard-beyond.js';
import { elevationFrame, floorSpots, topAt, wallOutline, type ElevationFrame } from './frame.js';
import { drawOpeningFace, labelOpening } from './opening-face.js';
import { drawBase, trimOn, type WallTrim } from './trim.js';

export type { FinishRegion } from './finish-region.js';

export interface ElevationOptions extends DrawOptions {
  /** Number and name of the room, for the title. */
  readonly number: string;
  readonly name: string;
  readonly finishes?: readonly FinishRegion[];
  /** What is seen of features before the wall, by feature id. */
  readonly faces?: ReadonlyMap<string, string>;
  /** The guard before an open side, by the edge's id. Without a height it is drawn as high as guards usually are. */
  readonly guards?: ReadonlyMap<string, DrawnGuard>;
  /** Its posts, by the edge's id. */
  readonly posts?: DrawnRoom['posts'];
  /** Guards that are seen through openings, by the opening's mark. */
  readonly beyond?: ReadonlyMap<string, readonly GuardBeyond[]>;
  /** Finishes as a picture of the room shows them: casings and base are as their options' records tell. */
  readonly seen?: readonly SeenFinish[];
  /** Slug to name of the rooms that this one is open to. */
  readonly neighbours?: ReadonlyMap<string, string>;
}

/** A wall as one sees it standing before it. */
export function drawElevation(measure: RoomMeasure, wall: WallMeasure, options: ElevationOptions): Drawing {
  const shows = seenOn(wall, measure, options);
  const title = { title: `${wall.name} – ${shows.number} ${shows.name}`, description: describe(measure, wall, shows) };
  const draw = (sheet: Sheet): Title => {
    const frame = elevationFrame(sheet, measure, wall);
    const isOpen = wall.openTo !== undefined;
    const outline = wallOutline(frame);
    if (isOpen) sheet.polygon(outline, { pen: 'fine', dash: 'open', color: 'ink', fill: 'paper', layer: 'fill' });
    else sheet.polygon(outline, { pen: 'cut', fill: 'paper', layer: 'fill' });
    const guarded = measure.features.some((feature) => isGuarded(feature, wall));
    const nameFinishes = drawFinishes(frame, shows.finishes);
    const labels: (() => void)[] = [];
    drawBase(frame, openingsOf(frame), shows.trim);
    for (const opening of openingsOf(frame)) drawOpeningFace(frame, opening, shows.trim.casings.get(opening.mark));
    for (const opening of openingsOf(frame))
      for (const guard of shows.beyond.get(opening.mark) ?? []) labels.push(drawGuardBeyond(frame, opening, guard));
    for (const feature of measure.features) {
      const { id } = feature;
      const seen = { finish: shows.faces.get(id), guard: shows.guards.get(id), posts: shows.posts.get(id) ?? [] };
      labels.push(...drawFeatureFace(frame, feature, seen));
    }
    drawFloorLine(frame);
    const missing = openingsOf(frame).flatMap((opening) =>
      labelOpening(frame, opening, shows.trim.casings.get(opening.mark)?.width),
    );
    if (isOpen) {
      const [x, y] = frame.at(wall.run / 2, topAt(wall, wall.run / 2) / 2);
      const words = `open to ${shows.openTo ?? ''}`;
      const turn = textWidth(words, sizes.dimension) > wall.run * sheet.perNanometre - 8 ? -90 : 0;
      sheet.tryWrite(
        [0, 14, -14, 28, -28].map((shift): Spot => [x, y + shift]),
        words,
        { size: sizes.dimension, color: 'muted', turn, ground: 'paper' },
      );
    }
    for (const label of labels) label();
    missing.push(...nameFinishes());
    drawStrings(frame);
    return {
      ...title,
      notes: [
        ...wallNotes(wall),
        ...(missing.length > 0 ? [`Not written for want of space: ${missing.join(', ')}`] : []),
        ...(guarded ? [`Local code decides the guard's height and openings`] : []),
      ],
    };
  };
  const heights = [...wallFoot(wall), ...wall.top].map(({ height }) => height);
  const span = { width: wall.run, height: Math.max(...heights) - Math.min(...heights) };
  const view = `wall/${wall.id}`;
  return fitDrawing({ of: measure, view, shows, largest: 24, span, draw }, options);
}

/** What of the options is seen on one wall: a finish elsewhere makes no other drawing of it. */
interface Seen extends Required<
  Pick<ElevationOptions, 'number' | 'name' | 'finishes' | 'faces' | 'guards' | 'posts' | 'beyond'>
> {
  readonly trim: WallTrim;
  /** Name of the room behind an open side. */
  readonly openTo: string | undefined;
}

function seenOn(wall: WallMeasure, { features, openings }: RoomMeasure, options: ElevationOptions): Seen {
  const { number, name, finishes = [], faces, guards, posts, beyond, neighbours, seen = [] } = options;
  const inWall = openings.filter((opening) => opening.wall === wall.id);
  const covering = features.filter(({ covers }) => covers.some((cover) => cover.wall === wall.id));
  const guarded = features.filter((feature) => isGuarded(feature, wall));
  return {
    number,
    name,
    finishes,
    trim: trimOn(wall, inWall, seen),
    openTo: wall.openTo && (neighbours?.get(wall.openTo) ?? wall.openTo),
    faces: pick(faces, covering),
    guards: pick(guards, guarded),
    posts: pick(posts, guarded),
    beyond: new Map([...(beyond ?? [])].filter(([mark]) => inWall.some((opening) => opening.mark === mark))),
  };
}

function pick<Value>(
  values: ReadonlyMap<string, Value> | undefined,
  features: RoomMeasure['features'],
): ReadonlyMap<string, Value> {
  const ids = new Set(features.map(({ id }) => id));
  return new Map([...(values ?? [])].filter(([id]) => ids.has(id)));
}

function openingsOf({ measure, wall }: ElevationFrame): RoomMeasure['openings'] {
  return measure.openings.filter((opening) => opening.wall === wall.id);
}

/** The floor is cut: it is the heaviest line and runs past the wall's ends. */
function drawFloorLine(frame: ElevationFrame): void {
  const spots = floorSpots(frame);
  const [[left, first], [right, last]] = [spots[0]!, spots.at(-1)!];
  const line: Spot[] = [[left - 9, first], ...spots.slice(1, -1), [right + 9, last]];
  const below = line.map(([x, y]): Spot => [x, y + 2.4]).reverse();
  frame.sheet.polygon([...line, ...below], { pen: 'fine', fill: 'ink', layer: 'cut' });
}

function drawStrings(frame: ElevationFrame): void {
  const { sheet, wall, at } = frame;
  const openings = openingsOf(frame);
  // Heights stand outside of everything, such as words longer than a narrow wall.
  const reach = sheet.bounds;
  const runStops = unique([0, wall.run, ...openings.flatMap((opening) => [opening.at, opening.at + opening.width])]);
  let below = sheet.bounds.bottom + 20;
  const onFloor = (stops: readonly number[]): Spot[] => stops.map((stop) => [at(stop, 0)[0], at(0, 0)[1] + 3]);
  if (runStops.length > 2) {
    below +=
      drawDimensions(sheet, {
        origin: [at(0, 0)[0], below],
        along: [1, 0],
        outward: [0, 1],
        stops: runStops,
        targets: onFloor(runStops),
      }) + 13;
  }
  drawDimensions(sheet, { origin: [at(0, 0)[0], below], along: [1, 0], outward: [0, 1], stops: [0, wall.run] });
  drawHeights(frame, reach);
}

function drawHeights(
  { sheet, wall, at, measure }: ElevationFrame,
  reach: { readonly left: number; readonly right: number },
): void {
  const openings = measure.openings.filter((opening) => opening.wall === wall.id);
  const first = wall.top[0]!.height;
  const last = wall.top.at(-1)!.height;
  const peak = Math.max(...wall.top.map(({ height }) => height));
  const levels = unique([0, first, ...openings.flatMap(levelsOf).filter((level) => level < first)]);
  let left = reach.left - 11;
  const edge = at(0, 0)[0];
  const onLeft = (stops: readonly number[]): Spot[] => stops.map((stop) => [edge, at(0, stop)[1]]);
  if (levels.length > 2) {
    left -=
      drawDimensions(sheet, {
        origin: [left, at(0, 0)[1]],
        along: [0, -1],
        outward: [-1, 0],
        stops: levels,
        targets: onLeft(levels),
      }) + 7;
  }
  if (first > 0) {
    drawDimensions(sheet, { origin: [left, at(0, 0)[1]], along: [0, -1], outward: [-1, 0], stops: [0, first] });
  }
  let right = reach.right + 17;
  if (Math.abs(last - first) > 1_600_000 && last > 0) {
    right +=
      drawDimensions(sheet, { origin: [right, at(0, 0)[1]], along: [0, -1], outward: [1, 0], stops: [0, last] }) + 15;
  }
  if (peak - Math.max(first, last) > 1_600_000) {
    drawDimensions(sheet, { origin: [right, at(0, 0)[1]], along: [0, -1], outward: [1, 0], stops: [0, peak] });
  }
}

/** Of an arch also where it springs, so that its rise stands in the string; of a raked head its lower end. */
function levelsOf(opening: OpeningMeasure): readonly number[] {
  const { sill, height } = opening;
  const springing = springingOf(opening);
  return [sill, sill + height, ...(springing === undefined ? [] : [sill + springing])];
}

function unique(stops: readonly number[]): number[] {
  return [...stops]
    .sort((a, b) => a - b)
    .filter((stop, index, all) => index === 0 || stop - all[index - 1]! > 1_600_000);
}

function describe(measure: RoomMeasure, wall: WallMeasure, { name, openTo, finishes, faces }: Seen): string {
  const heights = wall.top.map(({ height }) => height);
  const [low, high] = [lengthText(Math.min(...heights)), lengthText(Math.max(...heights))];
  const openings = measure.openings.filter((opening) => opening.wall === wall.id);
  const seen = openings.map(
    (opening) =>
      `${opening.mark}, ${opening.kind}, ${lengthText(opening.width)} by ${lengthText(opening.height)}${opening.shape ? `, ${shapeWords(opening) ?? ''}` : ''}${!isDownToFloor(opening) ? `, sill at ${lengthText(opening.sill)}` : ''}`,
  );
  const features = measure.features
    .filter((feature) => feature.covers.some((cover) => cover.wall === wall.id))
    .map(({ id, name: of }) => (faces.has(id) ? `${of} in ${faces.get(id) ?? ''}` : of));
  const parts = [
    `Elevation of the ${wall.id} wall of ${name}, ${lengthText(wall.run)} long${wallWords(wall)} and ${low === high ? low : `${low} to ${high}`} high.`,
    wall.arc ? 'It is drawn unfolded.' : '',
    wall.lean ? 'It is drawn in its own plane.' : '',
    openTo === undefined ? '' : `No wall stands here: open to ${openTo}.`,
    seen.length > 0 ? `Openings: ${seen.join('; ')}.` : '',
    features.length > 0 ? `Before it: ${features.join(', ')}.` : '',
    finishes.length > 0 ? `Finishes: ${[...new Set(finishes.map(({ label }) => label))].join(', ')}.` : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}
