import type { BookSelection } from '../book/index.js';

/** Where a selection is, in words, a thing's name said once: 'Chimney breast and Hearth riser', where its faces are named
 *  'Chimney breast' and 'Chimney breast, Hearth riser'. */
export function placesOf({ places, placeText }: Pick<BookSelection, 'places' | 'placeText'>): string {
  const things = new Set(places.flatMap(({ name }) => (name.includes(', ') ? [name.split(', ')[0] ?? ''] : [])));
  return [...things].reduce((text, thing) => {
    const first = text.indexOf(thing);
    if (first < 0) return text;
    const after = first + thing.length;
    return text.slice(0, after) + text.slice(after).replaceAll(`${thing}, `, '');
  }, placeText);
}
