import { uprightFaces } from '../core/model/index.js';
import type { DrawnRoom } from '../core/book/index.js';
import { drawCeilingPlan } from './ceiling/index.js';
import type { DrawOptions, Drawing } from './drawing.js';
import { drawElevation } from './elevation/index.js';
import { drawStep } from './elevation/step.js';
import { breastDrawer } from './feature/chimney-breast.js';
import { edgeDrawer } from './feature/edge-section.js';
import { wallNotes } from './length-text.js';
import { drawPlan } from './plan/index.js';
import { drawSection, placeWords, sectionsOf, timbersIn } from './section/index.js';

/** A view that a room is drawn in. */
export interface RoomView {
  readonly kind: 'plan' | 'ceiling' | 'section' | 'step' | 'breast' | 'edge' | 'wall';
  /** Of the step, feature or wall, or a section's letter; `plan` and `ceiling` are their own. */
  readonly id: string;
  readonly name: string;
  /** What its subject is, where a drawing without its title block would not say so: a wall unfolded, or in its own plane. */
  readonly note?: string;
  /** `id` is what the room's drawings are told apart by where several rooms stand on a page. */
  draw(options: DrawOptions): Drawing;
}

export interface RoomViews {
  readonly plan: RoomView;
  readonly ceiling: RoomView;
  /** Those that the record has, else what shows a flight, slopes or a breast. */
  readonly sections: readonly RoomView[];
  /** Upright steps of the ceiling. */
  readonly steps: readonly RoomView[];
  /** Chimney breasts and open edges: what the walls and the plan do not say. */
  readonly features: readonly RoomView[];
  /** In the order of the walk. */
  readonly walls: readonly RoomView[];
}

/** All that is drawn of a room, with what each drawing shows. Pages, book, handouts and comparison choose among these, and say
 *  in what colours and how large. */
export function roomViews(room: DrawnRoom): RoomViews {
  const { measure, number, name, neighbours, guards, posts } = room;
  const view = (
    kind: RoomView['kind'],
    of: { readonly id: string; readonly name: string },
    key: string,
    draw: (options: DrawOptions & { readonly number: string; readonly name: string }) => Drawing,
  ): RoomView => ({
    kind,
    id: of.id,
    name: of.name,
    draw: (options) => draw({ ...options, id: `${options.id}-${key}`, number, name }),
  });
  const sections = sectionsOf(measure, room.sections);
  const marked = sections.filter(({ isChosen }) => !isChosen);
  const shownIn = timbersIn(measure, sections);
  return {
    plan: view('plan', { id: 'plan', name: 'Plan' }, 'plan', (options) =>
      drawPlan(measure, {
        ...options,
        neighbours,
        posts,
        sections: marked,
        shownIn,
        ...(room.floor && { courses: room.floor }),
      }),
    ),
    ceiling: view('ceiling', { id: 'ceiling', name: 'Ceiling' }, 'ceiling', (options) =>
      drawCeilingPlan(measure, { ...options, shownIn, ...(room.ceiling && { courses: room.ceiling }) }),
    ),
    sections: sections.map((section) => {
      const { letter, name: of, looks } = section;
      const about = { id: letter, name: `Section ${letter}: ${of}, looking ${looks}` };
      const cut = view('section', about, `section-${letter}`, (options) =>
        drawSection(measure, section, { ...options, neighbours, seen: room.seen }),
      );
      return { ...cut, note: `Cut ${placeWords(section)}. Thickness of floor, walls and ceiling as drawn.` };
    }),
    steps: uprightFaces(measure).map((step) => view('step', step, step.id, (options) => drawStep(step, options))),
    features: measure.features.flatMap((feature) => {
      const key = `feature-${feature.id}`;
      const breast = breastDrawer(feature);
      if (breast) return [view('breast', feature, key, breast)];
      const edge = edgeDrawer(feature);
      if (!edge) return [];
      return [view('edge', feature, key, (options) => edge({ ...options, ...guards.get(feature.id) }))];
    }),
    walls: measure.walls.map((wall) => {
      const [note] = wallNotes(wall);
      const elevation = view('wall', wall, `wall-${wall.id}`, (options) =>
        drawElevation(measure, wall, {
          ...options,
          neighbours,
          finishes: room.walls.get(wall.id) ?? [],
          faces: room.features,
          seen: room.seen,
          guards,
          posts,
          ...(room.beyond && { beyond: room.beyond }),
        }),
      );
      return { ...elevation, ...(note !== undefined && { note: `${note}.` }) };
    }),
  };
}
