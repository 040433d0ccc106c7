import type { BookSelection } from '../core/book/index.js';
import { peopleOf, type Ask, type Field } from './ask.js';
import type { Standing } from './standing.js';

/** To choose what stands in a place. */
export function askChoice(selection: BookSelection, { view, on }: Pick<Standing, 'view' | 'on'>): Ask {
  const nameOf = (slug: string): string => view?.optionById(`${selection.category}/${slug}`)?.name ?? slug;
  const stands = selection.state === 'open' ? 'open' : (selection.chosen ?? 'none');
  const offered = new Set([...selection.considering, ...selection.alternatives.map(({ option }) => option)]);
  return {
    id: `choose/${selection.id}`,
    title: 'Choose',
    button: 'Write the choice',
    command: ['choose'],
    was: stands,
    chooses: selection.id,
    fields: [
      ...placeFields(selection),
      {
        name: 'option',
        label: 'What shall stand there',
        as: 'word',
        kind: 'one-of',
        value: stands,
        choices: [
          ...[...offered].map((slug) => ({ value: slug, label: nameOf(slug) })),
          { value: 'none', label: 'None: it is declined' },
          { value: 'open', label: 'Still open' },
        ],
      },
      { name: 'by', label: 'Who chooses', as: '--by', kind: 'one-of', choices: peopleOf(view) },
      { name: 'on', label: 'On', as: '--on', kind: 'day', value: on, latest: on },
    ],
  };
}

/** Which place a form is about: nobody is asked. */
export function placeFields({ room, id }: BookSelection): readonly Field[] {
  return [
    { name: 'selection.room', label: '', as: 'word', kind: 'picked', value: room },
    { name: 'selection.place', label: '', as: 'word', kind: 'picked', value: id },
  ];
}
