import { createHash } from 'node:crypto';
import { canonicalJson } from './canonical-json.js';

/** SHA-256 of the canonical JSON (RFC 8785) of a value, as 64 hexadecimal digits in lower case. */
export function digestOf(value: unknown): string {
  return digestOfBytes(new TextEncoder().encode(canonicalJson(value)));
}

/** SHA-256 of bytes, as 64 hexadecimal digits in lower case. */
export function digestOfBytes(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
