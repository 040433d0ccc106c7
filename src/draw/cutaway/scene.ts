import { areaOf, spaceDot, type Xyz } from '../../base/geometry/index.js';
import { solidSpace, solidsOf } from '../../core/feature/index.js';
import type { FeatureMeasure, RoomMeasure } from '../../core/model/index.js';
import type { Facet } from './facet.js';
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

const kept = new WeakMap<RoomMeasure, Map<string, Scene>>();

/** The order of facets is the slow part and goes by the room's shape alone: it is worked out once for each view. `more` is what stands in the room beside
 *  its features, such as rails, and `key` tells it apart. */
export function sceneOf(measure: RoomMeasure, view: View, key: string, more: () => readonly Facet[]): Scene {
  const scenes = kept.get(measure) ?? new Map<string, Scene>();
  kept.set(measure, scenes);
  const name = `${view.azimuth} ${view.elevation} ${view.ceiling} ${key}`;
  const scene = scenes.get(name) ?? makeScene(measure, view, more());
  scenes.set(name, scene);
  return scene;
}

function makeScene(measure: RoomMeasure, view: View, more: readonly Facet[]): Scene {
  const camera = axonometry(view);
  const sides = sidesOf(measure);
  const { facets, standing, away } = shellOf(measure, sides, view, camera);
  const all = [
    ...facets,
    ...standing.flatMap((side) => openingFacets(side, measure)),
    ...measure.features.flatMap((feature) => featureFacets(feature, measure, standing)),
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
function featureFacets(feature: FeatureMeasure, measure: RoomMeasure, standing: readonly Side[]): readonly Facet[] {
  const walls = feature.covers.map(({ wall }) => wall);
  const isAway = walls.length > 0 && !walls.some((id) => standing.some(({ wall }) => wall.id === id));
  const faces = solidsOf(feature, solidSpace(measure));
  if (!isAway) return faces.map((face, i) => ({ ...face, id: `${feature.id}/${i}`, role: face.role ?? 'finish' }));
  return trace(feature);
}
