import { createHash, createPrivateKey, X509Certificate, type KeyObject } from 'node:crypto';
import forge from 'node-forge';
import { Certificate } from 'pkijs';
import { certificateName } from '../cms/certificate-name.js';
import type { SigningKey } from '../cms/cms-signer.js';
import { bufferOf } from '../cms/signing-certificate.js';
import { whyUnfit } from '../cms/why-unfit.js';

/** A certificate with its key, opened. The key does not print. */
export interface OpenCertificate extends SigningKey {
  readonly facts: CertificateFacts;
}

export interface CertificateFacts {
  /** Common name, else the organisation, else the whole name. */
  readonly name: string;
  readonly issuer: string;
  readonly selfSigned: boolean;
  readonly from: Date;
  readonly to: Date;
  /** SHA-256 of the certificate's DER, in hexadecimal. */
  readonly fingerprint: string;
}

export type CertificateRefusal =
  'not-p12' | 'wrong-passphrase' | 'no-key' | 'no-certificate' | 'key-unsupported' | 'unfit';

type Opened =
  | { readonly ok: true; readonly certificate: OpenCertificate }
  | { readonly ok: false; readonly code: CertificateRefusal; readonly message: string };

/** Opens a PKCS#12 file (.p12, .pfx). What goes wrong is said without the passphrase. */
export function openCertificate(p12: Uint8Array, passphrase: string): Opened {
  const parsed = parse(p12, passphrase);
  if ('code' in parsed) return parsed;
  const keys = [...bagsOf(parsed, 'pkcs8ShroudedKeyBag'), ...bagsOf(parsed, 'keyBag')];
  if (keys.length === 0) {
    return refuse('no-key', 'the file has no private key: export the certificate together with its key');
  }
  const key = keys.map(keyOf).find((one) => one !== undefined);
  if (!key)
    return refuse('key-unsupported', 'the key is of a kind that cannot sign here; use an RSA or elliptic-curve one');
  const chain = bagsOf(parsed, 'certBag').flatMap(certificateDer);
  const own = chain.find((der) => belongsTo(der, key));
  if (!own) return refuse('no-certificate', 'no certificate in the file belongs to its private key');
  const facts = factsOf(own);
  const unfit = whyUnfit(own);
  if (unfit !== undefined) return refuse('unfit', `the certificate of ${facts.name} ${unfit}; sign with another one`);
  return { ok: true, certificate: { facts, chain: [own, ...chain.filter((der) => der !== own)], key } };
}

type Refused = Opened & { readonly ok: false };

function parse(p12: Uint8Array, passphrase: string): forge.pkcs12.Pkcs12Pfx | Refused {
  const notOne = refuse('not-p12', 'the file is not a PKCS#12 certificate (.p12 or .pfx)');
  const wrong = refuse('wrong-passphrase', 'the passphrase does not open the certificate file');
  let asn1: forge.asn1.Asn1;
  try {
    asn1 = forge.asn1.fromDer(forge.util.createBuffer(Buffer.from(p12).toString('binary')));
  } catch {
    return notOne;
  }
  try {
    return forge.pkcs12.pkcs12FromAsn1(asn1, false, passphrase);
  } catch (error) {
    // node-forge tells a failed integrity check only by its words.
    const words = error instanceof Error ? error.message : '';
    if (/MAC could not be verified|Invalid password/iu.test(words)) return wrong;
    return parseByUtf8(asn1, passphrase) ?? (/decrypt/iu.test(words) ? wrong : notOne);
  }
}

/** The newer ciphers of the format take the passphrase in UTF-8, its integrity check in UTF-16; node-forge knows one form for
 *  both. The check has passed by now, so it may be left out for the second try. */
function parseByUtf8(asn1: forge.asn1.Asn1, passphrase: string): forge.pkcs12.Pkcs12Pfx | undefined {
  const utf8 = forge.util.encodeUtf8(passphrase);
  if (utf8 === passphrase || !Array.isArray(asn1.value)) return undefined;
  try {
    return forge.pkcs12.pkcs12FromAsn1({ ...asn1, value: asn1.value.slice(0, 2) }, false, utf8);
  } catch {
    return undefined;
  }
}

function refuse(code: CertificateRefusal, message: string): Refused {
  return { ok: false, code, message };
}

function bagsOf(pfx: forge.pkcs12.Pkcs12Pfx, kind: string): readonly forge.pkcs12.Bag[] {
  const bagType = forge.pki.oids[kind];
  return bagType === undefined ? [] : (pfx.getBags({ bagType })[bagType] ?? []);
}

/** node-forge reads RSA keys; others it leaves as they are. */
function keyOf({ key, asn1 }: forge.pkcs12.Bag): KeyObject | undefined {
  try {
    const info = key ? forge.pki.wrapRsaPrivateKey(forge.pki.privateKeyToAsn1(key)) : asn1;
    const made = createPrivateKey({ key: derOf(info), format: 'der', type: 'pkcs8' });
    return ['rsa', 'ec'].includes(made.asymmetricKeyType ?? '') ? made : undefined;
  } catch {
    return undefined;
  }
}

function certificateDer({ cert, asn1 }: forge.pkcs12.Bag): readonly Buffer[] {
  try {
    const der = derOf(cert ? forge.pki.certificateToAsn1(cert) : asn1);
    return [new X509Certificate(der).raw];
  } catch {
    return [];
  }
}

function belongsTo(der: Buffer, key: KeyObject): boolean {
  try {
    return new X509Certificate(der).checkPrivateKey(key);
  } catch {
    return false;
  }
}

function derOf(asn1: forge.asn1.Asn1): Buffer {
  return Buffer.from(forge.asn1.toDer(asn1).getBytes(), 'binary');
}

function factsOf(der: Buffer): CertificateFacts {
  const { subject, issuer, notBefore, notAfter } = Certificate.fromBER(bufferOf(der));
  return {
    name: certificateName(subject),
    issuer: certificateName(issuer),
    selfSigned: subject.isEqual(issuer),
    from: notBefore.value,
    to: notAfter.value,
    fingerprint: createHash('sha256').update(der).digest('hex'),
  };
}
