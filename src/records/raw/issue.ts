/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * A numbered version of the book, written by the program. Its snapshot lies in issued/.
 */
export interface RawIssue {
  /**
   * What it was issued for.
   */
  purpose: 'pricing' | 'sign-off' | 'construction';
  /**
   * The day of issue, for which the book was computed.
   */
  date: string;
  /**
   * The commit whose records it was made from.
   */
  commit: string;
  /**
   * SHA-256 of the snapshot.
   */
  digest: string;
  /**
   * Digest of what each room's page agrees to.
   */
  rooms: {
    [k: string]: string;
  };
  /**
   * Digest of each trade's part, without money.
   */
  trades: {
    [k: string]: string;
  };
  /**
   * Signatures that were accepted.
   */
  signatures?: RawSignature[];
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * A signature on an issue, as it was accepted.
 */
export interface RawSignature {
  /**
   * Who signed.
   */
  role: 'owner' | 'builder';
  /**
   * Name in the certificate, or as written.
   */
  name: string;
  /**
   * The day of signing, by the signer's word.
   */
  on: string;
  /**
   * By certificate, or by hand on paper.
   */
  how: 'certificate' | 'hand';
  /**
   * The signed file, in the house folder.
   */
  file: string;
  /**
   * SHA-256 of the signed file.
   */
  digest: string;
  /**
   * SHA-256 of the certificate.
   */
  fingerprint?: string;
}
