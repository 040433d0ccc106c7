import { problemAt, type Problem } from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';
import { some, unknown, unknownCategory } from './unknown.js';

/** A price list's category exists, and has the attributes that are read from it. */
export function priceListReferences({ priceLists, categories, slugs }: Draft): readonly Problem[] {
  return priceLists.flatMap(({ whole }): readonly Problem[] => {
    if (!whole) return [];
    const { category, columns, fixed, origin } = whole;
    if (!slugs.categories.has(category)) return [unknownCategory(origin, ['category'], category, slugs.categories)];
    const rules = categories.find(({ slug }) => slug === category)?.rules;
    if (!rules) return [];
    const names = rules.map(({ name }) => name);
    const paths = [
      ...Object.keys(columns.attributes).map((name) => ({ name, path: ['columns', 'attributes', name] })),
      ...Object.keys(fixed.attributes).map((name) => ({ name, path: ['fixed', 'attributes', name] })),
    ];
    return paths.flatMap(({ name, path }): readonly Problem[] => {
      const code = 'price-list-attribute';
      if (!names.includes(name)) {
        const message = `${category} has no attribute '${name}'`;
        const lives = `It has ${some(names)}`;
        return [unknown(origin, path, { code, message, name, among: names, lives, onKey: true })];
      }
      if (path[0] === 'fixed' || rules.find((rule) => rule.name === name)?.kind !== 'lengths') return [];
      const message = `'${name}' is a list of lengths, which no column of a price list is read into`;
      const fix = 'write it under fixed.attributes, or in the options themselves';
      return [problemAt(origin, path, code, message, { fix, onKey: true })];
    });
  });
}
