import { groupBy, type BookOption } from '../core/book/index.js';
import { specificationParts, type Specification } from '../core/model/index.js';
import { byText } from '../base/units/index.js';
import type { HandoutSection, HandoutSpecification } from './handout.js';
import { own, type Own } from './own.js';
import { sieve, sieveName } from './sieve.js';
import { refTo, productFinish } from './words.js';
import type { Work } from './work.js';

/** What each part of the specification is called. */
export const specificationTitles: Readonly<Record<keyof Specification, Own>> = {
  general: own('General'),
  submittals: own('Submittals'),
  'mock-up': own('Mock-up'),
  delivery: own('Delivery'),
  warranty: own('Warranty'),
  products: own('Products'),
  execution: own('Execution'),
  tolerance: own('Tolerance'),
};

/** The specification of all that the trade sets: a section for each product, by the number that its record or its category gives. */
export function sections(work: Work): readonly HandoutSection[] {
  const byCategory = groupBy([...work.products.values()], ({ category }) => category);
  return work.categories
    .map((category) => ({ category, products: byCategory.get(category.slug) ?? [] }))
    .filter(({ products }) => products.length > 0)
    .toSorted((a, b) => byText(a.category.section, b.category.section))
    .map(({ category: { name, measure, body }, products }) => ({
      category: sieveName(name),
      measured: { rule: sieve(measure.words), source: sieve(measure.source) },
      notes: sieve(body),
      products: products.map((option) => specificationOf(option, work)).toSorted((a, b) => byText(a.number, b.number)),
    }));
}

function specificationOf(option: BookOption, work: Work): HandoutSpecification {
  const { id, name, specification } = option;
  const at = work.ownOf(id);
  const parts = specificationParts.flatMap((part) => {
    const text = sieve((specification[part] ?? '').trim());
    return text === '' ? [] : [{ part, title: specificationTitles[part], text }];
  });
  return {
    id: refTo(id),
    number: sectionOf(option, work),
    called: sieveName(work.keys.get(id) ?? name),
    finish: productFinish(option, !at.every(({ state }) => state === 'open'), work.keys),
    parts,
    untold: (['general', 'products', 'execution'] as const).filter((part) => specification[part] === undefined),
  };
}

/** The section number of a product. */
export function sectionOf({ section, category }: BookOption, { look }: Work): HandoutSpecification['number'] {
  return sieveName(section ?? look.category(category)?.section ?? '');
}
