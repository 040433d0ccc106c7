import type { BookSelection } from '../core/book/index.js';
import { placeFields } from './ask-place.js';
import type { Ask } from './ask.js';
import type { Standing } from './standing.js';

/** To consider one more option in a place; undefined where all of its category are. */
export function askConsider(selection: BookSelection, { view }: Pick<Standing, 'view'>): Ask | undefined {
  const offered = new Set([...selection.considering, selection.chosen, selection.standard]);
  const others = view?.book.options.filter(
    ({ category, slug }) => category === selection.category && !offered.has(slug),
  );
  if (!others || others.length === 0) return undefined;
  return {
    id: `consider/${selection.id}`,
    title: 'Consider one more',
    button: 'Consider it',
    command: ['consider'],
    fields: [
      ...placeFields(selection),
      {
        name: 'more',
        label: 'Of the same category',
        as: 'word',
        kind: 'one-of',
        choices: others.map(({ slug, name }) => ({ value: slug, label: name })),
      },
    ],
  };
}
