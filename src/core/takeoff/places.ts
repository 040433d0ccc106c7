import {
  knownAround,
  surfaceOnly,
  type FeatureMeasure,
  type OpeningMeasure,
  type Riser,
  type RoomMeasure,
  type Run,
  type Surface,
  type WallMeasure,
  type WallStretch,
} from '../model/index.js';

/** A place that a selection names, found in the measured room. */
export type Place =
  | {
      readonly kind: 'surface';
      readonly id: string;
      readonly name: string;
      readonly surface: Surface;
      readonly part?: 'under-roof';
    }
  | { readonly kind: 'riser'; readonly id: string; readonly name: string; readonly riser: Riser }
  | {
      readonly kind: 'wall';
      readonly id: string;
      readonly name: string;
      readonly wall: WallMeasure;
      /** What of the wall it is; absent: all of it. */
      readonly part?: { readonly side: WallSide; readonly surface: Surface };
    }
  | { readonly kind: 'base'; readonly id: string; readonly name: string }
  | { readonly kind: 'opening'; readonly id: string; readonly name: string; readonly opening: OpeningMeasure }
  | { readonly kind: 'run'; readonly id: string; readonly name: string; readonly run: Run }
  | { readonly kind: 'count'; readonly id: string; readonly name: string; readonly count: number }
  | { readonly kind: 'feature'; readonly id: string; readonly name: string; readonly feature: FeatureMeasure };

export type WallSide = 'outside' | 'inside';

/** What a place that is no whole wall or ceiling is, in words that stand beside its figures. */
export const partWords = {
  outside: 'the part that stands outside',
  inside: 'the part with a room behind it',
  'under-roof': 'the part that lies under the roof',
} as const;
export type PlacePart = keyof typeof partWords;

/** Undefined where a place is all of what it is called by. */
export function partOf(place: Place): PlacePart | undefined {
  if (place.kind === 'wall') return place.part?.side;
  return place.kind === 'surface' ? place.part : undefined;
}

/** Whether two places by one id have something in common: the two parts of a wall have not. */
export function meet(one: Place, other: Place): boolean {
  const [a, b] = [partOf(one), partOf(other)];
  return one.id === other.id && (a === undefined || b === undefined || a === b);
}

/** Words for places that follow from where the room stands in the house. */
export const laidWords = ['inside-walls', 'outside-walls', 'roof-ceiling'] as const;

export function isLaidWord(word: string): boolean {
  return laidWords.some((laid) => laid === word);
}

/** Finds the places of one word of a selection's `at`. `walls`, `inside-walls`, `outside-walls`, `ceiling-steps`, `risers`, `doors`, `windows` and `openings`
 *  mean each of them; a side of the room that is open has no wall and is left out. Undefined when the room has nothing of that name. */
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
      return standing.flatMap((wall) => sidePlace('inside', wall, measure) ?? []);
    case 'outside-walls':
      return standing.flatMap((wall) => sidePlace('outside', wall, measure) ?? []);
    case 'roof-ceiling':
      return roofPlaces(measure);
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

/** What is on the other side of a wall: rooms that stand behind it as the house is laid out, or else that its record names; and what its openings
 *  lead to, which may be `outside`. */
export function besideWall(wall: WallMeasure, measure: RoomMeasure): readonly string[] {
  const led = measure.openings.filter((opening) => opening.wall === wall.id).map(({ to }) => to);
  const behind = stretchesOf(wall, measure)?.flatMap((stretch) => stretch.behind?.room ?? []);
  return [...new Set([...(behind ?? wall.beside ?? []), ...led])];
}

/** All that stands behind a wall, on its own level and on others; undefined where that is not laid out, as behind an arc. */
export function stretchesOf(
  { id, arc }: Pick<WallMeasure, 'id' | 'arc'>,
  measure: Pick<RoomMeasure, 'around'>,
): readonly WallStretch[] | undefined {
  if (arc) return undefined;
  const found = knownAround(measure)?.walls.find(({ wall }) => wall === id);
  return found && [...found.stretches, ...(found.otherLevels ?? [])];
}

/** Ids of another room's walls that stand against a wall of this one; where that is not laid out, of all that are towards this room. */
export function wallsAgainst(wall: WallMeasure, measure: RoomMeasure, other: RoomMeasure): readonly string[] {
  const laid = stretchesOf(wall, measure)?.flatMap(({ behind }) => (behind?.room === other.room ? [behind.wall] : []));
  if (laid && laid.length > 0) return laid;
  return other.walls.filter((each) => besideWall(each, other).includes(measure.room)).map(({ id }) => id);
}

/** A wall, or what of it stands outside or has a room behind it. Where the room is not laid out a wall is all of one kind: one with an opening to
 *  outside is an outside wall, one that another room is known to be behind is an inside wall. */
function sidePlace(side: WallSide, wall: WallMeasure, measure: RoomMeasure): Place | undefined {
  const around = knownAround(measure);
  if (around) {
    const [outside, inside] = [around.outside, around.inside].map((parts) => parts.find(({ id }) => id === wall.id));
    const surface = side === 'outside' ? outside : inside;
    if (outside && inside && surface) return { ...wallPlace(wall), part: { side, surface } };
    return (outside === undefined) === (side === 'inside') ? wallPlace(wall) : undefined;
  }
  const beside = besideWall(wall, measure);
  const isOutside = beside.includes('outside');
  return (side === 'outside' ? isOutside : beside.length > 0 && !isOutside) ? wallPlace(wall) : undefined;
}

/** What of the ceiling lies under the roof; of a room that is not laid out, the ceiling where it slopes. */
function roofPlaces({ ceiling, around }: RoomMeasure): readonly Place[] {
  const whole = { kind: 'surface', id: ceiling.id, name: ceiling.name, surface: surfaceOnly(ceiling) } as const;
  const known = knownAround({ ...(around && { around }) });
  if (!known) return ceiling.facets.some(({ slope }) => slope !== 0) ? [whole] : [];
  const { underRoof } = known;
  if (!underRoof) return [];
  const isWhole = underRoof.gross >= ceiling.gross - 0.01;
  return isWhole
    ? [whole]
    : [{ ...whole, name: `${ceiling.name} under the roof`, surface: underRoof, part: 'under-roof' }];
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

function wallPlace(wall: WallMeasure): Extract<Place, { kind: 'wall' }> {
  return { kind: 'wall', id: wall.id, name: wall.name, wall };
}

function openingPlace(opening: OpeningMeasure): Place {
  const words = { door: 'Door', window: 'Window', cased: 'Cased opening', open: 'Opening' };
  return { kind: 'opening', id: opening.mark, name: `${words[opening.kind]} ${opening.mark}`, opening };
}
