import type { BookSelection } from '../core/book/index.js';
import type { View } from '../site/index.js';
import type { Standing } from './standing.js';

interface Choice {
  readonly value: string;
  readonly label: string;
}

/** One thing that a form asks for. */
export interface Field {
  readonly name: string;
  readonly label: string;
  /** Where it stands on the command line: a flag, or a word in the order of the fields. */
  readonly as: `--${string}` | 'word';
  readonly kind: 'line' | 'lines' | 'day' | 'one-of' | 'picked';
  readonly hint?: string;
  /** What a list offers. */
  readonly choices?: readonly Choice[];
  readonly value?: string;
  /** Of lines: how many are seen. */
  readonly rows?: number;
  /** It may be left out. */
  readonly isOptional?: boolean;
}

/** A form that runs one command: what a person would have typed. */
export interface Ask {
  readonly id: string;
  readonly title: string;
  readonly says?: string;
  readonly button: string;
  readonly command: readonly string[];
  /** What stands now where the form writes: filled in later, it must still stand. */
  readonly was?: string;
  readonly fields: readonly Field[];
}

/** The words of the command line that a filled form comes to. What is typed is never taken for a flag. */
export function wordsOf(
  { command, fields }: Pick<Ask, 'command' | 'fields'>,
  given: URLSearchParams,
): readonly string[] {
  const valuesOf = ({ name, kind }: Field): readonly string[] => {
    const text = (given.get(name) ?? '').trim();
    if (kind === 'lines')
      return text
        .split(/\r?\n/u)
        .map((line) => line.trim())
        .filter((line) => line !== '');
    return text === '' ? [] : [text.replaceAll(/\s*[\r\n]+\s*/gu, ' ')];
  };
  const flags = fields.flatMap((field) =>
    field.as === 'word' ? [] : valuesOf(field).map((text) => `${field.as}=${text}`),
  );
  const own = fields.flatMap((field) => (field.as === 'word' ? valuesOf(field) : []));
  return [...command, ...flags, ...(own.length > 0 ? ['--', ...own] : [])];
}

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
      { name: 'on', label: 'On', as: '--on', kind: 'day', value: on },
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

/** The people of the house, by role. */
function peopleOf(view: View | undefined): readonly Choice[] {
  return (view?.book.house.people ?? []).map(({ role, name }) => ({ value: role, label: `${name} (${role})` }));
}

/** Where a new room is, and how high. */
function roomFields({ book }: View): readonly Field[] {
  const levels = book.levels.map(({ id, name }) => ({ value: id, label: name }));
  return [
    { name: 'level', label: 'Level', as: '--level', kind: 'one-of', choices: levels },
    { name: 'ceiling', label: 'Height of its ceiling', as: '--ceiling', kind: 'line' },
  ];
}

/** To add a record of a kind. */
export function asksForNew(view: View): readonly Ask[] {
  const { book } = view;
  const categories = book.categories.map(({ slug, name }) => ({ value: slug, label: name }));
  const rooms = [
    { value: 'all', label: 'all rooms' },
    ...book.rooms.map(({ slug, name }) => ({ value: slug, label: name })),
  ];
  const nothing = { value: '', label: '' };
  return [
    {
      id: 'new-option',
      title: 'An option',
      says: 'Name and price are enough to be considered. What is missing is asked for when it is chosen, ordered or issued.',
      button: 'Add the option',
      command: ['new', 'option'],
      fields: [
        { name: 'category', label: 'Category', as: 'word', kind: 'one-of', choices: categories },
        { name: 'name', label: 'Name as printed', as: '--name', kind: 'line' },
        {
          name: 'price',
          label: 'Price of material',
          as: '--price',
          kind: 'lines',
          hint: '$6.50 / sq ft; PART=PRICE on a line each for what is bought in parts',
        },
        {
          name: 'labor',
          label: 'Price of installation',
          as: '--labor',
          kind: 'lines',
          isOptional: true,
          hint: 'in the same way',
        },
        { name: 'lead', label: 'From order to site', as: '--lead', kind: 'line', isOptional: true, hint: '4 weeks' },
        {
          name: 'set',
          label: 'What the category asks',
          as: '--set',
          kind: 'lines',
          isOptional: true,
          hint: 'key=value, one on a line',
        },
        {
          name: 'for',
          label: 'Consider it in',
          as: '--for',
          kind: 'one-of',
          isOptional: true,
          choices: [nothing, ...rooms],
        },
      ],
    },
    {
      id: 'new-room',
      title: 'A rectangular room',
      button: 'Add the room',
      command: ['new', 'room'],
      fields: [
        {
          name: 'line',
          label: 'Name and size',
          as: 'word',
          kind: 'line',
          hint: `Loft 12' x 10', or Loft 3.6 x 3 m: east-west by north-south`,
        },
        ...roomFields(view),
      ],
    },
    {
      id: 'new-allowance',
      title: 'An allowance',
      button: 'Add the allowance',
      command: ['new', 'allowance'],
      fields: [
        { name: 'name', label: 'Name', as: 'word', kind: 'line' },
        { name: 'amount', label: 'Amount', as: '--amount', kind: 'line', hint: '$9,000' },
        {
          name: 'for',
          label: 'Categories that it pays for',
          as: '--for',
          kind: 'line',
          hint: 'by their file names, with commas',
        },
      ],
    },
    {
      id: 'new-trade',
      title: 'A trade',
      button: 'Add the trade',
      command: ['new', 'trade'],
      fields: [
        { name: 'name', label: 'Name', as: 'word', kind: 'line' },
        { name: 'contact', label: 'Whom to ask, by role', as: '--contact', kind: 'line' },
      ],
    },
  ];
}

/** To add a room by walking along its walls with a tape. */
export function askWalk(view: View): Ask {
  return {
    id: 'walk',
    title: 'Walk a room',
    button: 'Add the room',
    command: ['new', 'room'],
    fields: [
      {
        name: 'name',
        label: 'Name',
        as: 'word',
        kind: 'line',
        hint: 'as study behind it, where the name does not tell its use',
      },
      ...roomFields(view),
      {
        name: 'walls',
        label: 'Walls, clockwise, one on a line',
        as: '--wall',
        kind: 'lines',
        rows: 9,
        hint: 'the way and the length: east 14 ft 2 in; n, ne, e … do as well. A name may stand before it: window wall: south 12 ft',
      },
    ],
  };
}

/** Forms whose commands commit what they write. */
export const committing: readonly string[] = ['approve', 'decline', 'issue'];

/** To agree on what changed. */
export function asksToAgree(view: View): readonly Ask[] {
  const { issues, changeOrders } = view.book;
  const proposed = changeOrders.filter(({ state }) => state === 'proposed');
  const numbers = proposed.map(({ number, title }) => ({ value: String(number), label: `${number} ${title}` }));
  const people = peopleOf(view);
  const last = issues.at(-1);
  const decided = (id: string, title: string, button: string): Ask => ({
    id,
    title,
    button,
    command: [id],
    fields: [
      { name: 'number', label: 'Change order', as: 'word', kind: 'one-of', choices: numbers },
      { name: 'by', label: 'Who decided', as: '--by', kind: 'one-of', choices: people },
    ],
  });
  return [
    ...(last
      ? [
          {
            id: 'draft-change-order',
            title: 'Draft a change order',
            says: `What the records say now and issue ${last.number} did not, as the next change order, proposed. It wants committed records.`,
            button: 'Draft it',
            command: ['compare', '--draft'],
            fields: [
              { name: 'from', label: 'Since', as: 'word', kind: 'picked', value: `issue-${last.number}` },
              { name: 'title', label: 'What it is about', as: '--title', kind: 'line' },
              { name: 'reason', label: 'Why', as: '--reason', kind: 'line' },
              {
                name: 'days',
                label: 'Working days that it moves the end of the job',
                as: '--days',
                kind: 'line',
                isOptional: true,
                hint: '3 days',
              },
              { name: 'requested', label: 'Who asked for it', as: '--requested-by', kind: 'one-of', choices: people },
            ],
          } satisfies Ask,
        ]
      : []),
    ...(proposed.length > 0
      ? [
          decided('approve', 'Approve a change order', 'Record that it is approved'),
          decided('decline', 'Decline a change order', 'Record that it is declined'),
        ]
      : []),
    {
      id: 'issue',
      title: 'Issue the book',
      says: 'Makes the next numbered version: record, snapshot and PDF, committed to git.',
      button: 'Issue it',
      command: ['issue'],
      fields: [
        {
          name: 'for',
          label: 'For',
          as: '--for',
          kind: 'one-of',
          choices: ['pricing', 'sign-off', 'construction'].map((value) => ({ value, label: value })),
        },
      ],
    },
  ];
}
