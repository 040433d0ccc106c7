import type { BookRoom, BookSelection } from '../core/book/index.js';
import { plainKey } from '../manual/index.js';
import { placeFields } from './ask-place.js';
import { peopleOf, type Ask, type Choice } from './ask.js';
import { hints } from './hints.js';
import { keyField } from './schema-fields.js';
import type { Standing } from './standing.js';

const readers: readonly Choice[] = [
  { value: 'book', label: 'whoever has the book' },
  { value: 'trades', label: 'the trades in their handouts, too' },
];

/** To write the remark at a place, or to take it away. */
export function askRemark(selection: BookSelection): Ask {
  const { id, note = '', finishSet } = selection;
  return {
    id: `remark/${id}`,
    title: note === '' ? 'Write a remark' : 'Change the remark',
    ...(finishSet !== undefined && { says: `It stands in the finish set “${finishSet}”, for all rooms that have it.` }),
    button: 'Write the remark',
    command: ['note'],
    was: note,
    fields: [
      ...placeFields(selection),
      keyField(plainKey('selection', 'note'), {
        label: 'Remark',
        as: '--say',
        kind: 'text',
        value: note,
        rows: 3,
        isOptional: false,
        takesNothing: true,
      }),
    ],
  };
}

/** To add a paragraph to what a room's record tells. */
export function askRoomNote({ slug }: BookRoom, { view, on }: Pick<Standing, 'view' | 'on'>): Ask {
  return {
    id: `note/${slug}`,
    title: 'Write a note',
    button: 'Add the note',
    command: ['note'],
    fields: [
      { name: 'room', label: '', as: 'word', kind: 'picked', value: slug },
      { name: 'on', label: '', as: '--on', kind: 'picked', value: on },
      {
        name: 'say',
        label: 'Note',
        as: '--say',
        kind: 'text',
        rows: 4,
        hint: hints.note(),
      },
      { name: 'by', label: 'Who says it', as: '--by', kind: 'one-of', choices: peopleOf(view) },
      { name: 'readers', label: 'Who reads it', as: '--for', kind: 'one-of', choices: readers },
    ],
  };
}
