import { sieve } from './sieve.js';
import type { HandoutSection } from './handout.js';
import type { Work } from './work.js';

const partTitles = { general: 'General', products: 'Products', execution: 'Execution' } as const;

/** The specification in three parts under each section number, for the products that stand in the house. */
export function sections(work: Work): readonly HandoutSection[] {
  const numbers = [...new Set(work.categories.map(({ section }) => section))].sort();
  return numbers.flatMap((number) => {
    const categories = work.categories.filter(({ section }) => section === number);
    const slugs = new Set(categories.map(({ slug }) => slug));
    const products = [...work.products.values()].filter(({ option }) => slugs.has(option.category));
    if (products.length === 0) return [];
    const used = categories.filter(({ slug }) => products.some(({ option }) => option.category === slug));
    return [
      {
        number,
        title: used.map(({ name }) => name).join(', '),
        measured: used.map(({ name, measure }) => ({
          category: name,
          rule: sieve(measure.words),
          source: sieve(measure.source),
        })),
        notes: used
          .map(({ body }) => sieve(body))
          .filter((text) => text !== '')
          .join('\n\n'),
        parts: (['general', 'products', 'execution'] as const).map((part) => ({
          title: partTitles[part],
          items: merge(products.map(({ key, option }) => ({ key, text: sieve(option.specification[part]).trim() }))),
        })),
      },
    ];
  });
}

/** Equal texts stand once, with the keys of all their products. */
function merge(
  texts: readonly { readonly key: string; readonly text: string }[],
): HandoutSection['parts'][number]['items'] {
  const keys = new Map<string, string[]>();
  for (const { key, text } of texts) {
    if (text === '') continue;
    keys.set(text, [...(keys.get(text) ?? []), key]);
  }
  return [...keys].map(([text, products]) => ({ products, text }));
}
