import { bounds, convexPieces, stretchesIn, type Patch } from '../../base/geometry/index.js';
import { feet } from '../../base/units/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import { timberOf } from '../../core/feature/index.js';
import type { RoomMeasure } from '../../core/model/index.js';
import { railsKey } from '../cutaway/railing.js';
import { drawBreak } from '../break-line.js';
import type { Spot } from '../convex.js';
import type { DrawOptions, Drawing } from '../drawing.js';
import type { Title } from '../drawn-sheet.js';
import { fitDrawing } from '../issue.js';
import { sizes } from '../pen.js';
import type { Sheet, Stroke } from '../sheet.js';
import type { Seen } from './beyond.js';
import type { LetteredSection } from './choose.js';
import { drawHeights, drawWidths } from './dimensions.js';
import { labelBodies } from './labels.js';
import { pointsInFoot, ringsOn, spotOn } from './on-sheet.js';
import { sectionScene, type SectionScene } from './scene.js';
import type { Gap } from './shell-cut.js';
import { describeSection, sectionNotes, sectionTitle } from './words.js';

export { lineInPlan, sectionsOf, type LetteredSection } from './choose.js';
export { timbersIn } from './shown-in.js';
export { placeWords } from './words.js';

export interface SectionOptions extends DrawOptions {
  /** Number and name of the room, for the title. */
  readonly number: string;
  readonly name: string;
  /** Finishes as a picture of the room shows them: its rails are seen. */
  readonly seen?: readonly SeenFinish[];
  /** Slug to name of the rooms that this one is open to. */
  readonly neighbours?: ReadonlyMap<string, string>;
}

/** A room cut through, to scale: what is cut is solid, what is seen beyond is lines. */
export function drawSection(measure: RoomMeasure, section: LetteredSection, options: SectionOptions): Drawing {
  const { number, name, seen = [], neighbours } = options;
  let made: SectionScene | undefined;
  const scene = (): SectionScene => (made ??= sectionScene(measure, section, seen));
  const openTo = new Map(
    measure.walls.flatMap(({ openTo: slug }) => (slug === undefined ? [] : [[slug, neighbours?.get(slug) ?? slug]])),
  );
  const shows = { number, name, section, openTo, rails: railsKey(seen) };
  const draw = (sheet: Sheet): Title => {
    drawSeen(sheet, scene());
    drawCut(sheet, scene());
    for (const gap of scene().shell.gaps) drawGap(sheet, gap);
    labelBodies(sheet, measure, scene());
    labelOpenEnds(sheet, scene(), openTo);
    drawWidths(sheet, scene());
    drawHeights(sheet, measure, scene());
    return {
      title: sectionTitle(section, { number, name }),
      description: describeSection(measure, section, scene(), name),
      notes: sectionNotes(measure, section, scene()),
    };
  };
  return fitDrawing({ of: measure, view: `section/${section.letter}`, shows, largest: 24, draw }, options);
}

function drawSeen(sheet: Sheet, { seen }: SectionScene): void {
  for (const one of seen)
    for (const patch of one.patches) sheet.region(ringsOn(sheet, patch), { ...lookOf(one), layer: 'fill' });
}

function lookOf({ facet: { role, side, tint }, isShell }: Seen): Stroke {
  switch (role) {
    case 'glass':
      return { pen: 'hair', color: 'ink', fill: 'glass' };
    case 'hollow':
      return { pen: 'fine', fill: 'deep' };
    case 'rail':
      // What is not decided yet is an outline.
      return { pen: 'hair', color: 'ink', quiet: true, ...(tint ? { fill: 'paper' } : { dash: 'hidden' }) };
    case 'beyond':
      return { pen: 'fine', fill: 'paper', ...(side && { dash: 'open' as const }) };
    case 'frame':
    case 'door':
      return { pen: 'hair', color: 'ink', fill: 'paper' };
    default:
      return { pen: 'fine', fill: isShell ? 'paper' : 'tone' };
  }
}

function drawCut(sheet: Sheet, { bodies, poche }: SectionScene): void {
  for (const { feature, shown } of bodies) {
    const timber = timberOf(feature);
    const section = timber ? feet(timber.width) * feet(timber.depth) : 0;
    for (const patch of shown) {
      const isAcross = timber !== undefined && patch.outline.length === 4 && areaNear(patch, section);
      sheet.region(ringsOn(sheet, patch), { pen: 'cut', fill: isAcross ? 'paper' : 'deep', layer: 'cut' });
      if (isAcross) drawCross(sheet, patch);
    }
  }
  for (const patch of poche) {
    sheet.region(ringsOn(sheet, patch), { pen: 'cut', fill: 'poche', layer: 'cut' });
    // Words keep off it, also those that stand on a ground.
    for (const piece of convexPieces(patch)) sheet.reserve(piece.outline.map((corner) => spotOn(sheet, corner)));
  }
}

/** Is it the end of a stick, and not one that is cut along? */
function areaNear({ outline }: Patch, section: number): boolean {
  const { west, east, south, north } = bounds(outline);
  return (east - west) * (north - south) < 1.6 * section;
}

/** How timber is marked where it is cut across its grain. */
function drawCross(sheet: Sheet, { outline }: Patch): void {
  const [a, b, c, d] = outline.map((corner) => spotOn(sheet, corner)) as [Spot, Spot, Spot, Spot];
  sheet.polyline([a, c], { pen: 'fine', layer: 'cut' });
  sheet.polyline([b, d], { pen: 'fine', layer: 'cut' });
}

/** Thickness of a leaf and of glass with its frame, in feet. As drawn. */
const fillThickness = { door: 1.75 / 12, window: 2 / 12 };

/** A leaf stands at the inner face, glass in the middle of its wall. */
function drawGap(sheet: Sheet, { opening, inner, outer, sill, head }: Gap): void {
  if (opening.kind !== 'door' && opening.kind !== 'window') return;
  const out = Math.sign(outer - inner);
  const thick = Math.min(fillThickness[opening.kind], Math.abs(outer - inner));
  const start = opening.kind === 'door' ? inner : (inner + outer) / 2 - (out * thick) / 2;
  const corners = [
    { x: start, y: sill },
    { x: start + out * thick, y: sill },
    { x: start + out * thick, y: head },
    { x: start, y: head },
  ];
  const fill = opening.kind === 'door' ? 'paper' : 'glass';
  sheet.polygon(
    corners.map((corner) => spotOn(sheet, corner)),
    { pen: 'fine', fill, layer: 'cut' },
  );
}

/** `open to Dining` where the room goes on without a wall, along a line of dashes. */
function labelOpenEnds(sheet: Sheet, scene: SectionScene, openTo: ReadonlyMap<string, string>): void {
  for (const { left, right, floor, ceiling } of scene.shell.spaces)
    for (const [end, foot, top] of [
      [left, floor[0], ceiling[0]],
      [right, floor.at(-1), ceiling.at(-1)],
    ] as const) {
      if (!end?.side.isOpen || !foot || !top) continue;
      const { x, width, side } = end;
      const outer = x + width;
      const rise = thicknessAt(scene, outer - Math.sign(width) * 0.01);
      for (const [low, high] of rise)
        drawBreak(sheet, spotOn(sheet, { x: outer, y: (low + high) / 2 }), (high - low) * pointsInFoot(sheet));
      const line = [foot.height, top.height].map((y) => spotOn(sheet, { x, y }));
      sheet.polyline(line, { pen: 'fine', dash: 'open', color: 'ink', layer: 'cut' });
      const words = `open to ${openTo.get(side.wall.openTo ?? '') ?? ''}`;
      const middle = (foot.height + top.height) / 2;
      const places = [0.5, 0.9, 1.3].map((share): Spot => {
        const [at, y] = spotOn(sheet, { x: x + width * share, y: middle });
        return [at + 2.5, y];
      });
      sheet.tryWrite(places, words, { size: sizes.note, color: 'muted', turn: -90, ground: 'paper' });
    }
}

/** From where to where floor and ceiling go at a place. */
function thicknessAt({ poche }: SectionScene, x: number): readonly (readonly [number, number])[] {
  return poche.flatMap(({ outline, holes }) =>
    stretchesIn([outline, ...holes], { x, y: 0 }, { x: 0, y: 1 }).map(({ from, to }) => [from, to] as const),
  );
}
