import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import type { Book, BookOption } from '../../src/core/book/index.js';
import { roomDigests } from '../../src/signoff/index.js';
import { handoutProblems } from '../../src/handout/index.js';
import { smallBook, type Edits } from './small-house.js';

/** What an option may have from its category, and what its own price, name and swatch are beside it. */
const sayable = {
  maker: ['Invented Mill', 'Other Mill'],
  quoted: [
    { on: '2026-01-05', by: 'Mill desk' },
    { on: '2026-02-02', by: 'Mill desk', until: '2026-08-01' },
  ],
  lead: ['4 weeks', '1 week'],
  returns: [
    { 'until-days': 30, restocking: '15 %' },
    { 'until-days': 10, restocking: '25 %' },
  ],
  care: ['Sweep it.', 'Wipe it.'],
} as const;
const parts = {
  general: ['Strip floor.', 'Any floor.'],
  products: ['Pine.', 'Wood.'],
  execution: ['Nail it.', 'Glue it.'],
} as const;

type Facts = Record<string, unknown>;

/** Where each fact stands, and in which of two texts: with the option, its family, its category, or in several of them at once. */
const layer = (texts: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc.option(fc.constantFrom(...texts), { nil: undefined, freq: 1 });
const facts: fc.Arbitrary<Facts> = fc.record({
  ...Object.fromEntries(Object.entries(sayable).map(([key, texts]) => [key, layer(texts)])),
  specification: fc.record(Object.fromEntries(Object.entries(parts).map(([key, texts]) => [key, layer(texts)]))),
});

/** Without what is not said. */
function said(of: Facts): Facts {
  const kept = Object.entries(of).map(([key, value]) => [key, key === 'specification' ? said(value as Facts) : value]);
  return Object.fromEntries(
    kept.filter(([, value]) => value !== undefined && (value as object) !== null && JSON.stringify(value) !== '{}'),
  ) as Facts;
}

/** The first that says it, part by part. */
function inFull(layers: readonly Facts[]): Facts {
  const first = (of: readonly Facts[], key: string): unknown =>
    of.map((each) => each[key]).find((value) => value !== undefined);
  const specs = layers.map(({ specification = {} }) => specification as Facts);
  const specification = Object.fromEntries(Object.keys(parts).map((key) => [key, first(specs, key)]));
  return said({ ...Object.fromEntries(Object.keys(sayable).map((key) => [key, first(layers, key)])), specification });
}

const pine = (more: Facts): string =>
  `---\n${stringify({
    name: 'Pine strip',
    model: 'Pine-1',
    summary: 'A strip floor.',
    price: { material: '$4.00 / sq ft', labor: '$5.00 / sq ft' },
    pack: { name: 'carton', holds: '20 sq ft' },
    waste: '5 %',
    weight: '2 lb / sq ft',
    thickness: '3/4"',
    attributes: { species: 'Pine' },
    swatch: { pattern: 'planks', colors: ['#b98a5a'] },
    ...more,
  })}---\n`;

const category = (options: Facts, family: Facts): string => {
  const shared = {
    ...(Object.keys(options).length > 0 && { options }),
    ...(Object.keys(family).length > 0 && { families: { strip: family } }),
  };
  return Object.keys(shared).length > 0 ? stringify(shared) : '';
};

const isAllowed = ({ code }: { readonly code: string }): boolean => code === 'option-draft' || code.startsWith('quote');

function house({ own, family, options }: { own: Facts; family: Facts; options: Facts }): Book {
  const edits: Edits = {
    'content/options/floor/pine.md': pine({
      ...own,
      ...(Object.keys(family).length > 0 && { family: 'strip' }),
    }),
    'content/categories/floor.md': [['attributes:\n', `${category(options, family)}attributes:\n`]],
  };
  return smallBook(edits, '2026-04-20', isAllowed);
}

/** The Book without where things are written. */
function withoutPlaces({ sources: _, ...book }: Book): unknown {
  const bare = book.options.map(({ shared: _shared, ...option }: BookOption) => option);
  return { ...book, options: bare };
}

describe('what an option has from its family and its category', () => {
  test('is the same Book as if each option said it itself', () => {
    fc.assert(
      fc.property(facts, facts, facts, (own, family, options) => {
        // What the lead time is figured from is always there: without it nothing may be chosen.
        const [mine, theirs, all] = [said(own), said(family), said({ ...options, lead: options['lead'] ?? '3 weeks' })];
        const layers = [mine, theirs, all];
        const shared = house({ own: mine, family: theirs, options: all });
        // The other floor says everything itself, but for what the category adds to it.
        const full = smallBook(
          {
            'content/options/floor/pine.md': pine(inFull(layers)),
            'content/options/floor/oak.md': [['care: Sweep it.\n', `care: Sweep it.\n${otherFacts(all)}`]],
          },
          '2026-04-20',
          isAllowed,
        );
        expect(withoutPlaces(shared)).toEqual(withoutPlaces(full));
        expect(roomDigests(shared)).toEqual(roomDigests(full));
      }),
      { numRuns: 40 },
    );
  });

  test('is told with the line of the category that says it', () => {
    const book = house({
      own: { care: 'Sweep it.' },
      family: { lead: '2 weeks', specification: { execution: 'Glue it.' } },
      options: { maker: 'Invented Mill', lead: '4 weeks', specification: { general: 'Floors.' } },
    });
    const option = book.options.find(({ id }) => id === 'floor/pine');
    expect(option).toMatchObject({ leadDays: 10, specification: { general: 'Floors.', execution: 'Glue it.' } });
    const text = book.sources.find(({ path }) => path === 'content/categories/floor.md')?.text.split('\n') ?? [];
    expect(option?.shared?.map(({ key, family, line }) => [key, family, text[line - 1]?.trim()])).toEqual([
      ['maker', undefined, 'maker: Invented Mill'],
      ['lead', 'strip', 'lead: 2 weeks'],
      ['specification.general', undefined, 'general: Floors.'],
      ['specification.execution', 'strip', 'execution: Glue it.'],
    ]);
    // Whoever says everything himself has nothing from elsewhere.
    expect(book.options.find(({ id }) => id === 'floor/oak')).not.toHaveProperty('shared');
  });

  test('money in a shared text is told once, where it stands', () => {
    const book = house({
      own: { lead: '4 weeks' },
      family: {},
      options: { specification: { general: 'Strip floor. It costs $4.' } },
    });
    const told = handoutProblems(book).map(({ file, at, excerpt }) => [file, excerpt?.slice(at.column - 1)]);
    expect(told).toEqual([['content/categories/floor.md', '$4.']]);
  });
});

/** What the category says and oak does not. */
function otherFacts({ quoted, returns }: Facts): string {
  const more = said({ quoted, returns });
  return Object.keys(more).length === 0 ? '' : stringify(more);
}
