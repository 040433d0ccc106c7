import type { Book } from '../core/book/index.js';
import { onlyTrades } from '../core/records/index.js';
import { isCalled } from './standing.js';

/** A text of a record that some handout carries. */
export interface CarriedProse {
  /** Record it stands in. */
  readonly source: string;
  /** What it is, in words: 'the note of a selection'. */
  readonly what: string;
  readonly text: string;
}

/** Every prose text that handouts take from records. What is not in this list is in no handout: house and milestone notes,
 *  care, who chose, quotes, and bodies of rooms and options beyond what they mark for trades. */
export function carriedProse(book: Book): readonly CarriedProse[] {
  return [
    ...book.house.people.flatMap(({ role, contact }) =>
      contact === undefined || !isCalled(role)
        ? []
        : [{ source: book.house.source, what: 'how to reach a party', text: contact }],
    ),
    ...book.trades.flatMap(({ source, needsToKnow, scopeIn, scopeOut, body }) => [
      ...needsToKnow.map((text) => ({ source, what: 'what the trade needs to know', text })),
      ...[...scopeIn, ...scopeOut].map((text) => ({ source, what: 'the scope', text })),
      { source, what: 'the notes', text: body },
    ]),
    ...book.categories.flatMap(({ source, measure, body }) => [
      { source, what: 'the rule of measuring', text: measure.words },
      { source, what: 'the source of the rule', text: measure.source },
      ...(measure.supplies ?? []).map(({ what: text }) => ({ source, what: 'a supply', text })),
      { source, what: 'the notes', text: body },
    ]),
    ...book.options.flatMap(({ source, summary, specification, needs, attributes, body, shared = [] }) => [
      ...(summary === undefined ? [] : [{ source, what: 'the summary', text: summary }]),
      ...Object.entries(specification).map(([part, text]) => ({
        source: shared.find(({ key }) => key === `specification.${part}`)?.source ?? source,
        what: 'the specification',
        text,
      })),
      ...needs.map(({ what: text }) => ({ source, what: 'a need', text })),
      // A number is what its label says.
      ...attributes.flatMap(({ label, attribute: { value, text } }) =>
        value.kind === 'number' ? [] : [{ source, what: label, text }],
      ),
      { source, what: 'the notes for trades', text: onlyTrades(body) },
    ]),
    ...book.rooms.flatMap(({ source, measure, body }) => [
      ...measure.openings.flatMap(({ record }) =>
        record.by === 'own' && record.note !== undefined
          ? [{ source, what: 'the note of an opening', text: record.note }]
          : [],
      ),
      { source, what: 'the notes for trades', text: onlyTrades(body) },
    ]),
    ...book.selections.flatMap(({ source, note }) =>
      note === undefined ? [] : [{ source, what: 'the note of a selection', text: note }],
    ),
  ];
}

/** Every name that handouts take from records: what is built and who builds it has to be called something. */
export function carriedNames(book: Book): readonly CarriedProse[] {
  const { house } = book;
  const of = (source: string, named: Readonly<Record<string, string | undefined>>): readonly CarriedProse[] =>
    Object.entries(named).flatMap(([what, text]) => (text === undefined ? [] : [{ source, what, text }]));
  return [
    ...of(house.source, { 'the house': house.name, 'the job': house.number, 'the place': house.place }),
    ...book.levels.flatMap(({ name }) => of(house.source, { 'a level': name })),
    ...house.people.flatMap(({ role, name }) =>
      of(house.source, {
        'a role': role,
        ...(house.namesToTrades === true && isCalled(role) && { 'a name': name }),
      }),
    ),
    ...book.calendar.milestones.flatMap(({ name }) => of(house.source, { 'a milestone': name })),
    ...book.rooms.flatMap(({ source, number, name }) => of(source, { 'the number of a room': number, 'a room': name })),
    ...book.trades.flatMap(({ source, name, contact }) =>
      of(source, { 'a trade': name, 'the contact of a trade': contact }),
    ),
    ...book.categories.flatMap(({ source, name, section }) => of(source, { 'a category': name, 'a section': section })),
    ...book.options.flatMap(({ source, name, maker, model, section, parts, attributes }) => [
      ...of(source, { 'a product': name, 'a maker': maker, 'a model': model, 'a section': section }),
      ...parts.flatMap(({ part, pack }) => of(source, { 'a part': part, 'a pack': pack?.name })),
      ...attributes.flatMap(({ label }) =>
        of(
          book.categories.find(({ attributes: known }) => known.some((one) => one.label === label))?.source ?? source,
          {
            'an attribute': label,
          },
        ),
      ),
    ]),
  ];
}
