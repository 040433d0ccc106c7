import type { Path } from '../../base/problem/index.js';
import { joinWords } from '../../base/units/index.js';
import type { Finding } from './finding.js';

/** Keys that one group lacks are told together where they are many; a key that is like none beside the one that is missing is likely that. */
export function oncePerGroup(found: readonly Finding[]): readonly Finding[] {
  const groupOf = ({ path, missing }: Finding): string => placeName(missing === undefined ? path.slice(0, -1) : path);
  const of = (one: Finding, isOne: (other: Finding) => boolean): readonly Finding[] =>
    found.filter((other) => isOne(other) && groupOf(other) === groupOf(one));
  const isMissing = (one: Finding): boolean => one.missing !== undefined;
  const isStrange = (one: Finding): boolean => one.code === 'key-unknown' && one.meant === undefined;
  return found.flatMap((one) => {
    if (!isMissing(one) && !isStrange(one)) return [one];
    const [missing, strange] = [of(one, isMissing), of(one, isStrange)];
    const [first, second] = missing;
    if (first && !second && strange.length === 1) {
      if (isMissing(one)) return [];
      return [
        {
          ...one,
          message: `${one.message}, and '${first.missing ?? ''}' is missing`,
          fix: `is it that? ${one.fix ?? ''}`.trim(),
        },
      ];
    }
    if (!isMissing(one) || missing.length < 3) return [one];
    if (first !== one) return [];
    const names = missing.map((other) => other.missing ?? '');
    const message = one.message.replace(/lacks .*$/u, () => `lacks ${joinWords(names.map((name) => `'${name}'`))}`);
    return [{ ...one, message, fix: `write ${names.map((name) => `${name}: …`).join(', ')}` }];
  });
}

/** Of entries of one list that are all of the same wrong kind, the first. */
export function oncePerList(found: readonly Finding[]): readonly Finding[] {
  const isOfList = (one: Finding): boolean => one.code === 'value-type' && typeof one.path.at(-1) === 'number';
  const listOf = (one: Finding): string => placeName([...one.path.slice(0, -1), one.asked ?? '']);
  const first = new Map<string, Finding>();
  for (const one of found) if (isOfList(one) && !first.has(listOf(one))) first.set(listOf(one), one);
  return found.flatMap((one) => {
    if (!isOfList(one)) return [one];
    const name = listOf(one);
    if (first.get(name) !== one) return [];
    const more = found.filter((other) => isOfList(other) && listOf(other) === name).length - 1;
    return [more === 0 ? one : { ...one, message: `${one.message}; so with ${more} more of its entries` }];
  });
}

/** The place of a path, for comparing. */
export function placeName(path: Path): string {
  return JSON.stringify(path);
}
