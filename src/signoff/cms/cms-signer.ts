import { createHash, type KeyObject } from 'node:crypto';
import { Signer } from '@signpdf/utils';
import * as asn1js from 'asn1js';
import {
  AlgorithmIdentifier,
  Attribute,
  Certificate,
  ContentInfo,
  EncapsulatedContentInfo,
  IssuerAndSerialNumber,
  SignedAndUnsignedAttributes,
  SignedData,
  SignerInfo,
} from 'pkijs';
import { engine } from './engine.js';
import { bufferOf, sha256Type, signingCertificate } from './signing-certificate.js';

export interface SigningKey {
  /** DER of the signer's certificate, then of those that vouch for it. */
  readonly chain: readonly Uint8Array[];
  /** RSA or elliptic curve. */
  readonly key: KeyObject;
}

const oids = {
  data: '1.2.840.113549.1.7.1',
  signedData: '1.2.840.113549.1.7.2',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
} as const;

/** Makes the detached CMS message (RFC 5652) of a PDF signature as PAdES baseline B-B wants it (EN 319 142-1, 6.3, from memory): SHA-256, with
 *  the certificate's digest among what is signed (RFC 5035), and without a time, which stands in the PDF's own words. */
export class CmsSigner extends Signer {
  constructor(private readonly signing: SigningKey) {
    super();
  }

  override async sign(pdf: Buffer): Promise<Buffer> {
    const [own, ...others] = this.signing.chain;
    if (!own) throw new TypeError('a signer without a certificate');
    const certificate = Certificate.fromBER(bufferOf(own));
    const data = new SignedData({
      version: 1,
      encapContentInfo: new EncapsulatedContentInfo({ eContentType: oids.data }),
      certificates: [certificate, ...others.map((der) => Certificate.fromBER(bufferOf(der)))],
      signerInfos: [
        new SignerInfo({
          version: 1,
          sid: new IssuerAndSerialNumber({ issuer: certificate.issuer, serialNumber: certificate.serialNumber }),
          digestAlgorithm: new AlgorithmIdentifier({ algorithmId: sha256Type }),
          signedAttrs: new SignedAndUnsignedAttributes({ type: 0, attributes: attributesOf(pdf, own) }),
        }),
      ],
    });
    await data.sign(await importKey(this.signing.key), 0, 'SHA-256', undefined, engine);
    const content = new ContentInfo({ contentType: oids.signedData, content: data.toSchema(true) });
    return Buffer.from(content.toSchema().toBER());
  }
}

/** Node's names of curves, and WebCrypto's. */
const curves: Readonly<Record<string, string>> = { prime256v1: 'P-256', secp384r1: 'P-384', secp521r1: 'P-521' };

function importKey(key: KeyObject): Promise<CryptoKey> {
  const namedCurve = curves[key.asymmetricKeyDetails?.namedCurve ?? ''];
  const algorithm = namedCurve
    ? { name: 'ECDSA', namedCurve, hash: 'SHA-256' }
    : { name: 'RSASSA-PKCS1-v1_5', hash: 'SHA-256' };
  const pkcs8 = bufferOf(key.export({ format: 'der', type: 'pkcs8' }));
  return engine.importKey('pkcs8', pkcs8, algorithm, false, ['sign']);
}

/** In the order of their encodings, as DER wants a set. */
function attributesOf(pdf: Uint8Array, certificate: Uint8Array): Attribute[] {
  const digest = createHash('sha256').update(pdf).digest();
  const attributes = [
    new Attribute({ type: oids.contentType, values: [new asn1js.ObjectIdentifier({ value: oids.data })] }),
    new Attribute({ type: oids.messageDigest, values: [new asn1js.OctetString({ valueHex: bufferOf(digest) })] }),
    signingCertificate(certificate),
  ];
  const encoded = (one: Attribute): Buffer => Buffer.from(one.toSchema().toBER());
  return attributes.sort((a, b) => Buffer.compare(encoded(a), encoded(b)));
}
