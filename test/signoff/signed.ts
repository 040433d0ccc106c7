import { signPdf, type SignRequest } from '../../src/signoff/sign/index.js';
import { makeCertificate, type MadeCertificate } from './make-certificate.js';

export const owner = makeCertificate('The owner');
export const builder = makeCertificate('Project manager');

export const day = new Date('2026-05-01T10:00:00Z');

/** A PDF signed by somebody; throws the refusal's words when it is refused. */
export async function sign(
  pdf: Uint8Array,
  by: Pick<MadeCertificate, 'p12' | 'passphrase'>,
  wish: Partial<SignRequest> = {},
): Promise<Uint8Array> {
  const { p12, passphrase } = by;
  const signed = await signPdf(pdf, { p12, passphrase, reason: 'Agreed as issue 1', at: day, ...wish });
  if (!signed.ok) throw new Error(`${signed.code}: ${signed.message}`);
  return signed.pdf;
}
