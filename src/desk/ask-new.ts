import { capital, unitName } from '../base/units/index.js';
import type { BookCategory } from '../core/book/index.js';
import { pricedParts } from '../draft/index.js';
import { meaningOf, plainKey } from '../manual/index.js';
import type { View } from '../site/index.js';
import type { Ask, Choice, Field } from './ask.js';
import { hints } from './hints.js';
import { keyField, keyFields, nameField } from './schema-fields.js';

/** Where a new room is, and how high. */
function roomFields({ book }: View): readonly Field[] {
  const levels = book.levels.map(({ id, name }) => ({ value: id, label: name }));
  return [
    keyField(plainKey('room', 'level'), { choices: levels }),
    {
      name: 'ceiling',
      label: 'Height of its ceiling',
      as: '--ceiling',
      kind: 'line',
      hint: hints.ceiling(),
    },
  ];
}

/** To add a record of a kind, but for options, whose category is asked for first. */
export function asksForNew(view: View): readonly Ask[] {
  const { book } = view;
  const categories = book.categories.map(({ slug, name }) => ({ value: slug, label: name }));
  const milestones = book.calendar.milestones.map(({ id, name }) => ({ value: id, label: name }));
  return [
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
          hint: hints.roomLine(),
        },
        ...roomFields(view),
      ],
    },
    {
      id: 'new-allowance',
      title: 'An allowance',
      says: meaningOf('allowance'),
      button: 'Add the allowance',
      command: ['new', 'allowance'],
      fields: [
        nameField('allowance', 'word'),
        ...keyFields('allowance', {
          except: ['id', 'name'],
          own: {
            covers: { hint: hints.covers(plainKey('allowance', 'covers').meaning) },
            categories: { as: '--for', choices: categories },
          },
        }),
      ],
    },
    {
      id: 'new-milestone',
      title: 'A milestone',
      says: meaningOf('milestone'),
      button: 'Add the milestone',
      command: ['new', 'milestone'],
      fields: [
        nameField('milestone', 'word'),
        ...keyFields('milestone', { except: ['id', 'name'], own: { after: { choices: milestones } } }),
      ],
    },
    {
      id: 'new-trade',
      title: 'A trade',
      button: 'Add the trade',
      command: ['new', 'trade'],
      fields: [nameField('trade', 'word'), keyField(plainKey('trade', 'contact'))],
    },
  ];
}

/** To add an option of a category: what its record needs, what the category asks, and more behind. */
export function askOption(view: View, category: BookCategory): Ask {
  const { book } = view;
  const milestones = book.calendar.milestones.map(({ id, name }) => ({ value: id, label: name }));
  const parts = pricedParts(category);
  const isInParts = parts.length > 1;
  const prices = parts.flatMap(([part, unit]) => {
    const of = isInParts ? ` of ${part}` : '';
    const hint = hints.price(unitName(unit));
    const key = isInParts ? { key: `${part}=` } : {};
    const price = (name: 'material' | 'labor', as: Field['as'], own: Partial<Field>): Field =>
      keyField(plainKey('option', name, 'price'), {
        name: `${name}.${part}`,
        label: `${capital(name)}${of}`,
        as,
        hint,
        ...key,
        ...own,
      });
    return [price('material', '--price', {}), price('labor', '--labor', { isOptional: true })];
  });
  return {
    id: `new-option/${category.slug}`,
    title: `An option: ${category.name}`,
    says: 'Name and price are enough to be considered. What is missing is asked for when it is chosen, ordered or issued.',
    button: 'Add the option',
    command: ['new', 'option'],
    fields: [
      { name: 'category', label: '', as: 'word', kind: 'picked', value: category.slug },
      nameField('option', '--name'),
      ...prices,
      keyField(plainKey('option', 'lead')),
      ...category.attributes.map((attribute) => attributeField(attribute, exampleOf(view, category, attribute.name))),
      {
        name: 'for',
        label: 'Consider it in',
        as: '--for',
        kind: 'one-of',
        isOptional: true,
        hint: hints.considered(),
        choices: [
          { value: '', label: '' },
          { value: 'all', label: 'all rooms' },
          ...book.rooms.map(({ slug, name }) => ({ value: slug, label: name })),
        ],
      },
      ...keyFields('option', {
        except: ['name', 'lead'],
        own: { 'needed-at': { choices: milestones }, 'measured-after': { choices: milestones } },
      }).map((field) => ({ ...field, isMore: true })),
    ],
  };
}

/** What an option of the house says of an attribute: what such a one looks like there. */
function exampleOf({ book }: View, { slug }: BookCategory, attribute: string): string | undefined {
  const own = book.options.filter(({ category }) => category === slug);
  return own.flatMap(({ attributes }) => attributes).find(({ name }) => name === attribute)?.attribute.text;
}

/** What the category asks of its options, as its record says. `example`: what another of its options says. */
function attributeField(
  { name, label, kind, choices }: BookCategory['attributes'][number],
  example: string | undefined,
): Field {
  const few = kind === 'yes-no' ? ['yes', 'no'] : choices;
  const offered: readonly Choice[] | undefined = few?.map((value) => ({ value, label: value }));
  const common = { name: `set.${name}`, label, as: '--set', key: `${name}=`, isOptional: true } as const;
  if (offered) return { ...common, kind: 'one-of', choices: [{ value: '', label: '' }, ...offered] };
  const isMeasured = kind === 'length' || kind === 'lengths' || kind === 'number';
  const usual = kind === 'length' || kind === 'lengths' ? hints[kind]() : undefined;
  const hint = isMeasured && example !== undefined ? hints.example(example) : usual;
  return { ...common, kind: 'line', ...(hint !== undefined && { hint }) };
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
        hint: hints.walkedName(),
      },
      ...roomFields(view),
      {
        name: 'walls',
        label: 'Walls, clockwise, one on a line',
        as: '--wall',
        kind: 'lines',
        rows: 9,
        hint: hints.walls(),
      },
    ],
  };
}
