import type { Links } from '../../write/index.js';
import { relativeLink } from '../page.js';
import type { ComparisonContext } from './context.js';
import { recordChangePath, roomChangePath } from './place.js';

/** Where places are in a comparison: its pages of rooms, and the text of records. */
export function comparisonLinks({ comparison, place, rooms }: ComparisonContext, from: string): Links {
  return ({ to, id }) => {
    if (to === 'room') return relativeLink(from, roomChangePath(place, { room: id }));
    const record = to === 'record' ? comparison.records.find(({ path }) => path === id) : undefined;
    return record && relativeLink(from, recordChangePath(place, record, rooms));
  };
}
