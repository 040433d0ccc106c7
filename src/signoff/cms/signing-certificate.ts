import { createHash } from 'node:crypto';
import * as asn1js from 'asn1js';
import { Attribute, type Certificate } from 'pkijs';

/** The signed attribute that names the signer's certificate by its digest (RFC 5035, ESS signing-certificate-v2). Without it,
 *  the name in the certificate could be exchanged under a signature that holds. */
export const signingCertificateType = '1.2.840.113549.1.9.16.2.47';

export function signingCertificate(der: Uint8Array): Attribute {
  const hash = new asn1js.OctetString({ valueHex: bufferOf(createHash('sha256').update(der).digest()) });
  const certificate = new asn1js.Sequence({ value: [hash] });
  const list = new asn1js.Sequence({ value: [certificate] });
  return new Attribute({ type: signingCertificateType, values: [new asn1js.Sequence({ value: [list] })] });
}

/** Of SHA-256. */
export const sha256Type = '2.16.840.1.101.3.4.2.1';

/** Digests that still hold, by object identifier; SHA-1 and MD5 do not. */
export const digests: Readonly<Record<string, string>> = {
  [sha256Type]: 'sha256',
  '2.16.840.1.101.3.4.2.2': 'sha384',
  '2.16.840.1.101.3.4.2.3': 'sha512',
};

/** Does the attribute's first entry name this certificate? */
export function namesCertificate(attribute: Attribute, der: Uint8Array): boolean {
  const [value] = attribute.values as readonly unknown[];
  const first = partsOf(partsOf(partsOf(value)[0])[0]);
  const [algorithm] = first[0] instanceof asn1js.Sequence ? partsOf(first[0]) : [];
  const name = algorithm instanceof asn1js.ObjectIdentifier ? digests[algorithm.valueBlock.toString()] : 'sha256';
  const hash = first.find((part) => part instanceof asn1js.OctetString);
  if (name === undefined || !hash) return false;
  return createHash(name).update(der).digest().equals(hash.valueBlock.valueHexView);
}

function partsOf(value: unknown): readonly unknown[] {
  return value instanceof asn1js.Sequence ? value.valueBlock.value : [];
}

/** A certificate as it was issued, in DER. */
export function derOf(certificate: Certificate): Buffer {
  return Buffer.from(certificate.toSchema(false).toBER());
}

/** The bytes in a buffer of their own, as the ASN.1 library wants them. */
export function bufferOf(bytes: Uint8Array): ArrayBuffer {
  return new Uint8Array(bytes).buffer;
}
