import { createHash } from 'node:crypto';
import * as asn1js from 'asn1js';
import {
  AlgorithmIdentifier,
  Attribute,
  ContentInfo,
  MessageImprint,
  SignedAndUnsignedAttributes,
  SignedData,
  TimeStampReq,
  TimeStampResp,
} from 'pkijs';
import { bufferOf, digests, sha256Type } from './signing-certificate.js';

/** The unsigned attribute that holds a time-stamp of a signature (id-aa-signatureTimeStampToken; RFC 3161, appendix A). */
export const timeStampType = '1.2.840.113549.1.9.16.2.14';

/** What a time-stamp signs (id-ct-TSTInfo; RFC 3161, 2.4.2). */
export const timeStampContent = '1.2.840.113549.1.9.16.1.4';

/** The question to a time-stamp authority (RFC 3161, 2.4.1), in DER: the digest of a signature's own bytes, its certificate wanted with the answer.
 *  `message` is the CMS message of the signature. */
export function timeStampQuery(message: Uint8Array): Uint8Array {
  const hash = createHash('sha256').update(signatureValue(message)).digest();
  const query = new TimeStampReq({
    version: 1,
    messageImprint: new MessageImprint({
      hashAlgorithm: new AlgorithmIdentifier({ algorithmId: sha256Type, algorithmParams: new asn1js.Null() }),
      hashedMessage: new asn1js.OctetString({ valueHex: bufferOf(hash) }),
    }),
    certReq: true,
  });
  return new Uint8Array(query.toSchema().toBER());
}

/** The time-stamp of an authority's answer (RFC 3161, 2.4.2), or why there is none, in words. */
export function readAnswer(answer: Uint8Array): Uint8Array | string {
  try {
    const { status } = new TimeStampResp({ schema: asn1js.fromBER(answer).result });
    // 0: granted; 1: granted with changes, which the digest in it tells.
    if (status.status > 1) {
      const words = (status.statusStrings ?? []).map((one) => one.valueBlock.value).join('; ');
      return `the authority refused${words === '' ? '' : `: ${words}`}`;
    }
    // Read again: the library takes apart what it is given.
    const { result } = asn1js.fromBER(answer);
    const [, token] = result instanceof asn1js.Sequence ? result.valueBlock.value : [];
    return token === undefined ? 'there is no time-stamp in the answer' : new Uint8Array(token.toBER());
  } catch {
    return 'it is no answer of a time-stamp authority (RFC 3161)';
  }
}

/** Is the time-stamp over this signature's bytes? It names their digest by an algorithm that still holds. */
export function isStampOf(imprint: MessageImprint, value: Uint8Array): boolean {
  const name = digests[imprint.hashAlgorithm.algorithmId];
  if (name === undefined) return false;
  return createHash(name).update(value).digest().equals(imprint.hashedMessage.valueBlock.valueHexView);
}

/** A signature's CMS message with a time-stamp among what it does not sign, so that it signs what it did. */
export function withTimeStamp(message: Uint8Array, token: Uint8Array): Uint8Array {
  const data = signedDataOf(message);
  const [signer] = data.signerInfos;
  if (!signer) throw new TypeError('a signature without a signer');
  const stamp = new Attribute({ type: timeStampType, values: [asn1js.fromBER(token).result] });
  const others = signer.unsignedAttrs?.attributes ?? [];
  signer.unsignedAttrs = new SignedAndUnsignedAttributes({ type: 1, attributes: [...others, stamp] });
  const content = new ContentInfo({ contentType: ContentInfo.SIGNED_DATA, content: data.toSchema() });
  return new Uint8Array(content.toSchema().toBER());
}

/** The bytes of the signature itself, which a time-stamp is over. */
function signatureValue(message: Uint8Array): Uint8Array {
  return signedDataOf(message).signerInfos[0]?.signature.valueBlock.valueHexView ?? new Uint8Array();
}

function signedDataOf(message: Uint8Array): SignedData {
  const content = new ContentInfo({ schema: asn1js.fromBER(message).result });
  return new SignedData({ schema: content.content });
}
