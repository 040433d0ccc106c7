import {
  didYouMean,
  namedAs,
  problemAt,
  type Origin,
  type Path,
  type Problem,
  type ProblemCode,
} from '../../../base/problem/index.js';
import type { Draft } from '../draft.js';

/** A name that means nothing, with what was probably meant and where such names live. */
export function unknown(
  origin: Origin,
  path: Path,
  {
    code,
    message,
    name,
    among,
    lives,
    onKey = false,
  }: {
    readonly code: ProblemCode;
    readonly message: string;
    readonly name: string;
    readonly among: Iterable<string>;
    readonly lives: string;
    /** The name is a key. */
    readonly onKey?: boolean;
  },
): Problem {
  const meant = didYouMean(name, among);
  const fix = meant === undefined ? lives : `${meant} ${lives}`;
  return problemAt(origin, path, code, message, { fix, onKey, cause: `${name} ${lives}` });
}

export function unknownCategory(
  origin: Origin,
  path: Path,
  name: string,
  among: Iterable<string>,
  detail: { readonly onKey?: boolean } = {},
): Problem {
  const message = `there is no category '${name}'`;
  const lives = 'Categories live in content/categories/';
  return unknown(origin, path, { code: 'category-unknown', message, name, among, lives, ...detail });
}

/** An option that its category does not have: perhaps another one's, or called by the name that is printed. */
export function unknownOption(
  origin: Origin,
  path: Path,
  name: string,
  { category, draft }: { readonly category: string; readonly draft: Pick<Draft, 'options' | 'slugs'> },
): Problem {
  const message = `${category} has no option '${name}'`;
  const elsewhere = [...draft.slugs.options].find(([other, slugs]) => other !== category && slugs.has(name))?.[0];
  const lives =
    elsewhere === undefined ? `Options live in content/options/${category}/` : `'${name}' is an option of ${elsewhere}`;
  const named = draft.options.flatMap(({ slug, category: own, record: { raw } }) =>
    own === category ? [{ slug, name: typeof raw.name === 'string' ? raw.name : slug }] : [],
  );
  const own = [...(draft.slugs.options.get(category) ?? [])].map((slug) => ({ slug, name: slug }));
  const meant = elsewhere === undefined ? namedAs(name, [...named, ...own]) : undefined;
  const fix = meant === undefined ? lives : `did you mean '${meant.slug}'? ${lives}`;
  return problemAt(origin, path, 'option-unknown', message, { fix });
}

/** Who did something is one of the house's people, by name or by role: a warning. */
export function personUnknown(
  { house }: Draft,
  person: string | undefined,
  { origin, path, did }: { readonly origin: Origin; readonly path: Path; readonly did: string },
): readonly Problem[] {
  if (person === undefined || !house?.whole) return [];
  const people = house.whole.people.flatMap(({ name, role }) => [name, role]);
  if (people.includes(person)) return [];
  const names = house.whole.people.map(({ name }) => name);
  const fix =
    didYouMean(person, people) ?? `people are ${some(names)}; add them to people in content/house.md if it is another`;
  const message = `${did} '${person}', who is not among the people of the house`;
  return [problemAt(origin, path, 'chooser-unknown', message, { fix, severity: 'warning' })];
}

/** The first few of a list of names, for a line that says what there is. */
export function some(names: Iterable<string>): string {
  const all = [...names];
  const shown = all.slice(0, 12).join(', ');
  return all.length > 12 ? `${shown}, …` : shown || 'none yet';
}
