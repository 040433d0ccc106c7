import type { Sieved } from '../sheet/index.js';
import { sieve } from './sieve.js';

/** A value with every string in it behind the sieve. Closed lists of words and brands of the program stay what they are. */
export type Cleared<T> = T extends string
  ? string extends T
    ? Sieved
    : T
  : T extends number | boolean | null | undefined
    ? T
    : unknown extends T
      ? Plain
      : // Lists stay lists, and pairs stay pairs.
        { readonly [K in keyof T]: Cleared<T[K]> };

/** Plain data: what JSON keeps. */
export type Plain =
  null | boolean | number | Sieved | readonly Plain[] | { readonly [name: string]: Plain | undefined };

/** Ids and names deep in drawings' data: the same string becomes the same everywhere, so that references hold. */
export function cleared<T>(value: T): Cleared<T> {
  return walk(value) as Cleared<T>;
}

function walk(value: unknown): Plain {
  if (typeof value === 'string') return sieve(value);
  if (value === null || typeof value === 'number' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(walk);
  if (typeof value !== 'object') return null;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, part]) => part !== undefined)
      .map(([name, part]) => [name, walk(part)]),
  );
}
