import { areaOf, spaceDot, type Xyz } from '../../base/geometry/index.js';
import { solidSpace } from '../../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure } from '../../core/model/index.js';
import { originalOf } from '../drawn-sheet.js';
import { solidFacets, type Facet } from './facet.js';
import { openingFacets } from './opening.js';
import { backToFront, layFacet, type Laid } from './order.js';
import { sidesOf, type Side } from './outline.js';
import { shellOf, trace } from './shell.js';
import { axonometry, type Axonometry, type View } from './view.js';

/** All that is seen of a room from one place, back to front, whatever its finishes are. */
export interface Scene {
  readonly camera: Axonometry;
  readonly laid: readonly Laid[];
  readonly standing: readonly Side[];
  /** Edges of what was taken away. */
  readonly away: readonly (readonly Xyz[])[];
}

const kept = new WeakMap<object, Map<string, Scene>>();

/** The order of facets is the slow part and goes by the room's shape alone: it is worked out once for each view. `more` is what stands in the room beside
 *  its features, such as rails, and `key` tells it apart. */
export function sceneOf(measure: RoomMeasure, view: View, key: string, more: () => readonly Facet[]): Scene {
  const original = originalOf(measure);
  const scenes = kept.get(original) ?? new Map<string, Scene>();
  kept.set(original, scenes);
  const name = `${view.azimuth} ${view.elevation} ${view.ceiling} ${key}`;
  const scene = scenes.get(name) ?? makeScene(measure, view, more());
  scenes.set(name, scene);
  return scene;
}

function makeScene(measure: RoomMeasure, view: View, more: readonly Facet[]): Scene {
  const camera = axonometry(view);
  const sides = sidesOf(measure);
  const { facets, standing, away } = shellOf(measure, sides, view, camera);
  const space = solidSpace(measure);
  const all = [
    ...facets,
    ...standing.flatMap((side) => openingFacets(side, measure)),
    ...measure.features.flatMap((feature) =>
      isAway(feature, standing) ? trace(feature) : solidFacets(feature, space),
    ),
    ...more,
  ];
  const seen = all.filter(
    ({ plane, patches }) => areaOf(patches) > 1e-6 && spaceDot(plane.faces, camera.toward) > 0.01,
  );
  return {
    camera,
    standing,
    away,
    laid: backToFront(
      seen.map((facet) => layFacet(facet, camera)),
      camera,
    ),
  };
}

/** What stands against a wall that was taken away went with it: its place on the floor is left. */
function isAway({ covers }: FeatureMeasure, standing: readonly Side[]): boolean {
  return covers.length > 0 && !covers.some((cover) => standing.some(({ wall }) => wall.id === cover.wall));
}
