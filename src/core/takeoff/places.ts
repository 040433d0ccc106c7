import type { FeatureMeasure, OpeningMeasure, Riser, RoomMeasure, Run, Surface, WallMeasure } from '../model/index.js';

/** A place that a selection names, found in the measured room. */
export type Place =
  | { readonly kind: 'surface'; readonly id: string; readonly name: string; readonly surface: Surface }
  | { readonly kind: 'riser'; readonly id: string; readonly name: string; readonly riser: Riser }
  | { readonly kind: 'wall'; readonly id: string; readonly name: string; readonly wall: WallMeasure }
  | { readonly kind: 'base'; readonly id: string; readonly name: string }
  | { readonly kind: 'opening'; readonly id: string; readonly name: string; readonly opening: OpeningMeasure }
  | { readonly kind: 'run'; readonly id: string; readonly name: string; readonly run: Run }
  | { readonly kind: 'count'; readonly id: string; readonly name: string; readonly count: number }
  | { readonly kind: 'feature'; readonly id: string; readonly name: string; readonly feature: FeatureMeasure };

/** Finds the places of one word of a selection's `at`. `walls`, `inside-walls`, `ceiling-steps`, `risers`, `doors`, `windows` and `openings` mean each of them;
 *  a side of the room that is open has no wall and is left out. Undefined when the room has nothing of that name. */
export function findPlaces(word: string, measure: RoomMeasure): readonly Place[] | undefined {
  const standing = measure.walls.filter((wall) => wall.openTo === undefined);
  switch (word) {
    case 'floor':
      return [{ kind: 'surface', id: 'floor', name: 'Floor', surface: measure.floor }];
    case 'ceiling':
      return [{ kind: 'surface', id: 'ceiling', name: 'Ceiling', surface: measure.ceiling }];
    case 'ceiling-steps':
      return measure.steps?.map(stepPlace);
    case 'risers':
      return measure.risers?.map(riserPlace);
    case 'inside-walls':
      return standing.filter((wall) => isInside(wall, measure)).map(wallPlace);
    case 'base':
      return [{ kind: 'base', id: 'base', name: 'Base of the walls' }];
    case 'walls':
      return standing.map(wallPlace);
    case 'openings':
      return measure.openings.map(openingPlace);
    case 'doors':
      return measure.openings.filter((opening) => opening.kind === 'door').map(openingPlace);
    case 'windows':
      return measure.openings.filter((opening) => opening.kind === 'window').map(openingPlace);
  }
  const wall = standing.find((candidate) => candidate.id === word);
  if (wall) return [wallPlace(wall)];
  const opening = measure.openings.find((candidate) => candidate.mark === word);
  if (opening) return [openingPlace(opening)];
  const step = measure.steps?.find((candidate) => candidate.id === word);
  if (step) return [stepPlace(step)];
  const riser = measure.risers?.find((candidate) => candidate.id === word);
  if (riser) return [riserPlace(riser)];
  return findFeaturePlaces(word, measure);
}

/** What is on the other side of a wall: rooms that its record names, and what its openings lead to, which may be `outside`. */
export function besideWall({ id, beside = [] }: WallMeasure, { openings }: RoomMeasure): readonly string[] {
  const led = openings.filter(({ wall }) => wall === id).map(({ to }) => to);
  return [...new Set([...beside, ...led])];
}

/** Walls of a room that have another on their other side. */
export function wallsTowards(measure: RoomMeasure, slug: string): readonly WallMeasure[] {
  return measure.walls.filter((wall) => besideWall(wall, measure).includes(slug));
}

/** Another room is on the other side, and none of its openings leads outside. */
function isInside(wall: WallMeasure, measure: RoomMeasure): boolean {
  const beside = besideWall(wall, measure);
  return beside.length > 0 && !beside.includes('outside');
}

/** Is a place a feature, or a face, a run or a count of one? `breast` is, and `breast/front`. */
export function isOn(feature: string, place: string): boolean {
  return place === feature || place.startsWith(`${feature}/`);
}

function findFeaturePlaces(word: string, measure: RoomMeasure): readonly Place[] | undefined {
  const [id, part] = word.split('/');
  const feature = measure.features.find((candidate) => candidate.id === id);
  if (!feature) return undefined;
  if (part === undefined) return [{ kind: 'feature', id: feature.id, name: feature.name, feature }];
  const surface = feature.faces.find((face) => face.id === word);
  if (surface) return [{ kind: 'surface', id: word, name: `${feature.name}, ${surface.name}`, surface }];
  const run = feature.runs.find((candidate) => candidate.id === word || candidate.id === part);
  if (run) return [{ kind: 'run', id: word, name: `${feature.name}, ${run.name}`, run }];
  const count = feature.counts.find((candidate) => candidate.id === word || candidate.id === part);
  if (count) return [{ kind: 'count', id: word, name: `${feature.name}, ${count.name}`, count: count.count }];
  return undefined;
}

function stepPlace(step: Surface): Place {
  return { kind: 'surface', id: step.id, name: step.name, surface: step };
}

function riserPlace(riser: Riser): Place {
  return { kind: 'riser', id: riser.id, name: riser.name, riser };
}

function wallPlace(wall: WallMeasure): Place {
  return { kind: 'wall', id: wall.id, name: wall.name, wall };
}

function openingPlace(opening: OpeningMeasure): Place {
  const words = { door: 'Door', window: 'Window', cased: 'Cased opening', open: 'Opening' };
  return { kind: 'opening', id: opening.mark, name: `${words[opening.kind]} ${opening.mark}`, opening };
}
