import { SignPdf } from '@signpdf/signpdf';
import type { Signer } from '@signpdf/utils';
import { CmsSigner } from '../../src/signoff/cms/cms-signer.js';
import { addRevision, Allowance, formFields, openPdf, startAdditions } from '../../src/signoff/pdf/index.js';
import { signField } from '../../src/signoff/sign/place-signature.js';
import { keyOf, type MadeCertificate } from './make-certificate.js';
import { day } from './signed.js';

interface Anyhow {
  /** Ours unless told. */
  readonly signer?: Signer;
  /** What is done to the PDF's text before it is signed, in Latin-1. */
  readonly alter?: (text: string) => string;
}

/** A PDF signed by a program that looks at nothing and refuses nothing. */
export async function signAnyhow(
  pdf: Uint8Array,
  field: string,
  by: MadeCertificate,
  { signer = new CmsSigner(keyOf(by)), alter = (text) => text }: Anyhow = {},
): Promise<Uint8Array> {
  const file = openPdf(pdf, new Allowance(5000));
  const [revision] = file.revisions;
  const found = revision && formFields(revision).find(({ name }) => name === field);
  if (!revision || !found) throw new Error('no field');
  const additions = startAdditions(file);
  signField({ file, revision, additions }, found, { name: 'Somebody', reason: 'Agreed', at: day, room: 8192 });
  const added = Buffer.from(addRevision(file, additions)).toString('latin1');
  return new SignPdf().sign(Buffer.from(alter(added), 'latin1'), signer, day);
}
