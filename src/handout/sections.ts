import type { BookOption } from '../core/book/index.js';
import type { HandoutSection } from './handout.js';
import { joined, markdown, own } from './own.js';
import { sieve, sieveName } from './sieve.js';
import { optionRef } from './words.js';
import type { Work } from './work.js';

const partTitles = { general: 'General', products: 'Products', execution: 'Execution' } as const;

/** The specification in three parts under each section number, for the products that stand in the house. */
export function sections(work: Work): readonly HandoutSection[] {
  const numbers = [...new Set(work.categories.map(({ section }) => section))].sort();
  return numbers.flatMap((number) => {
    const categories = work.categories.filter(({ section }) => section === number);
    const slugs = new Set(categories.map(({ slug }) => slug));
    const products = [...work.products.values()].filter(({ category }) => slugs.has(category));
    if (products.length === 0) return [];
    const used = categories.filter(({ slug }) => products.some(({ category }) => category === slug));
    return [
      {
        number: sieveName(number),
        title: joined(
          used.map(({ name }) => sieveName(name)),
          ', ',
        ),
        measured: used.map(({ name, measure }) => ({
          category: sieveName(name),
          rule: sieve(measure.words),
          source: sieve(measure.source),
        })),
        notes: markdown(used.map(({ body }) => sieve(body))),
        parts: (['general', 'products', 'execution'] as const).map((part) => ({
          title: partTitles[part],
          items: merge(products, part, work),
        })),
      },
    ];
  });
}

/** Equal texts stand once, with all their products: by key where the finish schedule gives one, else by name. */
function merge(
  products: readonly BookOption[],
  part: keyof typeof partTitles,
  { keys }: Work,
): HandoutSection['parts'][number]['items'] {
  const merged = new Map<string, HandoutSection['parts'][number]['items'][number]>();
  for (const { id, name, specification } of products) {
    const told = specification[part];
    const text = told === undefined ? own('Not told yet.') : sieve(told.trim());
    if (text === '') continue;
    const product = { id: optionRef(id), called: sieveName(keys.get(id) ?? name) };
    merged.set(text, { text, products: [...(merged.get(text)?.products ?? []), product] });
  }
  return [...merged.values()];
}
