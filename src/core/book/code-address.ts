/** How much of a digest a code on paper carries: hexadecimal digits, as many as `current/…svg` of a handout tells. */
export const codeDigits = 5;

/** What a code on paper says: which page of the house's site it opens, and of which document the paper is. */
export interface CodeSays {
  readonly page: string;
  /** An issue of the book, or a change order. */
  readonly of: 'issue' | 'change';
  /** Absent of what was not issued. */
  readonly stamp?: CodeStamp;
}

interface CodeStamp {
  readonly number: number;
  /** Hexadecimal, at least as many digits as a code carries. */
  readonly digest: string;
}

/** What a code on paper opens: `page` on the house's site, asked for the number of its document and how the digest of that begins
 *  (`?issue=2&digest=1a2b3`; `?issue=none` of what was not issued). */
export function codeAddress({ page, of, stamp }: CodeSays): string {
  return `${page}?${of}=${stamp ? `${stamp.number}&digest=${stamp.digest.slice(0, codeDigits)}` : 'none'}`;
}

const form = /^(https:\/\/[^\s?#]{1,2000})\?(issue|change)=(?:none|([1-9]\d{0,3})&digest=([0-9a-f]{5,64}))$/u;

/** Reads it back; undefined for any other text. */
export function readCodeAddress(text: string): CodeSays | undefined {
  const [, page, of, number, digest] = form.exec(text) ?? [];
  if (page === undefined) return undefined;
  const stamp = digest === undefined ? undefined : { number: Number(number), digest };
  return { page, of: of === 'change' ? 'change' : 'issue', ...(stamp && { stamp }) };
}
