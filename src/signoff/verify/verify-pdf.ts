import { PDFName } from 'pdf-lib';
import { digestOfBytes } from '../digest/index.js';
import {
  Allowance,
  attachmentsOf,
  formFields,
  openPdf,
  TooMuchWork,
  whyUnreadable,
  type PdfFile,
} from '../pdf/index.js';
import { changesAfter } from './changes-after.js';
import { checkSignature, type CheckedSignature } from './check-signature.js';
import { findSignatures } from './find-signatures.js';
import { describeChange, type LaterChange, type PdfReport, type SignatureReport } from './report.js';
import { endsFile } from './signed-range.js';
import { readCertificates } from './trust.js';

interface VerifyOptions {
  /** Certificates to trust: PEM text, which may hold several, or DER. */
  readonly roots?: readonly (string | Uint8Array)[];
  /** Milliseconds after which the check gives up; 20 000 unless told. */
  readonly milliseconds?: number;
}

const largest = 512 * 1024 * 1024;

/** What a PDF proves: who signed it and when, whether it is still what they signed, and what it carries. Never throws: a
 *  file that cannot be read is `unreadable`, or `altered` when it holds the remains of a signature. */
export async function verifyPdf(pdf: Uint8Array, options: VerifyOptions = {}): Promise<PdfReport> {
  try {
    if (pdf.length > largest) return failed('unreadable', 'the file is too large for a PDF of this program');
    const file = openPdf(pdf, new Allowance(options.milliseconds ?? 20_000));
    if (file.revisions.some(({ trailer }) => trailer.has(PDFName.of('Encrypt')))) {
      return failed('unreadable', 'the PDF is encrypted');
    }
    return await report(file, options);
  } catch (error) {
    if (error instanceof TooMuchWork) return failed('unreadable', error.message);
    return holdsSignature(pdf)
      ? failed(
          'altered',
          'it holds a signature, but is damaged or cut off: it is not the file that was signed; ask for it again',
        )
      : failed('unreadable', whyUnreadable(pdf));
  }
}

async function report(file: PdfFile, { roots = [] }: VerifyOptions): Promise<PdfReport> {
  const trusted = readCertificates(roots);
  const checked: CheckedSignature[] = [];
  for (const found of findSignatures(file)) checked.push(await checkSignature(file, found, trusted));
  checked.sort((a, b) => (a.range?.end ?? Infinity) - (b.range?.end ?? Infinity));
  const steps = stepsOf(file, checked);
  const signatures = checked.map((one) => finish(one, steps));
  const carried = { toSign: emptyFields(file), ...carriedFiles(file) };
  if (signatures.length === 0) {
    return holdsSignature(file.bytes)
      ? { ...failed('altered', 'the signature that it holds is no longer part of it'), ...carried }
      : { verdict: 'unsigned', signatures, problems: [], ...carried };
  }
  const problems = signatures.flatMap(({ field, problems: some }) => some.map((problem) => `${field}: ${problem}`));
  const states = new Set(signatures.map(({ state }) => state));
  const verdict = states.has('altered') ? 'altered' : states.has('unproven') ? 'unproven' : 'whole';
  return { verdict, signatures, problems, ...carried };
}

interface Step {
  /** It applies to signatures that end here or before. */
  readonly from: number;
  readonly changes: readonly LaterChange[];
}

/** What happened between one signed state and the next, and after the last. */
function stepsOf(file: PdfFile, checked: readonly CheckedSignature[]): readonly Step[] {
  const cuts = checked.flatMap(({ range }) => (range ? [{ revision: range.revision, end: range.end }] : []));
  const { length } = file.bytes;
  const last = { revision: 0, end: length };
  return cuts.flatMap((cut, index) => {
    const next = cuts[index + 1] ?? last;
    if (next.end === cut.end) return [];
    const stray = next.revision >= cut.revision || (next === last && !endsFile(file.bytes, length));
    const span = { before: cut.revision, after: next.revision, from: cut.end, to: next.end };
    const changes: readonly LaterChange[] = stray
      ? [{ kind: 'altered', why: `${next.end - cut.end} bytes were added that are no part of the document` }]
      : changesAfter(file, span);
    return [{ from: cut.end, changes }];
  });
}

function finish({ range, report: one }: CheckedSignature, steps: readonly Step[]): SignatureReport {
  const end = range?.end;
  const after = end === undefined ? [] : steps.filter(({ from }) => from >= end).flatMap(({ changes }) => changes);
  const alterations = after.filter(({ kind }) => kind === 'altered');
  const problems = [
    ...one.problems,
    ...alterations.map((change) => `after this signature it was ${describeChange(change)}`),
  ];
  return { ...one, after, problems, state: alterations.length > 0 ? 'altered' : one.state };
}

function emptyFields({ revisions: [newest] }: PdfFile): readonly string[] {
  if (!newest) return [];
  return formFields(newest).flatMap(({ name, type, value }) => (type === 'signature' && !value ? [name] : []));
}

function carriedFiles(file: PdfFile): Pick<PdfReport, 'attachments' | 'book' | 'changeOrder' | 'handout'> {
  const [newest] = file.revisions;
  const files = newest ? attachmentsOf(file, newest).map(({ name, bytes }) => ({ name, bytes: bytes() })) : [];
  const attachments = files.map(({ name, bytes }) => ({ name, size: bytes.length, sha256: digestOfBytes(bytes) }));
  const agreed = files.filter(({ name }) => name === 'book.json' || name === 'change-order.json');
  const [one] = agreed;
  // Two of them: nobody could say which one was meant.
  const handout = files.find(({ name }) => name === 'handout.json');
  if (!one) return { attachments, ...(handout && { handout: handout.bytes }) };
  if (agreed.length > 1) return { attachments };
  const carried = { bytes: one.bytes, sha256: digestOfBytes(one.bytes) };
  return { attachments, ...(one.name === 'book.json' ? { book: carried } : { changeOrder: carried }) };
}

function holdsSignature(bytes: Uint8Array): boolean {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes('/ByteRange');
}

function failed(verdict: PdfReport['verdict'], problem: string): PdfReport {
  return { verdict, signatures: [], toSign: [], problems: [problem], attachments: [] };
}
