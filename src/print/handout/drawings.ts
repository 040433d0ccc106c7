import type { DrawnRoom } from '../../core/book/index.js';
import { roomViews, type Drawing, type RoomView } from '../../draw/index.js';
import { handoutDrawnRoom, type Handout, type HandoutRoom } from '../../handout/index.js';
import { pictureOf, type PrintPicture } from '../picture.js';
import { drawForPrint, planTitle, ready, withShortNames, type Box, type PrintDrawing } from '../drawings.js';

/** The ratio beyond which figures no longer read: 1/16 of an inch to the foot, or 1:200. */
const smallest = 200;
/** No plan is larger, so that small rooms compare: 1/8 of an inch to the foot, or 1:100. */
const largest = 96;
/** Boxes in inches, all in a column, tried in turn until the least scale fits. A plan's own margin may reach out of it. */
const boxes = {
  plan: [2, 2.4, 2.8, 3.2, 3.8, 4.6].map((height) => ({ width: 3.8, height })),
  ceiling: [1.6, 2, 2.6, 3.6].map((height) => ({ width: 3.67, height })),
  step: [0.9, 1.2, 1.6, 2.2].map((height) => ({ width: 2.6, height })),
  section: [2, 2.6, 3.4].map((height) => ({ width: 3.67, height })),
  wall: [1.5, 1.9, 2.4, 3.2].map((height) => ({ width: 3.67, height })),
} as const;
/** A plan with more marks than a column holds goes across the page. */
const marksInColumn = 8;
const acrossPage = { width: 5.4, height: 4 };
/** What no column holds at the least scale. */
const acrossColumns = { width: 5, height: 3.2 };
const featureBox = { width: 3.5, height: 3.4 };
/** Of a breast two storeys high a quarter of an inch to the foot, or 1:50: a mason sets corners by it. */
const breastBox = { width: 7.2, height: 8.6 };
/** Where the plan leaves so much of the column, the picture stands beside it, its keys beneath; else by itself, its keys beside it. */
const besidePlan = { least: 1.3, most: 2.1, column: 3.67, gap: 0.12, height: 1.8 };
const pictureBox = { width: 1.9, height: 1.6 };
/** A handout of more rooms than this shows on paper only pictures that stand beside their plans: a sheet more is one more to carry. Its pages show all. */
const fewRooms = 4;

const longestName = 24;

interface RoomDrawings {
  readonly plan: PrintDrawing;
  /** With the trade's own finishes; null where none of them is seen, and of many rooms where it would stand by itself. */
  readonly picture: (PrintPicture & { readonly isBesidePlan: boolean }) | null;
  readonly others: readonly PrintDrawing[];
}

/** The plan of a room, and what else its trade needs to see: ceiling, features, walls. Ceiling, sections and walls have the plan's scale where a
 *  column has room for it. */
export function roomDrawings(room: HandoutRoom, handout: Handout): RoomDrawings {
  const { shape, slug, drawings } = room;
  const { printed } = drawings;
  const whole = handoutDrawnRoom(room, handout);
  // A plan has no mark of a section that is not on paper.
  const drawn = printed.sections ? whole : { ...whole, sections: [] };
  const views = roomViews(withShortNames(drawn, longestName));
  const needed = (list: readonly RoomView[], ids: readonly string[]) => list.filter(({ id }) => ids.includes(id));
  const isAcross = shape.openings.length > marksInColumn;
  const plan = isAcross
    ? drawForPrint(views.plan, slug, acrossPage, largest)
    : fit(views.plan, slug, boxes.plan, largest);
  const alike = (view: RoomView, tried: readonly Box[]): Drawing => fitAlike(view, slug, tried, plan.ratio);
  return {
    plan: ready(plan, planTitle),
    picture: pictureIn(drawn, slug, plan, handout.rooms.length <= fewRooms),
    others: [
      ...(printed.ceiling ? [ready(alike(views.ceiling, boxes.ceiling), 'Reflected ceiling plan')] : []),
      ...(printed.sections ? views.sections : []).map((section) =>
        ready(alike(section, boxes.section), section.name, section.note),
      ),
      ...needed(views.steps, drawings.steps).map((step) => ready(fit(step, slug, boxes.step), step.name)),
      ...needed(views.features, drawings.features).map((feature) =>
        ready(drawForPrint(feature, slug, feature.kind === 'breast' ? breastBox : featureBox), feature.name),
      ),
      ...needed(views.walls, printed.walls).map((wall) => ready(alike(wall, boxes.wall), wall.name, wall.note)),
    ],
  };
}

function pictureIn(drawn: DrawnRoom, slug: string, plan: Drawing, isAlways: boolean): RoomDrawings['picture'] {
  const { least, most, column, gap, height } = besidePlan;
  const left = column - plan.width - gap;
  const isBesidePlan = left >= least;
  if (!isBesidePlan && !isAlways) return null;
  const box = isBesidePlan ? { width: Math.min(left, most), height } : pictureBox;
  const picture = pictureOf(drawn, `${slug}-picture`, box);
  return picture && { ...picture, isBesidePlan };
}

/** The drawing in the first box that holds it at that scale, else as `fit`. */
function fitAlike(view: RoomView, id: string, tried: readonly Box[], ratio: number): Drawing {
  const drawn = tried.map((box) => drawForPrint(view, id, box, ratio));
  return drawn.find((drawing) => drawing.ratio === ratio) ?? fit(view, id, tried, ratio);
}

/** The drawing in the first box that holds it at the least scale, and no larger than `ratio`. */
function fit(view: RoomView, id: string, tried: readonly Box[], ratio?: number): Drawing {
  for (const box of tried) {
    const drawing = drawForPrint(view, id, box, ratio);
    if (drawing.ratio <= smallest) return drawing;
  }
  return drawForPrint(view, id, acrossColumns, ratio);
}
