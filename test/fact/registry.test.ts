import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, expectTypeOf, it, test } from 'vitest';
import { cautionRules } from '../../src/core/caution/index.js';
import { factOf, products, type Product } from '../../src/core/fact/index.js';
import type { Option } from '../../src/core/model/index.js';
import type { Length } from '../../src/base/units/index.js';

const src = join(import.meta.dirname, '../../src');
const all = Object.entries(products) as readonly (readonly [string, Product])[];
const facts = all.flatMap(([product, { facts }]) => Object.keys(facts).map((name) => ({ product, name })));

/** Sources that may read facts, all but the registry's own. */
const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/u.test(path) && !path.startsWith('fact/'))
  .map((path) => ({ path, text: readFileSync(join(src, path), 'utf8') }));

describe('the registry tells the truth about who reads', () => {
  it.each(facts)('$name of $product is read somewhere', ({ product, name }) => {
    const readsIt = sources.filter(({ text }) => text.includes(`'${product}'`) && text.includes(`'${name}'`));
    expect(readsIt.map(({ path }) => path)).not.toEqual([]);
  });

  it.each(all)('%s: cautions that it names are rules', (_, { facts }) => {
    const ids = cautionRules.map(({ id }) => id);
    for (const { cautions = [], readers = [] } of Object.values(facts)) {
      expect(ids).toEqual(expect.arrayContaining([...cautions]));
      expect(cautions.length + readers.length).toBeGreaterThan(0);
    }
  });

  test('a rule that reads a fact stands beside it', () => {
    const missing = sources.flatMap(({ path, text }) => {
      const rule = /^ {2}id: '([a-z-]+)'/mu.exec(text)?.[1];
      if (!path.startsWith('caution/rule/') || rule === undefined) return [];
      return [...text.matchAll(/\b(?:factOf|carries)\([^()]*, '([a-z-]+)', '([a-z-]+)'\)/gu)]
        .filter(([, product, name]) => !factsOf(product)[name ?? '']?.cautions?.includes(rule))
        .map(([, product, name]) => `${rule} reads ${name} of ${product}`);
    });
    expect(missing).toEqual([]);
  });

  test('nothing reads an attribute by a name of its own', () => {
    const own = sources.filter(({ text }) => /\battributes(?:\?\.)?\[['"]/u.test(text));
    expect(own.map(({ path }) => path)).toEqual([]);
  });
});

function factsOf(name: string | undefined): Product['facts'] {
  return new Map(all).get(name ?? '')?.facts ?? {};
}

describe('a product is known', () => {
  it.each(all)('%s, by facts that are its own and no other has', (name, { knownBy }) => {
    for (const fact of knownBy) {
      const having = all.filter(([, { facts }]) => fact in facts).map(([product]) => product);
      expect(having).toEqual([name]);
    }
  });
});

describe('a fact is read as what it is', () => {
  const option = {
    attributes: {
      height: { text: `3'-0"`, value: { kind: 'length', length: 914_400_000 as Length } },
      'clear-opening': { text: 'small', value: { kind: 'text', text: 'small' } },
    },
  } satisfies Pick<Option, 'attributes'>;

  test('a length as a length, from an option of the records and of a Book', () => {
    const listed = Object.entries(option.attributes).map(([name, attribute]) => ({ name, attribute }));
    expect(factOf(option, 'railing', 'height')).toBe(914_400_000);
    expect(factOf({ attributes: listed }, 'railing', 'height')).toBe(914_400_000);
    expectTypeOf(factOf(option, 'railing', 'height')).toEqualTypeOf<Length | undefined>();
    expectTypeOf(factOf(option, 'insulation', 'needs-cover')).toEqualTypeOf<boolean | undefined>();
    expectTypeOf(factOf(option, 'door', 'widths')).toEqualTypeOf<readonly Length[] | undefined>();
  });

  test('what is of another kind, or not there, is not recorded', () => {
    expect(factOf(option, 'railing', 'clear-opening')).toBeUndefined();
    expect(factOf(option, 'railing', 'mount')).toBeUndefined();
    expect(factOf(undefined, 'railing', 'height')).toBeUndefined();
  });

  test('a name that no product has does not compile', () => {
    // @ts-expect-error: it is needs-cover
    expect(factOf(option, 'insulation', 'need-cover')).toBeUndefined();
    // @ts-expect-error: railings have no core
    expect(factOf(option, 'railing', 'core')).toBeUndefined();
  });
});
