import { generateKeyPairSync, randomBytes } from 'node:crypto';
import forge from 'node-forge';
import type { IsoDate } from '../../base/units/index.js';

/** A certificate with its key, as a file. */
export interface OwnCertificate {
  /** Bytes of a .p12 file. */
  readonly p12: Uint8Array;
  /** SHA-256 of the certificate's DER, in hexadecimal. */
  readonly fingerprint: string;
}

/** A certificate that vouches for itself alone, good for some days from a day on. */
export function makeOwnCertificate(
  name: string,
  { from, days }: { readonly from: IsoDate; readonly days: number },
  passphrase: string,
): OwnCertificate {
  // The system's generator: making such keys in JavaScript takes seconds.
  const pair = generateKeyPairSync('rsa', {
    modulusLength: 2048,
    publicKeyEncoding: { type: 'spki', format: 'pem' },
    privateKeyEncoding: { type: 'pkcs8', format: 'pem' },
  });
  const key = forge.pki.privateKeyFromPem(pair.privateKey);
  const certificate = forge.pki.createCertificate();
  certificate.publicKey = forge.pki.publicKeyFromPem(pair.publicKey);
  // Positive, as RFC 5280, section 4.1.2.2, asks.
  certificate.serialNumber = `01${randomBytes(15).toString('hex')}`;
  certificate.validity.notBefore = new Date(`${from}T00:00:00Z`);
  certificate.validity.notAfter = new Date(certificate.validity.notBefore.getTime() + days * 86_400_000);
  const subject = [{ name: 'commonName', value: name }];
  certificate.setSubject(subject);
  certificate.setIssuer(subject);
  certificate.setExtensions([
    { name: 'basicConstraints', cA: false, critical: true },
    { name: 'keyUsage', digitalSignature: true, nonRepudiation: true, critical: true },
  ]);
  certificate.sign(key, forge.md.sha256.create());
  const pfx = forge.pkcs12.toPkcs12Asn1(key, [certificate], passphrase, { algorithm: '3des' });
  const der = forge.asn1.toDer(forge.pki.certificateToAsn1(certificate)).getBytes();
  return {
    p12: Buffer.from(forge.asn1.toDer(pfx).getBytes(), 'binary'),
    fingerprint: forge.md.sha256.create().update(der).digest().toHex(),
  };
}
