import { SignPdf } from '@signpdf/signpdf';
import { PDFName } from 'pdf-lib';
import { CmsSigner } from '../cms/cms-signer.js';
import {
  addRevision,
  Allowance,
  carriesAgreed,
  factsOf,
  formFields,
  isFilled,
  openPdf,
  startAdditions,
  whyUnreadable,
  type FormField,
  type PdfFacts,
  type PdfFile,
  type Revision,
} from '../pdf/index.js';
import { verifyPdf, type SignatureReport } from '../verify/index.js';
import {
  openCertificate,
  type CertificateFacts,
  type CertificateRefusal,
  type OpenCertificate,
} from './open-certificate.js';
import { roomForStamp } from './stamp-signature.js';
import { fillField, printInstant, signField, signInvisibly } from './place-signature.js';

export interface SignRequest {
  /** Bytes of a PKCS#12 file. */
  readonly p12: Uint8Array;
  readonly passphrase: string;
  readonly reason: string;
  /** Who signs, in words; shown in the box. Absent: the certificate's name. */
  readonly name?: string;
  readonly location?: string;
  readonly at: Date;
  /** Name of the signature field to sign in, such as `owner-signature`. Absent, or the PDF has no field to sign: a field
   *  that is not seen is added. */
  readonly field?: string;
  /** Text fields to fill in the same go, by name. */
  readonly fill?: Readonly<Record<string, string>>;
  /** Keep room in the signature for a time-stamp. */
  readonly keepRoom?: boolean;
  /** Sign with a certificate that is expired or not valid yet. */
  readonly allowExpired?: boolean;
  /** Is it a document of this program? Default: it carries `book.json`. */
  readonly isOurs?: (facts: PdfFacts) => boolean;
}

type SignRefusal =
  | CertificateRefusal
  | 'signed-already'
  | 'expired'
  | 'not-yet-valid'
  | 'not-pdf'
  | 'encrypted'
  | 'not-ours'
  | 'altered'
  | 'field-unknown'
  | 'field-signed'
  | 'field-filled'
  | 'sign-failed';

type Signed =
  | { readonly ok: true; readonly pdf: Uint8Array; readonly field: string; readonly certificate: CertificateFacts }
  | { readonly ok: false; readonly code: SignRefusal; readonly message: string };

/** The PDF with one more signature, by an added revision: the bytes that were signed before stay as they are. The one that leaves no field to
 *  sign locks all fields. What the user
 *  can have done wrong comes back as a refusal; no message holds the passphrase. */
export async function signPdf(pdf: Uint8Array, request: SignRequest): Promise<Signed> {
  const opened = openCertificate(request.p12, request.passphrase);
  if (!opened.ok) return opened;
  const { facts } = opened.certificate;
  const untimely = request.allowExpired ? undefined : refuseUntimely(facts, request.at);
  if (untimely) return untimely;
  const prepared = await prepare(pdf, request, opened.certificate);
  if ('code' in prepared) return prepared;
  try {
    const signer = new CmsSigner(opened.certificate);
    const signed = await new SignPdf().sign(Buffer.from(prepared.pdf), signer);
    return { ok: true, pdf: signed, field: prepared.field, certificate: facts };
  } catch {
    // The signer's own words are left out: nothing that it read may reach a log.
    return refuse('sign-failed', 'the signature could not be made with this certificate');
  }
}

/** What is left to sign and to fill in. */
interface Signable {
  readonly ok: true;
  /** Names of the empty signature fields, and of the empty text fields. */
  readonly toSign: readonly string[];
  readonly toFill: readonly string[];
}

/** What of a PDF is left to sign, or why it cannot be signed; asks for no certificate. With `field`, only when that one can. */
export async function findSignable(
  pdf: Uint8Array,
  field?: string,
  isOurs: (facts: PdfFacts) => boolean = carriesAgreed,
): Promise<Signable | Refused> {
  const ready = await openToSign(pdf, isOurs);
  if ('code' in ready) return ready;
  const fields = formFields(ready.revision);
  const target = chooseField(fields, field);
  if (target && 'code' in target) return target;
  const empty = (wanted: FormField['type']): readonly string[] =>
    fields.flatMap((one) => (one.type === wanted && !isFilled(ready.revision, one) ? [one.name] : []));
  return { ok: true, toSign: empty('signature'), toFill: empty('text') };
}

interface Prepared {
  readonly pdf: Uint8Array;
  readonly field: string;
}

type Refused = Signed & { readonly ok: false };

async function prepare(
  pdf: Uint8Array,
  request: SignRequest,
  certificate: OpenCertificate,
): Promise<Prepared | Refused> {
  const ready = await openToSign(pdf, request.isOurs ?? carriesAgreed);
  if ('code' in ready) return ready;
  const { file, revision } = ready;
  const twice = ready.signatures.find((one) => one.certificate?.fingerprint === certificate.facts.fingerprint);
  if (twice) {
    const { name } = certificate.facts;
    const why = `the certificate of ${name} has signed in ${twice.field} already`;
    return refuse('signed-already', `${why}; each side signs with a certificate of its own`);
  }
  const fields = formFields(revision);
  const target = chooseField(fields, request.field);
  if (target && 'code' in target) return target;
  const entries = chooseEntries(revision, fields, request.fill ?? {});
  if ('code' in entries) return entries;
  const additions = startAdditions(file);
  const placing = { file, revision, additions };
  for (const [field, text] of entries.list) fillField(placing, field, text);
  const { name = certificate.facts.name, reason, location, at } = request;
  // A signature holds the certificates, twice the key's length, and some names and times.
  const own = Math.max(
    8192,
    certificate.chain.reduce((sum, der) => sum + der.length, 4096),
  );
  const room = own + (request.keepRoom === true ? roomForStamp : 0);
  const isLast = target !== undefined && !fields.some((one) => isToSign(revision, one) && one.name !== target.name);
  const words = { name, reason, at, room, locks: isLast, ...(location !== undefined && { location }) };
  const free = request.field ?? freeName(fields);
  if (target) signField(placing, target, words);
  else signInvisibly(placing, free, words);
  return { pdf: addRevision(file, additions), field: target?.name ?? free };
}

interface Opened {
  readonly file: PdfFile;
  readonly revision: Revision;
  /** Those that it has. */
  readonly signatures: readonly SignatureReport[];
}

function isToSign(revision: Revision, field: FormField): boolean {
  return field.type === 'signature' && !isFilled(revision, field);
}

async function openToSign(pdf: Uint8Array, isOurs: (facts: PdfFacts) => boolean): Promise<Opened | Refused> {
  let file: PdfFile;
  let facts: PdfFacts;
  try {
    file = openPdf(pdf, new Allowance(20_000));
    const [newest] = file.revisions;
    if (!newest) return refuse('not-pdf', whyUnreadable(pdf));
    if (newest.trailer.has(PDFName.of('Encrypt'))) {
      return refuse('encrypted', 'the PDF is encrypted; sign the one that was printed');
    }
    facts = factsOf(file, newest);
  } catch {
    return refuse('not-pdf', whyUnreadable(pdf));
  }
  const [revision] = file.revisions;
  if (!revision) return refuse('not-pdf', whyUnreadable(pdf));
  if (!isOurs(facts))
    return refuse('not-ours', 'the PDF is not one of this program: the data it was printed from is not in it');
  const { verdict, problems, signatures } = await verifyPdf(pdf);
  if (verdict === 'whole' || verdict === 'unsigned') return { file, revision, signatures };
  const why = problems[0] ?? verdict;
  if (verdict === 'unproven')
    return refuse('altered', `a signature in the PDF proves nothing (${why}); sign a copy without it`);
  return refuse('altered', `the PDF is not as it was signed (${why}); sign an unaltered copy`);
}

function chooseField(fields: readonly FormField[], name: string | undefined): FormField | Refused | undefined {
  if (name === undefined) return undefined;
  const signatures = fields.filter(({ type, number }) => type === 'signature' && number !== undefined);
  const found = signatures.find((field) => field.name === name);
  if (found?.value) return refuse('field-signed', `the field ${name} is signed already`);
  if (found) return found;
  const isTaken = fields.some((field) => field.name === name);
  if (isTaken) return refuse('field-unknown', `the field ${name} is not a field to sign`);
  if (signatures.length === 0) return undefined;
  const names = signatures.map((field) => field.name).join(', ');
  return refuse('field-unknown', `there is no field ${name}; the PDF has ${names}`);
}

function chooseEntries(
  revision: Revision,
  fields: readonly FormField[],
  fill: Readonly<Record<string, string>>,
): { readonly list: readonly (readonly [FormField, string])[] } | Refused {
  const list: [FormField, string][] = [];
  for (const [name, text] of Object.entries(fill)) {
    const field = fields.find((one) => one.name === name && one.type === 'text' && one.number !== undefined);
    if (!field) return refuse('field-unknown', `there is no text field ${name}`);
    if (isFilled(revision, field)) return refuse('field-filled', `the field ${name} is filled in already`);
    list.push([field, text]);
  }
  return { list };
}

function freeName(fields: readonly FormField[]): string {
  const taken = new Set(fields.map(({ name }) => name));
  let count = 1;
  while (taken.has(`signature-${count}`)) count += 1;
  return `signature-${count}`;
}

function refuseUntimely({ from, to, name }: CertificateFacts, at: Date): Refused | undefined {
  if (at > to) return refuse('expired', `the certificate of ${name} expired on ${printInstant(to)}`);
  if (at < from) return refuse('not-yet-valid', `the certificate of ${name} is valid from ${printInstant(from)}`);
  return undefined;
}

function refuse(code: SignRefusal, message: string): Refused {
  return { ok: false, code, message };
}
