import {
  drawCeilingPlan,
  drawChimneyBreast,
  drawEdgeSection,
  drawElevation,
  drawPlan,
  screenPalette,
} from '../../draw/index.js';
import type { Drawing } from '../../draw/index.js';
import type { Handout, HandoutRoom } from '../../handout/index.js';

/** The drawings of a room that its trade needs: plan, ceiling, features and every wall concerned. */
export function drawHandoutRoom(room: HandoutRoom, { roomNames }: Handout): readonly Drawing[] {
  const { shape, number, name, drawings } = room;
  const look = { palette: screenPalette, number, name };
  const neighbours = new Map(Object.entries(roomNames));
  return [
    drawPlan(shape, { ...look, id: 'draw-plan', neighbours }),
    ...(drawings.ceiling ? [drawCeilingPlan(shape, { ...look, id: 'draw-ceiling' })] : []),
    ...shape.features
      .filter(({ id }) => drawings.features.includes(id))
      .flatMap((feature) => {
        const options = { ...look, id: `draw-feature-${feature.id}` };
        return drawChimneyBreast(feature, options) ?? drawEdgeSection(feature, options) ?? [];
      }),
    ...shape.walls
      .filter(({ id }) => drawings.walls.includes(id))
      .flatMap((wall) => {
        const label = drawings.finishes.find((finish) => finish.wall === wall.id)?.label;
        const finishes = label === undefined ? [] : wall.regions.map((region) => ({ label, region }));
        return drawElevation(shape, wall.id, { ...look, id: `draw-wall-${wall.id}`, neighbours, finishes }) ?? [];
      }),
  ];
}
