import {
  drawCutaway,
  drawKeyPlan,
  roomViews,
  screenPalette,
  type Cutaway,
  type Drawing,
  type RoomView,
  type Shade,
} from '../../draw/index.js';
import { handoutDrawnRoom, type Handout, type HandoutLevel, type HandoutRoom } from '../../handout/index.js';
import { drawForPage, planWithCeiling } from '../drawings.js';

/** The drawings of a room that its trade needs: plan, ceiling, features and every wall concerned. */
export function drawHandoutRoom(room: HandoutRoom, handout: Handout): readonly Drawing[] {
  const { drawings } = room;
  const { plan, ceiling, sections, steps, features, walls } = roomViews(handoutDrawnRoom(room, handout));
  const needed = (views: readonly RoomView[], ids: readonly string[]) => views.filter(({ id }) => ids.includes(id));
  return [
    ...(drawings.ceiling ? planWithCeiling(plan, ceiling) : [drawForPage(plan)]),
    ...[
      ...sections,
      ...needed(steps, drawings.steps),
      ...needed(features, drawings.features),
      ...needed(walls, drawings.walls),
    ].map((view) =>
      view.kind === 'breast'
        ? view.draw({ id: 'draw', palette: screenPalette, medium: 'screen', box: breastBox })
        : drawForPage(view),
    ),
  ];
}

/** Of a breast two storeys high a quarter of an inch to the foot, or 1:50: a mason sets corners by it. */
const breastBox = { width: 8, height: 9 };

/** A room with what its trade puts there, the rest plain; undefined where nothing of that is seen. */
export function drawHandoutPicture(room: HandoutRoom, handout: Handout): Cutaway | undefined {
  const picture = drawCutaway(handoutDrawnRoom(room, handout), { id: 'look', palette: screenPalette });
  return picture.keys.length === 0 ? undefined : picture;
}

/** A level small, with the trade's rooms marked, and of these the one that is read filled. Those of them lead to their pages. */
export function drawHandoutLevel(
  level: HandoutLevel,
  { rooms }: Handout,
  { here, linkOf }: { readonly here?: HandoutRoom; readonly linkOf: (room: HandoutRoom) => string },
): Drawing {
  const own = new Map(rooms.map((room) => [room.slug as string, room]));
  const shades = new Map([...own].map(([slug, room]): [string, Shade] => [slug, room === here ? 'here' : 'trade']));
  return drawKeyPlan(level, {
    id: `level-${level.level}-${level.rooms[0]?.slug ?? ''}`,
    palette: screenPalette,
    detail: 'numbers',
    bare: true,
    box: { width: 2.8, height: 3.6 },
    layers: [{ rooms: shades }],
    linkOf: (slug) => {
      const room = own.get(slug);
      return room && { href: linkOf(room), words: `${room.number} ${room.name}` };
    },
  });
}
