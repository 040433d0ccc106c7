import { roomViews, type Drawing, type RoomView } from '../../draw/index.js';
import { handoutDrawnRoom, type Handout, type HandoutRoom } from '../../handout/index.js';
import { drawForPage } from '../drawings.js';

/** The drawings of a room that its trade needs: plan, ceiling, features and every wall concerned. */
export function drawHandoutRoom(room: HandoutRoom, handout: Handout): readonly Drawing[] {
  const { drawings } = room;
  const { plan, ceiling, steps, features, walls } = roomViews(handoutDrawnRoom(room, handout));
  const needed = (views: readonly RoomView[], ids: readonly string[]) => views.filter(({ id }) => ids.includes(id));
  return [
    plan,
    ...(drawings.ceiling ? [ceiling] : []),
    ...needed(steps, drawings.steps),
    ...needed(features, drawings.features),
    ...needed(walls, drawings.walls),
  ].map((view) => drawForPage(view));
}
