import { createHash } from 'node:crypto';
import * as asn1js from 'asn1js';
import { Certificate, ContentInfo, IssuerAndSerialNumber, SignedData, type SignerInfo } from 'pkijs';
import { engine } from '../cms/engine.js';
import { derOf, digests, namesCertificate, signingCertificateType } from '../cms/signing-certificate.js';
import { timeStampType } from '../cms/time-stamp.js';
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
  /** The bytes of the signature itself, and the time-stamps that it carries over them. */
  readonly value?: Uint8Array;
  readonly timeStamps?: readonly Uint8Array[];
  /** What shows that it is not what was signed. */
  readonly problem?: string;
  /** Why it proves nothing, though nothing shows that anything was altered. */
  readonly doubt?: string;
}

const otherKind = 'it signs something of another kind than it has to';

/** The fault that tells a file that was altered from a signature that cannot be checked. */
export const otherBytes = 'the bytes are not those that were signed';

const oids = {
  data: '1.2.840.113549.1.7.1',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
  signingTime: '1.2.840.113549.1.9.5',
} as const;

/** What a message is to be a signature of. */
export interface Expected {
  /** Object identifier of the kind of content. */
  readonly type: string;
  /** The bytes that its digest is over, or what is wrong with it, in words. */
  readonly signed: (data: SignedData) => readonly Uint8Array[] | string;
  /** What the library holds it against: those bytes, or what a time-stamp is over. */
  readonly over: readonly Uint8Array[];
}

/** Checks a detached CMS signature over bytes. Never throws. */
export function checkCms(message: Uint8Array, signed: readonly Uint8Array[]): Promise<CmsCheck> {
  return checkMessage(message, {
    type: oids.data,
    // A message that brings bytes of its own would be checked against those.
    signed: ({ encapContentInfo: { eContent } }) =>
      eContent === undefined ? signed : 'it brings its own bytes, not those of the file',
    over: signed,
  });
}

/** Checks a CMS signature: one signer, signed attributes that name the digest, and the signature over them. Never throws. */
export async function checkMessage(message: Uint8Array, expected: Expected): Promise<CmsCheck> {
  const none = { digestMatches: false, signatureVerifies: false, namesCertificate: false, certificates: [] };
  try {
    const data = readSignedData(message);
    if (typeof data === 'string') return { ...none, problem: data };
    const signed = expected.signed(data);
    if (typeof signed === 'string') return { ...none, problem: signed };
    if (data.encapContentInfo.eContentType !== expected.type) return { ...none, problem: otherKind };
    const certificates = (data.certificates ?? []).filter((one): one is Certificate => one instanceof Certificate);
    const [signer] = data.signerInfos;
    if (!signer || data.signerInfos.length !== 1) return { ...none, certificates, problem: 'it has not one signer' };
    const certificate = certificateOf(signer, certificates);
    const at = timeOf(signer);
    const namesCertificate =
      signer.signedAttrs?.attributes.some(({ type }) => type === signingCertificateType) === true;
    const own = { value: signer.signature.valueBlock.valueHexView, timeStamps: timeStampsOf(signer) };
    const known = {
      ...none,
      ...own,
      namesCertificate,
      certificates,
      ...(certificate && { certificate }),
      ...(at && { at }),
    };
    const doubt = doubtOf(signer);
    if (doubt !== undefined) return { ...known, doubt };
    const problem = findFault(signer, signed, expected.type);
    if (problem === 'digest') return { ...known, problem: otherBytes };
    if (problem !== undefined) return { ...known, problem };
    if (!certificate) return { ...known, digestMatches: true, problem: 'the certificate of the signer is not in it' };
    if (!isNamed(signer, certificate))
      return { ...known, digestMatches: true, problem: 'its certificate was exchanged' };
    const signatureVerifies = await verifies(data, expected.over);
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
  if (content.contentType !== ContentInfo.SIGNED_DATA) return 'its contents are not a signature';
  return new SignedData({ schema: content.content });
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
function findFault(signer: SignerInfo, signed: readonly Uint8Array[], type: string): string | undefined {
  const digest = digests[signer.digestAlgorithm.algorithmId] ?? '';
  const attributes = signer.signedAttrs?.attributes ?? [];
  const stated = attributes.filter(({ type }) => type === oids.messageDigest);
  const types = attributes.filter(({ type }) => type === oids.contentType);
  const [one] = stated;
  if (!one || stated.length !== 1 || types.length !== 1) return 'it does not name the digest of what it signs';
  const [kind] = (types[0]?.values ?? []) as readonly unknown[];
  if (!(kind instanceof asn1js.ObjectIdentifier) || kind.valueBlock.toString() !== type) return otherKind;
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
  const der = derOf(certificate);
  return named.every((attribute) => namesCertificate(attribute, der));
}

function timeStampsOf({ unsignedAttrs }: SignerInfo): readonly Uint8Array[] {
  const stamps = unsignedAttrs?.attributes.filter(({ type }) => type === timeStampType) ?? [];
  const values = stamps.flatMap((attribute) => attribute.values as readonly asn1js.AsnType[]);
  return values.map((value) => new Uint8Array(value.toBER()));
}

function timeOf({ signedAttrs }: SignerInfo): Date | undefined {
  const value: unknown = signedAttrs?.attributes.find(({ type }) => type === oids.signingTime)?.values[0];
  const isTime = value instanceof asn1js.UTCTime || value instanceof asn1js.GeneralizedTime;
  const date = isTime ? value.toDate() : undefined;
  return date && Number.isFinite(date.getTime()) ? date : undefined;
}
