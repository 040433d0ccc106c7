import type { DrawnGuard, DrawnPost } from '../../core/book/index.js';
import { faceMarks, type FaceMark, type Spot as MarkSpot } from '../../core/feature/index.js';
import type { FeatureMeasure } from '../../core/model/index.js';
import type { Spot } from '../convex.js';
import { lengthText } from '../length-text.js';
import { sizes } from '../pen.js';
import type { ElevationFrame } from './frame.js';

type Mark<Role extends FaceMark['role']> = Extract<FaceMark, { readonly role: Role }>;

/** Draws what of a feature stands on or before the wall; returns what writes its words, with its finish, once all lines
 *  stand. */
export function drawFeatureFace(
  frame: ElevationFrame,
  feature: FeatureMeasure,
  seen: Selected,
): readonly (() => void)[] {
  return faceMarks(feature, frame.wall.id).flatMap((mark) => drawMark(frame, feature, mark, seen) ?? []);
}

/** What an elevation shows of the selections at a feature. */
interface Selected {
  readonly finish: string | undefined;
  readonly guard: DrawnGuard | undefined;
  /** Of the guard. */
  readonly posts: readonly DrawnPost[];
}

function drawMark(
  frame: ElevationFrame,
  feature: FeatureMeasure,
  mark: FaceMark,
  { finish, guard, posts }: Selected,
): (() => void) | undefined {
  const { sheet } = frame;
  switch (mark.role) {
    case 'mass':
    case 'body':
      return drawWhole(frame, feature, mark, finish);
    case 'guard':
      return drawGuard(frame, feature, mark, { guard, posts });
    case 'opening':
      sheet.polygon(spots(frame, mark.outline), { pen: 'object', fill: 'poche', layer: 'object' });
      return undefined;
    case 'plinth':
      sheet.polygon(spots(frame, mark.outline), { pen: 'fine', fill: 'tone', layer: 'object' });
      return undefined;
    case 'slab':
      sheet.polygon(spots(frame, mark.outline), { pen: 'fine', fill: 'paper', layer: 'object' });
      return undefined;
    case 'inset':
      sheet.polygon(spots(frame, mark.outline), { pen: 'hair', color: 'ink', layer: 'object' });
      return undefined;
  }
}

function spots({ at }: ElevationFrame, outline: readonly MarkSpot[]): Spot[] {
  return outline.map(({ x, y }) => at(x, y));
}

function drawWhole(
  frame: ElevationFrame,
  feature: FeatureMeasure,
  { role, outlines }: Mark<'mass' | 'body'>,
  finish: string | undefined,
): (() => void) | undefined {
  const fill = role === 'mass' ? 'deep' : 'tone';
  frame.sheet.region(
    outlines.map((outline) => spots(frame, outline)),
    { pen: 'object', fill, layer: 'object' },
  );
  const cover = feature.covers.find(({ wall }) => wall === frame.wall.id);
  if (cover === undefined) return undefined;
  const box = { left: cover.from, right: cover.to, bottom: cover.sill ?? 0, top: cover.height };
  return () => writeName(frame, feature, finish, box, fill);
}

/** True where the wall is the open side that a feature falls from. */
export function isGuarded(feature: FeatureMeasure, wall: { readonly id: string }): boolean {
  return faceMarks(feature, wall.id).some(({ role }) => role === 'guard');
}

/** A guard before the open side: rail and posts, without a figure where no height is known. */
function drawGuard(
  { sheet, at }: ElevationFrame,
  feature: FeatureMeasure,
  { from, to }: Mark<'guard'>,
  { guard, posts }: Pick<Selected, 'guard' | 'posts'>,
): () => void {
  const run = to - from;
  const top = guard?.guardHeight ?? 3.5 * 304_800_000;
  for (const height of [top, top - 3 * 25_400_000, 4 * 25_400_000])
    sheet.polyline([at(from, height), at(from + run, height)], {
      pen: 'fine',
      color: 'accent',
      dash: 'hidden',
      layer: 'object',
    });
  for (const post of posts) {
    const along = from + post.at;
    sheet.polyline([at(along, 0), at(along, top)], {
      pen: 'fine',
      color: 'accent',
      dash: 'hidden',
      layer: 'object',
      quiet: true,
    });
  }
  const height = guard?.guardHeight === undefined ? '' : `, ${lengthText(guard.guardHeight)} high`;
  const words = `${feature.name}: ${guard ? `${guard.guard}${height}` : 'guard as selected'}`;
  return () => {
    const [x, y] = at(from + run / 2, top / 2);
    sheet.tryWrite(
      [
        [x, y + 2.5],
        [x, y - 8],
        [x, y + 12],
      ],
      words,
      { size: sizes.note, color: 'accent', ground: 'paper' },
    );
  };
}

/** Name and finish in the face, in two lines; else beside it, in one. */
function writeName(
  { sheet, at }: ElevationFrame,
  { name }: FeatureMeasure,
  finish: string | undefined,
  box: { left: number; right: number; bottom: number; top: number },
  ground: 'deep' | 'tone',
): void {
  const [left, top] = at(box.left, box.top);
  const [right, bottom] = at(box.right, box.bottom);
  const middle = (left + right) / 2;
  const look = { size: sizes.note, color: 'muted', ground } as const;
  const finishLook = { ...look, color: 'text' } as const;
  const wide = (words: string): boolean => sheet.textBox([0, 0], words, look)[1]![0] * 2 < right - left - 6;
  const shares = [0.3, 0.5, 0.22, 0.4, 0.7, 0.8, 0.12];
  const inside = shares
    .map((share): Spot => [middle, top + (bottom - top) * share + 2.5])
    .filter((spot) => spot[1] - 6 > top && spot[1] + 2 < bottom);
  if (finish !== undefined && wide(name) && wide(finish)) {
    const place = inside.find(
      ([x, y]) =>
        y + 11 < bottom &&
        sheet.isFree(sheet.textBox([x, y], name, look)) &&
        sheet.isFree(sheet.textBox([x, y + 9], finish, look)),
    );
    if (place) {
      sheet.write(place, name, look);
      sheet.write([place[0], place[1] + 9], finish, finishLook);
      return;
    }
  }
  const words = finish === undefined ? name : `${name}: ${finish}`;
  if (wide(words) && sheet.tryWrite(inside, words, look)) return;
  const outside: Spot[] = [
    [middle, top - 4],
    [middle, bottom + 9],
  ];
  if (finish === undefined && wide(name) && sheet.tryWrite(inside, name, look)) return;
  if (sheet.tryWrite(outside, words, { ...look, ground: 'paper' })) return;
  if (wide(name) && sheet.tryWrite(inside, name, look)) return;
  sheet.tryWrite(outside, name, { ...look, ground: 'paper' });
}
