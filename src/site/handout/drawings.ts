import {
  drawCeilingPlan,
  drawChimneyBreast,
  drawEdgeSection,
  drawElevation,
  drawPlan,
  drawStep,
  screenPalette,
} from '../../draw/index.js';
import type { Drawing } from '../../draw/index.js';
import type { Handout, HandoutRoom } from '../../handout/index.js';

/** The drawings of a room that its trade needs: plan, ceiling, features and every wall concerned. */
export function drawHandoutRoom(room: HandoutRoom, { roomNames }: Handout): readonly Drawing[] {
  const { shape, number, name, drawings } = room;
  const look = { palette: screenPalette, number, name };
  const neighbours = new Map<string, string>(roomNames.map(({ slug, name: called }) => [slug, called]));
  const { ceiling, floor } = drawings.courses;
  const guards = new Map(drawings.guards.map(({ at, guard }) => [at, guard]));
  const faces = new Map(drawings.finishes.map(({ at, label }) => [at, label]));
  return [
    drawPlan(shape, { ...look, id: 'draw-plan', neighbours, ...(floor && { courses: floor }) }),
    ...(drawings.ceiling
      ? [drawCeilingPlan(shape, { ...look, id: 'draw-ceiling', ...(ceiling && { courses: ceiling }) })]
      : []),
    ...(shape.steps ?? [])
      .filter(({ id }) => drawings.steps.includes(id))
      .map((step) => drawStep(step, { ...look, id: `draw-${step.id}` })),
    ...shape.features
      .filter(({ id }) => drawings.features.includes(id))
      .flatMap((feature) => {
        const options = { ...look, id: `draw-feature-${feature.id}` };
        return (
          drawChimneyBreast(feature, options) ??
          drawEdgeSection(feature, { ...options, ...guards.get(feature.id) }) ??
          []
        );
      }),
    ...shape.walls
      .filter(({ id }) => drawings.walls.includes(id))
      .flatMap((wall) => {
        const label = drawings.finishes.find((finish) => finish.at === wall.id)?.label;
        const finishes = label === undefined ? [] : wall.regions.map((region) => ({ label, region }));
        return (
          drawElevation(shape, wall.id, { ...look, id: `draw-wall-${wall.id}`, neighbours, finishes, faces, guards }) ??
          []
        );
      }),
  ];
}
