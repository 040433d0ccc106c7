import type { BookSelection } from '../core/book/index.js';

const twice = /\b([A-Z][\w' -]*?)(,| and)(.*?)\b\1, /u;

/** Places in words, a thing's name said once: 'Chimney breast and Hearth riser' for 'Chimney breast and Chimney breast, Hearth
 *  riser', as its faces are named. */
export function saidOnce(text: string): string {
  const shorter = text.replace(twice, '$1$2$3');
  return shorter === text ? text : saidOnce(shorter);
}

/** Where a selection is, in words. */
export const placesOf = ({ placeText }: Pick<BookSelection, 'placeText'>): string => saidOnce(placeText);
