import { createHash } from 'node:crypto';
import { Certificate, CertificateChainValidationEngine } from 'pkijs';
import { certificateName } from '../cms/certificate-name.js';
import { engine } from '../cms/engine.js';
import { derOf } from '../cms/signing-certificate.js';
import { whyWeak } from '../cms/why-unfit.js';
import type { SignatureReport, SignerCertificate } from './report.js';

/** Facts of a signer's certificate, on the day of signing. */
export function describeCertificate(certificate: Certificate, at: Date | undefined): SignerCertificate {
  const from = certificate.notBefore.value;
  const to = certificate.notAfter.value;
  return {
    subject: certificateName(certificate.subject),
    issuer: certificateName(certificate.issuer),
    serial: Buffer.from(certificate.serialNumber.valueBlock.valueHexView).toString('hex'),
    from,
    to,
    fingerprint: createHash('sha256').update(derOf(certificate)).digest('hex'),
    validAtSigning: at !== undefined && at >= from && at <= to,
  };
}

/** Does the certificate lead to one that is trusted? Revocation lists are not asked: nothing here reaches the network. */
export async function trustOf(
  certificate: Certificate,
  others: readonly Certificate[],
  roots: readonly Certificate[],
  at: Date | undefined,
): Promise<SignatureReport['trust']> {
  const own = derOf(certificate);
  if (roots.some((root) => derOf(root).equals(own))) return 'given-root';
  if (roots.length > 0 && (await leadsTo(certificate, others, roots, at))) return 'given-root';
  return (await isSelfSigned(certificate)) ? 'self-signed' : 'unknown';
}

async function leadsTo(
  certificate: Certificate,
  others: readonly Certificate[],
  trustedCerts: readonly Certificate[],
  at: Date | undefined,
): Promise<boolean> {
  try {
    const chain = new CertificateChainValidationEngine({
      trustedCerts: [...trustedCerts],
      // The certificate in question stands last.
      certs: [...others.filter((one) => one !== certificate && isSound(one)).slice(0, 20), certificate],
      ...(at && { checkDate: at }),
    });
    return (await chain.verify({}, engine)).result;
  } catch {
    return false;
  }
}

/** A chain over MD5, SHA-1 or a short key leads nowhere: anybody could have made it. */
function isSound(certificate: Certificate): boolean {
  return whyWeak(new Uint8Array(derOf(certificate))) === undefined;
}

async function isSelfSigned(certificate: Certificate): Promise<boolean> {
  try {
    return certificate.issuer.isEqual(certificate.subject) && (await certificate.verify(certificate, engine));
  } catch {
    return false;
  }
}

/** Is there a certificate in it, as PEM text or DER bytes? */
export function holdsCertificate(root: string | Uint8Array): boolean {
  return readCertificates([root]).length > 0;
}

/** Certificates from PEM text or DER bytes; what is none is passed over. */
export function readCertificates(roots: readonly (string | Uint8Array)[]): readonly Certificate[] {
  return roots.flatMap((root) => {
    const texts = typeof root === 'string' ? pemBodies(root) : [Buffer.from(root)];
    return texts.flatMap((bytes) => {
      try {
        return [Certificate.fromBER(bytes)];
      } catch {
        return [];
      }
    });
  });
}

function pemBodies(text: string): readonly Buffer<ArrayBuffer>[] {
  const bodies = text.matchAll(/-----BEGIN CERTIFICATE-----([^-]*)-----END CERTIFICATE-----/gu);
  return [...bodies].map(([, body]) => Buffer.from(body ?? '', 'base64'));
}
