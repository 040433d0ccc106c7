import type { Path } from '../../base/problem/index.js';
import type { Source } from '../model/index.js';
import { checkRecord, soundItems } from './checked-record.js';
import { readFrontMatter } from './front-matter.js';
import type { RawHouse } from './raw/house.js';

/** A certificate that the house's record names. */
export interface Signer {
  readonly role: 'owner' | 'builder';
  /** SHA-256 of the certificate's DER, as 64 hexadecimal digits in lower case. */
  readonly fingerprint: string;
}

interface Signers {
  readonly signers: readonly Signer[];
  /** Some of what the record says of signers cannot be read; `bookmatch check` says what. */
  readonly broken: boolean;
}

/** The signers that a house's record names. Only these are read: what is wrong elsewhere in the records does not make a signed
 *  book less signed. */
export function readSigners(house: Source): Signers {
  const front = readFrontMatter(house);
  if (!front.value) return { signers: [], broken: true };
  const record = checkRecord<RawHouse>('house', 'house', front.value);
  const signers = signersIn(record).map(({ role, fingerprint }) => ({ role, fingerprint }));
  return { signers, broken: !record.sound(['signers']) };
}

/** Those that can be read, each with its place in the list. */
export function signersIn(record: Parameters<typeof soundItems>[0]): readonly (Signer & { readonly path: Path })[] {
  return soundItems<NonNullable<RawHouse['signers']>[number]>(record, 'signers').map(
    ({ path, raw: { role, fingerprint } }) => ({
      role,
      fingerprint: fingerprint.replaceAll(':', '').toLowerCase(),
      path,
    }),
  );
}
