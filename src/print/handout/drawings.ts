import {
  drawCeilingPlan,
  drawChimneyBreast,
  drawEdgeSection,
  drawElevation,
  drawPlan,
  drawStep,
} from '../../draw/index.js';
import type { DrawOptions, Drawing } from '../../draw/index.js';
import type { Handout, HandoutRoom } from '../../handout/index.js';
import { svgText } from '../../svg/index.js';
import { inchesPerFoot, palette } from '../drawings.js';
import type { PrintDrawing } from '../drawings.js';
import { shorten } from '../shorten.js';

/** Inches of paper for a foot of house below which the figures no longer read. */
const leastScale = 1 / 16;
/** Boxes in inches, all in a column, tried in turn until the least scale fits. */
const boxes = {
  plan: [2, 2.4, 2.8, 3.2, 3.8, 4.6].map((height) => ({ width: 3.67, height })),
  ceiling: [1.6, 2, 2.6, 3.6].map((height) => ({ width: 2.6, height })),
  step: [0.9, 1.2, 1.6, 2.2].map((height) => ({ width: 2.6, height })),
  wall: [1.5, 1.9, 2.4, 3.2].map((height) => ({ width: 3.67, height })),
} as const;
/** A plan with more marks than a column holds goes across the page. */
const marksInColumn = 8;
const acrossPage = { width: 5.4, height: 3.6 };
/** What no column holds at the least scale. */
const acrossColumns = { width: 5, height: 3.2 };
const featureBox = { width: 3.5, height: 3.4 };

const longestName = 24;

export interface RoomDrawings {
  readonly plan: PrintDrawing;
  readonly others: readonly PrintDrawing[];
}

/** The plan of a room, and what else its trade needs to see: ceiling, features, walls. */
export function roomDrawings(room: HandoutRoom, { roomNames }: Handout): RoomDrawings {
  const { shape, number, slug, drawings } = room;
  const look = { palette, number, name: shorten(room.name, longestName), bare: true };
  const neighbours = new Map<string, string>(roomNames.map((one) => [one.slug, shorten(one.name, longestName)]));
  const { ceiling, floor } = drawings.courses;
  const planOf = (box: NonNullable<DrawOptions['box']>) =>
    drawPlan(shape, { ...look, id: `plan-${slug}`, neighbours, box, ...(floor && { courses: floor }) });
  const plan = shape.openings.length > marksInColumn ? planOf(acrossPage) : fit('plan', planOf);
  const guards = new Map(drawings.guards.map(({ at, guard }) => [at, guard]));
  const faces = new Map(drawings.finishes.map(({ at, label }) => [at, label]));
  const features = shape.features.filter(({ id }) => drawings.features.includes(id));
  return {
    plan: ready(plan, 'Plan, north up'),
    others: [
      ...(drawings.printed.ceiling
        ? [
            ready(
              fit('ceiling', (box) =>
                drawCeilingPlan(shape, { ...look, id: `ceiling-${slug}`, box, ...(ceiling && { courses: ceiling }) })),
              'Reflected ceiling plan',
            ),
          ]
        : []),
      ...(shape.steps ?? [])
        .filter(({ id }) => drawings.steps.includes(id))
        .map((step) =>
          ready(
            fit('step', (box) => drawStep(step, { ...look, id: `${slug}-${step.id}`, box })),
            step.name,
          ),
        ),
      ...features.flatMap((feature) => {
        const options = { ...look, id: `feature-${slug}-${feature.id}`, box: featureBox };
        const drawing =
          drawChimneyBreast(feature, options) ?? drawEdgeSection(feature, { ...options, ...guards.get(feature.id) });
        return drawing ? [ready(drawing, feature.name)] : [];
      }),
      ...shape.walls
        .filter(({ id }) => drawings.printed.walls.includes(id))
        .flatMap((wall) => {
          const label = drawings.finishes.find((finish) => finish.at === wall.id)?.label;
          const finishes = label === undefined ? [] : wall.regions.map((region) => ({ label, region }));
          const options = { ...look, id: `wall-${slug}-${wall.id}`, neighbours, finishes, faces, guards };
          const drawing = fit('wall', (box) => drawElevation(shape, wall.id, { ...options, box }));
          return drawing ? [ready(drawing, wall.name)] : [];
        }),
    ],
  };
}

/** The drawing in the first box that holds it at the least scale. */
function fit<Made extends Drawing | undefined>(
  kind: keyof typeof boxes,
  draw: (box: NonNullable<DrawOptions['box']>) => Made,
): Made {
  for (const box of boxes[kind]) {
    const drawing = draw(box);
    if (!drawing || inchesPerFoot(drawing.scale) >= leastScale) return drawing;
  }
  return draw(acrossColumns);
}

function ready({ svg, description, scale, width, height }: Drawing, title: string): PrintDrawing {
  return { svg: svgText(svg), alt: description, title, scale, width, height, note: '' };
}
