import { featureGroup, type PlaceGroup } from '../feature/index.js';
import type { BookRoom, BookSelection } from './book.js';

export const placeGroups: readonly PlaceGroup[] = [
  'fireplace',
  'ceiling',
  'walls',
  'floor',
  'openings',
  'stairs',
  'timber',
  'built-ins',
];

/** Where in its room a selection is looked for: by the first place that it covers. */
export function placeGroup(
  { places }: Pick<BookSelection, 'places'>,
  { measure }: Pick<BookRoom, 'measure'>,
): PlaceGroup {
  const id = places[0]?.id ?? '';
  const [whole = ''] = id.split('/');
  if (measure.openings.some(({ mark }) => mark === whole)) return 'openings';
  const feature = measure.features.find((each) => each.id === whole);
  if (feature) return featureGroup(feature);
  if (measure.walls.some((wall) => wall.id === whole)) return 'walls';
  return id === 'floor' || id === 'base' ? 'floor' : 'ceiling';
}
