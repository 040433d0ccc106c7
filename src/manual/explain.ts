import { nearest } from '../base/problem/index.js';
import { byText } from '../base/units/index.js';
import { products, type Product } from '../core/fact/index.js';
import { readFrontMatter } from '../core/records/index.js';
import type { Source } from '../core/model/index.js';
import { exampleOf, examplesIn, type Example } from './examples.js';
import { groups, placeWords, type Group } from './groups.js';
import type { Key } from './keys.js';

/** What one key is. */
export interface Explained {
  /** As one would ask for it: `option.waste`. */
  readonly name: string;
  readonly meaning: string;
  readonly form: string;
  readonly isNeeded: boolean;
  readonly readBy: readonly string[];
  /** Where records have it. */
  readonly place: string;
  readonly example?: string;
  /** What the records of this house say. */
  readonly here: readonly Example[];
}

/** The answer to one question: keys that it may mean, at length or, where they are too many for that, to choose among; or all keys of what
 *  it names, or what was perhaps meant. */
export type Explanation =
  | { readonly is: 'keys' | 'several'; readonly keys: readonly Explained[] }
  | { readonly is: 'group'; readonly groups: readonly Group[] }
  | { readonly is: 'unknown'; readonly nearest?: string };

/** Records of a house, and of another where examples are taken from that the house does not have. */
export interface Houses {
  readonly own: readonly Source[];
  readonly other: readonly Source[];
}

/** So many keys of one name are explained at once. */
const mostAtOnce = 3;

/** Explains `option.waste`, `ceiling-board.waste`, `waste`, `ceiling-board.face`, or `room`: a key by its group, by a record of the
 *  house, or by itself; an attribute by its category or by itself; a group with all its keys. */
export function explain(question: string, houses: Houses): Explanation {
  const all = groups();
  const [first = '', ...rest] = question.toLowerCase().split('.');
  const asked = subjectsOf(first, all, houses.own);
  const groupsAsked = all.filter(({ name }) => asked.some((each) => each.group === name));
  if (rest.length === 0 && groupsAsked.length > 0) return { is: 'group', groups: groupsAsked };
  const isWithin = groupsAsked.length > 0;
  const attributes = rest.length > 0 ? attributesNamed(rest.join('.'), first, all, houses.own) : [];
  const found = isWithin
    ? asked.flatMap((subject) =>
        keysAt(
          all.filter(({ name }) => name === subject.group),
          subject.within,
        ),
      )
    : keysAt(all, /^/u);
  const named = [...attributes, ...explained(found, isWithin ? rest : [first, ...rest], houses)];
  const keys = named.length > 0 || rest.length > 0 ? named : attributesAnywhere(first, all, houses.own);
  if (keys.length > 0) return { is: keys.length > mostAtOnce ? 'several' : 'keys', keys };
  const names = namesIn(isWithin ? groupsAsked : all, first, isWithin);
  const meant = nearest(question, isWithin ? names : [...names, ...attributeNames(houses.own)]);
  return meant === undefined ? { is: 'unknown' } : { is: 'unknown', nearest: meant };
}

interface Subject {
  readonly group: string;
  /** The files that it is asked of. */
  readonly within: RegExp;
}

/** What the first word names: a group of keys, or a record of the house. A category stands for its options too. */
function subjectsOf(word: string, all: readonly Group[], sources: readonly Source[]): readonly Subject[] {
  if (all.some(({ name }) => name === word)) return [{ group: word, within: /^/u }];
  return sources.flatMap(({ path }) => {
    const [, folder, slug] = /^content\/([a-z]+)\/(?:[^/]+\/)?([^/]+)\.md$/u.exec(path) ?? [];
    if (slug !== word || folder === undefined) return [];
    const own = all.filter(({ place }) => place.file.startsWith(`content/${folder}/`) && !place.kind);
    const subjects = own.map(({ name }) => ({ group: name, within: new RegExp(`^${path}$`, 'u') }));
    const options = { group: 'option', within: new RegExp(`^content/options/${word}/`, 'u') };
    return folder === 'categories' ? [...subjects, options] : subjects;
  });
}

/** A key that may be meant, and the files that it is asked of. */
interface Asked {
  readonly group: Group;
  readonly key: Key;
  readonly name: string;
  readonly within: RegExp;
}

function keysAt(of: readonly Group[], within: RegExp): readonly Asked[] {
  return of.flatMap((group) => group.keys.map((key) => ({ group, key, name: key.path.join('.'), within })));
}

/** Keys at the very path that was asked for; where there is none, those whose path ends with it. */
function explained(asked: readonly Asked[], path: readonly string[], { own, other }: Houses): readonly Explained[] {
  const wanted = path.join('.');
  const exact = asked.filter(({ name }) => name === wanted);
  const keys = exact.length > 0 ? exact : asked.filter(({ name }) => name.endsWith(`.${wanted}`));
  if (keys.length === 0) return [];
  const [here, there] = [examplesIn(own), examplesIn(other)];
  return keys.map(({ group, key, name, within }) => {
    const values = here(group, key).filter(({ file }) => within.test(file));
    const example = exampleOf(key, values) ?? exampleOf(key, there(group, key));
    return {
      name: `${group.name}.${name}`,
      meaning: meaningOf(key),
      form: key.form,
      isNeeded: key.isNeeded,
      readBy: key.readBy,
      place: placeWords(group.place),
      ...(example !== undefined && { example }),
      here: values,
    };
  });
}

/** What multiplies the quantity also multiplies what is paid for material, which nobody guesses from its label. */
function meaningOfAttribute(label: string, tells: string | undefined, multiplies = false): string {
  const words = [
    label,
    ...(tells === undefined || tells === label ? [] : [tells]),
    ...(multiplies
      ? [
          'What is bought is multiplied by it, and so is the cost of material; labor is not: its price is for all of them.',
        ]
      : []),
  ];
  return words.join(' ');
}

/** The attribute by which a category multiplies its quantity. */
function timesBy(category: Source): unknown {
  const measure = readFrontMatter(category).value?.data['measure'];
  return measure !== null && typeof measure === 'object'
    ? (measure as Readonly<Record<string, unknown>>)['times-by']
    : undefined;
}

function meaningOf({ meaning, only }: Key): string {
  return only.length === 0 ? meaning : `${meaning} Only with ${only.join(', ')}.`;
}

/** An attribute by its name alone, of every category that asks for one. */
function attributesAnywhere(name: string, all: readonly Group[], sources: readonly Source[]): readonly Explained[] {
  return categoriesIn(sources).flatMap(({ slug }) => attributesNamed(name, slug, all, sources));
}

function attributeNames(sources: readonly Source[]): readonly string[] {
  return categoriesIn(sources).flatMap(({ source }) => Object.keys(attributesOf(source)));
}

function categoriesIn(sources: readonly Source[]): readonly { readonly slug: string; readonly source: Source }[] {
  return sources.flatMap((source) => {
    const slug = /^content\/categories\/([^/]+)\.md$/u.exec(source.path)?.[1];
    return slug === undefined ? [] : [{ slug, source }];
  });
}

function attributesOf(category: Source): object {
  const attributes = readFrontMatter(category).value?.data['attributes'];
  return typeof attributes === 'object' && attributes !== null ? attributes : {};
}

/** An attribute that a category asks its options for. */
function attributesNamed(
  name: string,
  category: string,
  all: readonly Group[],
  sources: readonly Source[],
): readonly Explained[] {
  const record = sources.find(({ path }) => path === `content/categories/${category}.md`);
  const attributes = record && attributesOf(record);
  const rule = attributeRule(attributes, name);
  if (!rule) return [];
  // The same name may be another thing of another product: a board's face is a length, a door's what it is faced with.
  const fact = Object.values<Product>(products)
    .filter(({ knownBy }) => knownBy.some((known) => attributeRule(attributes, known)))
    .flatMap(({ facts }) => facts[name] ?? [])
    .find(({ kind }) => kind === rule.kind);
  const path = ['attributes', name];
  const option = all.find((group) => group.name === 'option');
  const key = option?.keys.find((each) => each.path.join('.') === 'attributes');
  const options = sources.filter((source) => source.path.startsWith(`content/options/${category}/`));
  const here = option && key ? examplesIn(options)(option, { ...key, path }) : [];
  const choices = rule.choices ? `, one of ${rule.choices.join(', ')}` : '';
  return [
    {
      name: `${category}.${name}`,
      meaning: meaningOfAttribute(`${rule.label}.`, fact?.tells, record && timesBy(record) === name),
      form: `${fact?.unit === undefined ? rule.kind : `${rule.kind}, ${fact.unit}`}${choices}`,
      isNeeded: rule.required === true,
      readBy: [...(fact?.readers ?? []), ...(fact?.cautions ?? []).map((each) => `caution ${each}`)],
      place: `content/options/${category}/<option>.md, in attributes`,
      ...(here[0] && { example: here[0].text }),
      here,
    },
  ];
}

interface Rule {
  readonly label: string;
  readonly kind: string;
  readonly required?: boolean;
  readonly choices?: readonly string[];
}

function attributeRule(attributes: unknown, name: string): Rule | undefined {
  if (typeof attributes !== 'object' || attributes === null) return undefined;
  const rule = (attributes as Readonly<Record<string, unknown>>)[name];
  return typeof rule === 'object' && rule !== null && 'label' in rule && 'kind' in rule ? (rule as Rule) : undefined;
}

/** Everything that can be asked for, by whole names. */
function namesIn(of: readonly Group[], first: string, isWithin: boolean): readonly string[] {
  const names = of.flatMap((group) =>
    group.keys.flatMap(({ path }) => {
      const key = path.join('.');
      return isWithin ? [`${first}.${key}`] : [`${group.name}.${key}`, key, group.name];
    }),
  );
  return [...new Set(names)].sort(byText);
}
