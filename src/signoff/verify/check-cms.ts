import { createHash } from 'node:crypto';
import * as asn1js from 'asn1js';
import { Certificate, ContentInfo, IssuerAndSerialNumber, SignedData, type SignerInfo } from 'pkijs';
import { engine } from '../cms/engine.js';
import { digests, namesCertificate, signingCertificateType } from '../cms/signing-certificate.js';
import { weakDigest } from '../cms/weak-digest.js';

/** What a CMS message (RFC 5652) says of some bytes. */
export interface CmsCheck {
  readonly digestMatches: boolean;
  readonly signatureVerifies: boolean;
  /** The certificate is named by its digest among what is signed. */
  readonly namesCertificate: boolean;
  /** The signing-time attribute, which PAdES signatures do without. */
  readonly at?: Date;
  readonly certificate?: Certificate;
  /** All certificates that came with it. */
  readonly certificates: readonly Certificate[];
  /** What shows that it is not what was signed. */
  readonly problem?: string;
  /** Why it proves nothing, though nothing shows that anything was altered. */
  readonly doubt?: string;
}

/** The fault that tells a file that was altered from a signature that cannot be checked. */
export const otherBytes = 'the bytes are not those that were signed';

const oids = {
  signedData: '1.2.840.113549.1.7.2',
  data: '1.2.840.113549.1.7.1',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
  signingTime: '1.2.840.113549.1.9.5',
} as const;

/** Checks a detached CMS signature over bytes: one signer, signed attributes that name the digest, and the signature over
 *  them. Never throws. */
export async function checkCms(message: Uint8Array, signed: readonly Uint8Array[]): Promise<CmsCheck> {
  const none = { digestMatches: false, signatureVerifies: false, namesCertificate: false, certificates: [] };
  try {
    const data = readSignedData(message);
    if (typeof data === 'string') return { ...none, problem: data };
    const certificates = (data.certificates ?? []).filter((one): one is Certificate => one instanceof Certificate);
    const [signer] = data.signerInfos;
    if (!signer || data.signerInfos.length !== 1) return { ...none, certificates, problem: 'it has not one signer' };
    const certificate = certificateOf(signer, certificates);
    const at = timeOf(signer);
    const namesCertificate =
      signer.signedAttrs?.attributes.some(({ type }) => type === signingCertificateType) === true;
    const known = { ...none, namesCertificate, certificates, ...(certificate && { certificate }), ...(at && { at }) };
    const doubt = doubtOf(signer);
    if (doubt !== undefined) return { ...known, doubt };
    const problem = await findFault(data, signer, signed);
    if (problem === 'digest') return { ...known, problem: otherBytes };
    if (problem !== undefined) return { ...known, problem };
    if (!certificate) return { ...known, digestMatches: true, problem: 'the certificate of the signer is not in it' };
    if (!isNamed(signer, certificate))
      return { ...known, digestMatches: true, problem: 'its certificate was exchanged' };
    const signatureVerifies = await verifies(data, signed);
    return {
      ...known,
      digestMatches: true,
      signatureVerifies,
      ...(!signatureVerifies && { problem: 'the signature was not made with the key of its certificate' }),
    };
  } catch {
    return { ...none, problem: 'its contents are not a signature that can be read' };
  }
}

function readSignedData(message: Uint8Array): SignedData | string {
  const parsed = asn1js.fromBER(message);
  if (parsed.offset === -1) return 'its contents are not a signature that can be read';
  const content = new ContentInfo({ schema: parsed.result });
  if (content.contentType !== oids.signedData) return 'its contents are not a signature';
  const data = new SignedData({ schema: content.content });
  // A message that brings bytes of its own would be checked against those.
  if (data.encapContentInfo.eContent !== undefined) return 'it brings its own bytes, not those of the file';
  return data.encapContentInfo.eContentType === oids.data ? data : 'it signs something other than bytes of a file';
}

/** A digest that other bytes can be made to have, or one that is not known. */
function doubtOf({ digestAlgorithm, signatureAlgorithm }: SignerInfo): string | undefined {
  const weak = weakDigest(digestAlgorithm) ?? weakDigest(signatureAlgorithm);
  if (weak !== undefined) return `it was made with ${weak}, which no longer proves anything`;
  return digests[digestAlgorithm.algorithmId] === undefined
    ? 'its digest is of a kind that is not checked here'
    : undefined;
}

/** `digest`, another fault in words, or undefined. */
async function findFault(
  data: SignedData,
  signer: SignerInfo,
  signed: readonly Uint8Array[],
): Promise<string | undefined> {
  const digest = digests[signer.digestAlgorithm.algorithmId] ?? '';
  const attributes = signer.signedAttrs?.attributes ?? [];
  const stated = attributes.filter(({ type }) => type === oids.messageDigest);
  const types = attributes.filter(({ type }) => type === oids.contentType);
  const [one] = stated;
  if (!one || stated.length !== 1 || types.length !== 1) return 'it does not name the digest of what it signs';
  const [kind] = (types[0]?.values ?? []) as readonly unknown[];
  const isData = kind instanceof asn1js.ObjectIdentifier && kind.valueBlock.toString() === oids.data;
  if (!isData) return 'it says that it signs something other than bytes of a file';
  const value: unknown = one.values[0];
  if (!(value instanceof asn1js.OctetString)) return 'it does not name the digest of what it signs';
  const hash = createHash(digest);
  for (const part of signed) hash.update(part);
  return hash.digest().equals(value.valueBlock.valueHexView) ? undefined : 'digest';
}

async function verifies(data: SignedData, signed: readonly Uint8Array[]): Promise<boolean> {
  try {
    const all = Buffer.concat([...signed]);
    const bytes = all.buffer.slice(all.byteOffset, all.byteOffset + all.length) as ArrayBuffer;
    return await data.verify({ signer: 0, data: bytes, checkChain: false }, engine);
  } catch {
    return false;
  }
}

function certificateOf({ sid }: SignerInfo, certificates: readonly Certificate[]): Certificate | undefined {
  if (!(sid instanceof IssuerAndSerialNumber)) return certificates.length === 1 ? certificates[0] : undefined;
  return certificates.find((one) => one.issuer.isEqual(sid.issuer) && one.serialNumber.isEqual(sid.serialNumber));
}

/** Signers of some programs do not name their certificate; then only a trusted root can vouch for the name in it. */
function isNamed({ signedAttrs }: SignerInfo, certificate: Certificate): boolean {
  const named = signedAttrs?.attributes.filter(({ type }) => type === signingCertificateType) ?? [];
  const der = new Uint8Array(certificate.toSchema(false).toBER());
  return named.every((attribute) => namesCertificate(attribute, der));
}

function timeOf({ signedAttrs }: SignerInfo): Date | undefined {
  const value: unknown = signedAttrs?.attributes.find(({ type }) => type === oids.signingTime)?.values[0];
  const isTime = value instanceof asn1js.UTCTime || value instanceof asn1js.GeneralizedTime;
  const date = isTime ? value.toDate() : undefined;
  return date && Number.isFinite(date.getTime()) ? date : undefined;
}
