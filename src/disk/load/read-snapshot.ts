import type { Issue, Source } from '../../core/model/index.js';
import { digestOfBytes } from '../../signoff/index.js';
import { readFileInside } from '../store/index.js';
import { recordNumber } from '../../base/units/index.js';

/** The records that an issue was made from, out of its snapshot, or why they cannot be had. */
export type Snapshot =
  { readonly ok: true; readonly sources: readonly Source[] } | { readonly ok: false; readonly why: string };

/** `issued/003`: where an issue's files lie in the house folder, without their endings. */
export function issuedPath(number: number): string {
  return `issued/${recordNumber(number)}`;
}

/** Reads an issue's snapshot from the house folder and proves it by the digest in its record. What was issued can so be
 *  had in a shallow clone, and after history was rewritten. */
export async function readSnapshot(houseDir: string, issue: Pick<Issue, 'number' | 'digest'>): Promise<Snapshot> {
  const proof = await proveSnapshot(houseDir, issue);
  if (!proof.ok) return proof;
  // The digest proves that these are the bytes that the program wrote.
  const { sources } = JSON.parse(new TextDecoder().decode(proof.bytes)) as { sources: readonly Source[] };
  return { ok: true, sources };
}

/** The bytes of an issue's snapshot when they have the digest in its record, or why not. */
export async function proveSnapshot(
  houseDir: string,
  issue: Pick<Issue, 'number' | 'digest'>,
): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly why: string }> {
  const path = `${issuedPath(issue.number)}.json`;
  const bytes = await readFileInside(houseDir, path);
  if (!bytes) return { ok: false, why: `${path}, the snapshot of issue ${issue.number}, is not in the house folder` };
  if (digestOfBytes(bytes) !== issue.digest)
    return { ok: false, why: `${path} is not what issue ${issue.number} issued: its digest differs from the record's` };
  return { ok: true, bytes };
}
