import { createPrivateKey } from 'node:crypto';
import forge from 'node-forge';
import type { SigningKey } from '../../src/signoff/cms/cms-signer.js';

export interface MadeCertificate {
  /** Bytes of a .p12 file. */
  readonly p12: Uint8Array;
  readonly passphrase: string;
  readonly pem: string;
  readonly certificate: forge.pki.Certificate;
  readonly key: forge.pki.rsa.PrivateKey;
}

export interface CertificateWish {
  readonly from?: string;
  readonly to?: string;
  readonly passphrase?: string;
  /** Who vouches for it; absent: it vouches for itself. */
  readonly issuer?: MadeCertificate;
  readonly isAuthority?: boolean;
  /** Bits of its key; 2048 unless told. */
  readonly bits?: number;
  /** What it is issued with; SHA-256 unless told. */
  readonly digest?: 'md5' | 'sha1' | 'sha256';
  /** As node-forge names them. */
  readonly extensions?: readonly object[];
  /** Write the file without its key. */
  readonly withoutKey?: boolean;
  /** Write another's certificate into the file in place of its own. */
  readonly certificateOf?: MadeCertificate;
}

let serial = 1;

/** A throw-away certificate with its key, made for one run of the tests. */
export function makeCertificate(name: string, wish: CertificateWish = {}): MadeCertificate {
  const {
    from = '2026-01-01',
    to = '2027-01-01',
    passphrase = 'Zwetschge-9',
    issuer,
    withoutKey,
    certificateOf,
  } = wish;
  const keys = forge.pki.rsa.generateKeyPair(wish.bits ?? 2048);
  const certificate = forge.pki.createCertificate();
  certificate.publicKey = keys.publicKey;
  certificate.serialNumber = (serial += 1).toString(16).padStart(4, '0');
  certificate.validity.notBefore = new Date(`${from}T00:00:00Z`);
  certificate.validity.notAfter = new Date(`${to}T00:00:00Z`);
  const subject = [{ name: 'commonName', value: name }];
  certificate.setSubject(subject);
  certificate.setIssuer(issuer ? issuer.certificate.subject.attributes : subject);
  if (wish.isAuthority) {
    certificate.setExtensions([
      { name: 'basicConstraints', cA: true },
      { name: 'keyUsage', keyCertSign: true, digitalSignature: true },
    ]);
  }
  if (wish.extensions) certificate.setExtensions([...wish.extensions]);
  certificate.sign(issuer?.key ?? keys.privateKey, forge.md[wish.digest ?? 'sha256'].create());
  const chain = certificateOf ? [certificateOf.certificate] : [certificate, ...(issuer ? [issuer.certificate] : [])];
  const key = withoutKey ? null : keys.privateKey;
  const pfx = forge.pkcs12.toPkcs12Asn1(key as forge.pki.rsa.PrivateKey, chain, passphrase, { algorithm: '3des' });
  return {
    p12: Buffer.from(forge.asn1.toDer(pfx).getBytes(), 'binary'),
    passphrase,
    pem: forge.pki.certificateToPem(certificate),
    certificate,
    key: keys.privateKey,
  };
}

/** The certificate and its key, as the program has them once the file is opened. */
export function keyOf({ certificate, key }: MadeCertificate): SigningKey {
  const der = (asn1: forge.asn1.Asn1): Buffer => Buffer.from(forge.asn1.toDer(asn1).getBytes(), 'binary');
  const info = der(forge.pki.wrapRsaPrivateKey(forge.pki.privateKeyToAsn1(key)));
  return {
    chain: [der(forge.pki.certificateToAsn1(certificate))],
    key: createPrivateKey({ key: info, format: 'der', type: 'pkcs8' }),
  };
}
