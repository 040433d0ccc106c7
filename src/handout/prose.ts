import type { Book } from '../core/book/index.js';
import { timberOf } from '../core/feature/index.js';
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
    ...book.cautions.flatMap(({ accepted }) =>
      accepted ? [{ source: book.house.source, what: 'why a caution is accepted', text: accepted.why }] : [],
    ),
    ...book.trades.flatMap(({ source, needsToKnow, scopeIn, scopeOut, carries = [], body }) => [
      ...carries.map(({ what: text }) => ({ source, what: 'what the trade carries', text })),
      ...needsToKnow.map((text) => ({ source, what: 'what the trade needs to know', text })),
      ...[...scopeIn, ...scopeOut].map((text) => ({ source, what: 'the scope', text })),
      { source, what: 'the notes', text: body },
    ]),
    ...book.categories.flatMap(({ source, measure, fixesEarly, body }) => [
      ...fixesEarly.map(({ why: text }) => ({ source, what: 'why it is chosen early', text })),
      { source, what: 'the rule of measuring', text: measure.words },
      { source, what: 'the source of the rule', text: measure.source },
      ...(measure.supplies ?? []).flatMap(({ what: text, source: from }) => [
        { source, what: 'a supply', text },
        { source, what: 'the source of a supply', text: from },
      ]),
      { source, what: 'the notes', text: body },
    ]),
    ...book.options.flatMap(({ source, summary, specification, needs, attributes, layers = [], body, shared = [] }) => [
      ...layers.map(({ what: text }) => ({ source, what: 'a layer', text })),
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
      ...measure.features.flatMap((feature) => {
        const { joinery, species } = timberOf(feature) ?? {};
        return textsOf(source, { 'how timbers are joined': joinery, 'a species': species });
      }),
      { source, what: 'the notes for trades', text: onlyTrades(body) },
    ]),
    ...book.selections.flatMap(({ source, note, facts }) => [
      ...textsOf(source, { 'the note of a selection': note }),
      ...facts.flatMap(({ by, number, count, lot }) =>
        textsOf(source, { 'who did it': by, 'the number of an order': number, 'how much came': count, 'a lot': lot }),
      ),
    ]),
  ];
}

/** Every name that handouts take from records: what is built and who builds it has to be called something. */
export function carriedNames(book: Book): readonly CarriedProse[] {
  const { house } = book;
  return [
    ...textsOf(house.source, {
      'the house': house.name,
      'the job': house.number,
      'the place': house.place,
      'the climate zone': house.climateZone,
      'the adopted code': house.code?.name,
      'the edition of the code': house.code?.edition,
      'who adopted the code': house.code?.by,
    }),
    ...book.levels.flatMap(({ name }) => textsOf(house.source, { 'a level': name })),
    ...house.people.flatMap(({ role, name }) =>
      textsOf(house.source, {
        'a role': role,
        ...(house.namesToTrades === true && isCalled(role) && { 'a name': name }),
      }),
    ),
    ...book.calendar.milestones.flatMap(({ name }) => textsOf(house.source, { 'a milestone': name })),
    ...book.rooms.flatMap(({ source, number, name, measure, sections = [] }) => [
      ...textsOf(source, { 'the number of a room': number, 'a room': name }),
      ...named(source, 'a section', sections),
      ...named(source, 'a wall', measure.walls),
      ...named(source, 'a feature', measure.features),
      ...named(source, 'a part of the ceiling', measure.ceiling.facets),
      ...named(source, 'a part of the floor', measure.floor.levels ?? []),
      ...named(source, 'a hole in the floor', measure.voids),
      ...measure.voids.flatMap(({ sides }) => named(source, 'a side of a hole', sides)),
    ]),
    ...book.trades.flatMap(({ source, name, contact }) =>
      textsOf(source, { 'a trade': name, 'the contact of a trade': contact }),
    ),
    ...book.categories.flatMap(({ source, name, section, measure }) => [
      ...textsOf(source, { 'a category': name, 'a section': section }),
      ...(measure.supplies ?? []).flatMap(({ pack }) => textsOf(source, { 'a pack': pack?.name })),
    ]),
    ...book.options.flatMap(({ source, name, maker, model, section, parts, attributes, shared = [] }) => [
      ...textsOf(source, { 'a product': name, 'a model': model, 'a section': section }),
      ...textsOf(shared.find(({ key }) => key === 'maker')?.source ?? source, { 'a maker': maker }),
      ...parts.flatMap(({ part, pack }) => textsOf(source, { 'a part': part, 'a pack': pack?.name })),
      ...attributes.flatMap(({ label }) =>
        textsOf(
          book.categories.find(({ attributes: known }) => known.some((one) => one.label === label))?.source ?? source,
          { 'an attribute': label },
        ),
      ),
    ]),
  ];
}

const named = (source: string, what: string, all: readonly { readonly name: string }[]): readonly CarriedProse[] =>
  all.map(({ name }) => ({ source, what, text: name }));

function textsOf(source: string, texts: Readonly<Record<string, string | undefined>>): readonly CarriedProse[] {
  return Object.entries(texts).flatMap(([what, text]) => (text === undefined ? [] : [{ source, what, text }]));
}
