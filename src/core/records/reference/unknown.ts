import {
  didYouMean,
  problemAt,
  type Origin,
  type Path,
  type Problem,
  type ProblemCode,
} from '../../../base/problem/index.js';

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
  }: {
    readonly code: ProblemCode;
    readonly message: string;
    readonly name: string;
    readonly among: Iterable<string>;
    readonly lives: string;
  },
): Problem {
  const meant = didYouMean(name, among);
  return problemAt(origin, path, code, message, { fix: meant === undefined ? lives : `${meant} ${lives}` });
}

/** An option that its category does not have. */
export function unknownOption(
  origin: Origin,
  path: Path,
  name: string,
  { category, among }: { readonly category: string; readonly among: Iterable<string> },
): Problem {
  const message = `${category} has no option '${name}'`;
  const lives = `Options live in content/options/${category}/`;
  return unknown(origin, path, { code: 'option-unknown', message, name, among, lives });
}

/** The first few of a list of names, for a line that says what there is. */
export function some(names: Iterable<string>): string {
  const all = [...names];
  const shown = all.slice(0, 12).join(', ');
  return all.length > 12 ? `${shown}, …` : shown || 'none yet';
}
