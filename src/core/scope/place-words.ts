import { placeText } from '../takeoff/index.js';
import type { RoomMeasure } from '../model/index.js';
import type { Spot } from './spot.js';

/** Places of one room as people say them: all of its walls are 'Walls'. */
export function placeWords(spots: readonly Spot[], measure: RoomMeasure | undefined): string {
  const places = spots.map(({ place }) => place);
  const walls = places.filter(({ kind }) => kind === 'wall');
  const standing = measure?.walls.filter(({ openTo }) => openTo === undefined) ?? [];
  return placeText(standing.length > 1 && walls.length === standing.length ? ['walls'] : [], places);
}

/** Places inside a sentence: 'north and east walls', but 'D01' as it is. */
export function inSentence(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
