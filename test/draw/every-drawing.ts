import {
  breastDrawer,
  drawCeilingPlan,
  drawPlan,
  edgeDrawer,
  printPalette,
  type Drawing,
} from '../../src/draw/index.js';
import type { DrawnCourses, SeenFinish } from '../../src/core/book/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { fromInches } from '../../src/base/units/index.js';
import { boardRules, layOut, summarize } from '../../src/core/takeoff/layout/index.js';
import { ft } from './fixtures.js';
import { neighbours } from './rooms.js';
import { drawWalls } from './walls.js';

export const base = { number: '101', name: 'Great room', palette: printPalette, neighbours };

/** Trim or a base as a room's drawings see it; without a width it has none, without an option nobody chose it yet. */
export function seenTrim(
  role: 'trim' | 'base',
  places: readonly string[],
  inches?: number,
  option?: string,
): SeenFinish {
  return {
    ...{ selection: role, category: role, trade: 'trim', role, places, name: role, facts: {}, pattern: {} },
    ...(inches !== undefined && { face: fromInches(inches) }),
    ...(option !== undefined && { option }),
  };
}

function trimOf({ openings, walls }: RoomMeasure): readonly SeenFinish[] {
  return [
    seenTrim(
      'trim',
      openings.map(({ mark }) => mark),
      3.5,
      'flat',
    ),
    seenTrim(
      'base',
      walls.map(({ id }) => id),
      5.5,
      'flat',
    ),
  ];
}

/** Boards on a ceiling or a floor, each part with courses of its own. */
function boardsOn(measure: RoomMeasure, place: 'ceiling' | 'floor'): DrawnCourses {
  const layout = layOut({
    regions: measure[place].regions.map((region, plane) => ({ ...region, plane: place === 'floor' ? 0 : plane })),
    direction: 0,
    face: ft(6.75 / 12),
    stock: [ft(8), ft(12), ft(16)],
    rules: boardRules,
  });
  const names = place === 'floor' ? ['Floor'] : measure.ceiling.facets.map(({ name }) => name);
  const planes = names.map((name, facet) => ({
    ...{ place, name, direction: 0, run: 'level', startsAt: 'the eave' },
    ...(place === 'ceiling' && { facet }),
  }));
  return { ...summarize(layout, { lay: 'boards', orderBy: 'area' }, planes), product: 'Pine shiplap 1x8' };
}

export function everyDrawing(measure: RoomMeasure, id = 'd'): Drawing[] {
  const faces = new Map(measure.features.map((feature) => [feature.id, 'Ledge stone, thin natural']));
  const finishes = new Map(
    measure.walls.map((wall) => [wall.id, wall.regions.map((region) => ({ label: 'Tallow, matte', region }))]),
  );
  const breast = measure.features.find(({ kind }) => kind === 'chimney-breast');
  const edge = measure.features.find(({ kind }) => kind === 'drop-edge');
  return [
    drawPlan(measure, { ...base, id: `${id}-plan` }),
    ...drawWalls(measure, { ...base, id: `${id}-wall` }),
    drawCeilingPlan(measure, { ...base, id: `${id}-ceiling` }),
    drawCeilingPlan(measure, { ...base, id: `${id}-boards`, courses: boardsOn(measure, 'ceiling') }),
    drawPlan(measure, { ...base, id: `${id}-floor`, courses: boardsOn(measure, 'floor') }),
    ...drawWalls(measure, { ...base, id: `${id}-finish`, finishes, faces, seen: trimOf(measure) }),
    ...[breast && breastDrawer(breast)?.({ ...base, id: `${id}-breast` })].filter((drawing) => drawing !== undefined),
    ...[
      edge && edgeDrawer(edge)?.({ ...base, id: `${id}-edge`, guardHeight: ft(3.5), guard: 'Steel cable rail' }),
    ].filter((drawing) => drawing !== undefined),
  ];
}
