import type { Carried, Category, Trade } from '../model/index.js';
import { isThere, type Selected, type Spot } from './spot.js';

/** What the names mean that needs are written in: layers, categories, and ids of what trades carry. */
export interface Names {
  /** Trades that carry something, by its id. */
  carriers(id: string): readonly Carrier[];
  /** Is one of the names there, in a selection or in what a trade carries? */
  isMet(names: readonly string[], spot: Spot, by?: Selected): boolean;
  /** How many of some categories may lie beneath one. */
  depth(category: Category, among: readonly Category[]): number;
  /** May one of two categories lie on the other, by what they say goes beneath them? */
  mayStack(a: Category, b: Category): boolean;
  /** The names in words: 'gypsum board or ceiling board'. */
  words(names: readonly string[]): string;
  tradeName(slug: string): string;
}

export interface Carrier {
  readonly trade: Trade;
  readonly carried: Carried;
}

export function makeNames(categories: readonly Category[], trades: readonly Trade[]): Names {
  const bySlug = new Map(categories.map((category) => [category.slug, category]));
  const tradeNames = new Map(trades.map(({ slug, name }) => [slug, name]));
  const carriers = carriersOf(trades);
  const beneath = beneathOf(categories);
  return {
    carriers: (id) => carriers.get(id) ?? [],
    isMet: (names, spot, by) =>
      names.some(
        (name) =>
          carriers.has(name) ||
          [...spot.selected, ...spot.behind].some(
            (each) => each !== by && isThere(each) && isCalled(each.category, name),
          ),
      ),
    depth: ({ slug }, among) => among.filter((other) => beneath.get(slug)?.has(other.slug)).length,
    mayStack: (a, b) => beneath.get(a.slug)?.has(b.slug) === true || beneath.get(b.slug)?.has(a.slug) === true,
    words: (names) => names.map((name) => bySlug.get(name)?.name.toLowerCase() ?? layerWords(name)).join(' or '),
    tradeName: (slug) => tradeNames.get(slug) ?? slug,
  };
}

/** A layer in a sentence: 'a finish', but 'backing'. */
function layerWords(name: string): string {
  if (name === 'edge') return 'an edge';
  return ['substrate', 'finish', 'fixture'].includes(name) ? `a ${name}` : name.replaceAll('-', ' ');
}

/** Is the category meant by a name that is a layer or a category? */
export function isCalled({ slug, layer }: Category, name: string): boolean {
  return slug === name || layer === name;
}

function carriersOf(trades: readonly Trade[]): ReadonlyMap<string, readonly Carrier[]> {
  const carriers = new Map<string, Carrier[]>();
  for (const trade of trades) {
    for (const carried of trade.carries ?? []) {
      const list = carriers.get(carried.id) ?? [];
      list.push({ trade, carried });
      carriers.set(carried.id, list);
    }
  }
  return carriers;
}

/** Categories that may lie beneath each category, at any depth. */
function beneathOf(categories: readonly Category[]): ReadonlyMap<string, ReadonlySet<string>> {
  const direct = new Map(
    categories.map((category) => {
      const names = (category.needsBeneath ?? []).flat();
      const named = categories.filter((other) => other !== category && names.some((name) => isCalled(other, name)));
      return [category.slug, named.map(({ slug }) => slug)];
    }),
  );
  return new Map(categories.map(({ slug }) => [slug, reached(slug, direct)]));
}

function reached(from: string, direct: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const found = new Set<string>();
  const waiting = [...(direct.get(from) ?? [])];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (found.has(next)) continue;
    found.add(next);
    waiting.push(...(direct.get(next) ?? []));
  }
  return found;
}
