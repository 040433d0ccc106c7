import type { Origin, Path } from '../../base/problem/index.js';
import type { Option } from '../model/index.js';

/** Where the value at a path of an option's record stands: in the record itself, or in that of its category. */
export function placeOfFact(
  { origin, shared = [] }: Pick<Option, 'origin' | 'shared'>,
  path: Path,
): { readonly origin: Origin; readonly path: Path } {
  const written = path.join('.');
  const from = shared.find(({ key }) => written === key || written.startsWith(`${key}.`));
  return from
    ? { origin: from.origin, path: [...from.path, ...path.slice(from.key.split('.').length)] }
    : { origin, path };
}
