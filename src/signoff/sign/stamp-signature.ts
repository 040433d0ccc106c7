import { readAnswer, timeStampQuery, withTimeStamp } from '../cms/time-stamp.js';
import { Allowance, openPdf } from '../pdf/index.js';
import { placedSignatures, verifyPdf, type SignatureReport } from '../verify/index.js';

/** Bytes that are kept free in a signature for a time-stamp with the certificates of its authority. */
export const roomForStamp = 16_384;

/** The query to a time-stamp authority for the newest signature of a signed PDF, in DER. */
export function queryOf(signed: Uint8Array): Uint8Array {
  const newest = placedSignatures(openPdf(signed, new Allowance(20_000))).at(-1);
  if (!newest) throw new TypeError('a PDF without a signature');
  return timeStampQuery(newest.range.contents);
}

type Stamped =
  | { readonly ok: true; readonly pdf: Uint8Array; readonly signature: SignatureReport }
  | { readonly ok: false; readonly message: string };

/** The PDF with an authority's answer put into its newest signature (PAdES B-T; EN 319 142-1, 6.3, from memory). The signature does not sign its own
 *  bytes, so that all else stays. Certificates in `roots` vouch for authorities. */
export async function stampSignature(
  pdf: Uint8Array,
  answer: Uint8Array,
  roots: readonly (string | Uint8Array)[] = [],
): Promise<Stamped> {
  const before = await verifyPdf(pdf);
  if (before.verdict === 'unsigned') return refuse('the PDF is not signed: sign it with --query first');
  if (before.verdict !== 'whole') return refuse(`the PDF is not as it was signed (${before.problems[0] ?? ''})`);
  const token = readAnswer(answer);
  if (typeof token === 'string') return refuse(token);
  const newest = placedSignatures(openPdf(pdf, new Allowance(20_000))).at(-1);
  const known = before.signatures.at(-1);
  if (!newest || !known) return refuse('the PDF is not signed: sign it with --query first');
  if (known.timeStamp) return refuse(`the signature in ${newest.field} has a time-stamp already`);
  const stamped = replaceContents(pdf, newest.range.hole, withTimeStamp(newest.range.contents, token));
  if (!stamped) {
    return refuse(`the signature in ${newest.field} has no room for a time-stamp: sign anew, with --query`);
  }
  const report = await verifyPdf(stamped, { roots });
  const signature = report.signatures.at(-1);
  const problem = signature?.timeStamp?.problem;
  if (problem !== undefined)
    return refuse(`the time-stamp is none of the newest signature, in ${newest.field}: ${problem}`);
  if (report.verdict !== 'whole' || !signature)
    return refuse(`the time-stamp does not go with it: ${report.problems.join('; ')}`);
  return { ok: true, pdf: stamped, signature };
}

/** Another message in the hole that holds the signature, filled up with zeros; undefined when it is longer than the hole. */
function replaceContents(
  pdf: Uint8Array,
  [start, end]: readonly [number, number],
  message: Uint8Array,
): Uint8Array | undefined {
  // Between `<` and `>`.
  const room = end - start - 2;
  const text = Buffer.from(message).toString('hex');
  if (text.length > room) return undefined;
  const copy = Buffer.from(pdf);
  copy.write(text.padEnd(room, '0'), start + 1, 'latin1');
  return copy;
}

function refuse(message: string): Stamped {
  return { ok: false, message };
}
