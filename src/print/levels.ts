import { isMetric, printArea, printLength } from '../base/units/index.js';
import { svgText, type SvgNode } from '../base/svg/index.js';
import { openIn, type BookRoom, type KeyLevel, type LookUp } from '../core/book/index.js';
import { drawKeyPlan, drawScaleBar, drawShade, keyPlanNotes, type Shade } from '../draw/index.js';
import { palette, ready, type PrintDrawing } from './drawings.js';

/** A level on a sheet of its own. */
export interface LevelSheet {
  readonly title: string;
  /** For the title block. */
  readonly facts: string;
  readonly plan: PrintDrawing;
  /** Scale bar and the arrow of true north. */
  readonly bar: Picture;
  readonly legend: readonly { readonly sample: Picture; readonly words: string }[];
}

/** SVG text that says nothing by itself, and how wide it is on paper in inches. */
interface Picture {
  readonly svg: string;
  readonly width: number;
}

/** Inches of a landscape sheet under its title: A4 is wider and lower. */
const sheetBox = () => (isMetric() ? { width: 10.6, height: 6.15 } : { width: 10, height: 6.45 });
/** Inches of the cover between the house's name and its people. */
const coverBox = { width: 6.3, height: 5 };
/** At the least scale that any house needs, a column of a handout is wide enough. */
const smallBox = { width: 2.6, height: 2.6 };

/** The levels, rooms with open choices marked. */
export function levelSheets(levels: readonly KeyLevel[], look: LookUp): readonly LevelSheet[] {
  const states = new Map(
    look.book.rooms.flatMap((room) => {
      const state = openIn(room, look);
      return state ? [[room.slug, state] as const] : [];
    }),
  );
  return levels.map((level, index): LevelSheet => {
    const id = `level-${index}`;
    const drawing = drawKeyPlan(level, {
      id,
      palette,
      detail: 'whole',
      bare: true,
      box: sheetBox(),
      layers: [{ rooms: states }],
    });
    const has = (shade: Shade): boolean => level.rooms.some(({ slug }) => states.get(slug) === shade);
    const bar = drawScaleBar(drawing, level.north, palette);
    return {
      title: levelTitle(level),
      facts: [
        `${printArea(level.net)} net, between finished faces`,
        `${printArea(level.gross)} gross, to the outside of the framing`,
        `${printLength(level.perimeter)} around`,
        ...keyPlanNotes(level, 'whole'),
      ].join('; '),
      plan: ready(drawing, levelTitle(level)),
      bar: { svg: svgText(bar), width: widthOf(bar) },
      legend: legends
        .filter(({ shade }) => has(shade))
        .map(({ shade, words }) => ({ sample: sampleOf(shade, id), words })),
    };
  });
}

const legends = [
  { shade: 'open', words: 'Choices are open' },
  { shade: 'due-soon', words: 'A choice is due soon' },
  { shade: 'late', words: 'A choice is late' },
] as const;

export function sampleOf(shade: Shade, id: string): Picture {
  return { svg: svgText(drawShade(shade, { id: `${id}-sample`, palette })), width: 22 / 72 };
}

function levelTitle({ name, isApart, rooms }: KeyLevel): string {
  return isApart ? `${name}, drawn apart: ${rooms.map(({ name: room }) => room).join(', ')}` : name;
}

/** The level with the largest floor among those that hang together, for the cover; null where no two rooms do. */
export function coverPlan(levels: readonly KeyLevel[]): PrintDrawing | null {
  const [largest] = levels
    .filter(({ isApart, rooms }) => !isApart && rooms.length > 1)
    .toSorted((a, b) => b.gross - a.gross);
  if (!largest) return null;
  const options = { id: 'cover', palette, detail: 'whole', bare: true, box: coverBox, layers: [] } as const;
  return ready(drawKeyPlan(largest, options), levelTitle(largest), 'Laid out from its rooms.');
}

/** Where a room lies on its level, small. */
export function locator(room: Pick<BookRoom, 'slug'>, levels: readonly KeyLevel[]): PrintDrawing | null {
  const level = levels.find(({ rooms }) => rooms.some(({ slug }) => slug === room.slug));
  if (!level) return null;
  return smallPlan(level, `here-${room.slug}`, new Map([[room.slug, 'here']]), 'this room filled');
}

/** A level with numbers, some of its rooms marked. */
export function smallPlan(level: KeyLevel, id: string, rooms: ReadonlyMap<string, Shade>, note: string): PrintDrawing {
  const options = { id, palette, detail: 'numbers', bare: true, box: smallBox, layers: [{ rooms }] } as const;
  return ready(drawKeyPlan(level, options), levelTitle(level), note);
}

/** Inches, as an SVG says it of itself. */
function widthOf({ attributes: { width } }: SvgNode): number {
  return Number.parseFloat(String(width));
}
