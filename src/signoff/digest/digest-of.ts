import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';

/** SHA-256 of the canonical JSON (RFC 8785) of a value, as 64 hexadecimal digits in lower case. */
export function digestOf(value: unknown): string {
  return digestOfBytes(new TextEncoder().encode(canonicalJson(value)));
}

/** SHA-256 of bytes, as 64 hexadecimal digits in lower case. */
export function digestOfBytes(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** The one text of a JSON value by RFC 8785: no white space, keys in order of their UTF-16 units, numbers as ECMAScript
 *  prints them. Keys whose value is undefined are left out, as JSON does. Throws on what JSON cannot say (NaN, infinities,
 *  lone surrogates, a bare undefined): that is a fault of the program, not of a record. */
export function canonicalJson(value: unknown): string {
  const text = serialize(value);
  if (text === undefined) throw new TypeError('undefined has no JSON text');
  // JSON.stringify writes a lone surrogate as an escape; RFC 8785 §3.2.2.2 refuses it.
  if (/\\ud[89a-f]/u.test(text.replace(/\\\\/gu, '')))
    throw new TypeError('a lone surrogate has no canonical JSON text');
  return text;
}

// The package's types are written for `export default`, its code for `module.exports`.
const serialize = canonicalize as unknown as (value: unknown) => string | undefined;
