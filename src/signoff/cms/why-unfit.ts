import { X509Certificate, type KeyObject } from 'node:crypto';
import { BitString } from 'asn1js';
import { BasicConstraints, Certificate, ExtKeyUsage } from 'pkijs';
import { bufferOf } from './signing-certificate.js';
import { weakDigest } from './weak-digest.js';

/** Bits of an RSA key at least. */
const leastBits = 2048;

const curves = ['prime256v1', 'secp384r1', 'secp521r1'];

/** Extensions of a certificate (RFC 5280, 4.2.1). */
const extensions = { keyUsage: '2.5.29.15', basicConstraints: '2.5.29.19', purposes: '2.5.29.37' } as const;

/** Purposes of keys that sign other things than what a person agrees to (RFC 5280, 4.2.1.12): servers, programs, time-stamps, OCSP. */
const otherPurposes = ['1', '3', '8', '9'].map((last) => `1.3.6.1.5.5.7.3.${last}`);

/** Why a certificate is not one that a person signs with, to be said after its name: a key that is too short, MD5 or SHA-1, an authority's, or
 *  one that is meant for something else. Undefined when there is nothing against it. */
export function whyUnfit(der: Uint8Array): string | undefined {
  return whyWeak(der) ?? whyNotForSigning(Certificate.fromBER(bufferOf(der)));
}

/** Why a certificate proves nothing, whatever it is meant for: its key, or the digest that it was issued with. */
export function whyWeak(der: Uint8Array): string | undefined {
  const digest = weakDigest(Certificate.fromBER(bufferOf(der)).signatureAlgorithm);
  return whyWeakKey(der) ?? (digest && `was issued with ${digest}, which no longer proves anything`);
}

function whyWeakKey(der: Uint8Array): string | undefined {
  let key: KeyObject;
  try {
    key = new X509Certificate(der).publicKey;
  } catch {
    return 'has a key that cannot be read';
  }
  const { modulusLength: bits = 0, namedCurve = '' } = key.asymmetricKeyDetails ?? {};
  if (key.asymmetricKeyType === 'rsa' || key.asymmetricKeyType === 'rsa-pss') {
    return bits < leastBits
      ? `has an RSA key of ${bits} bits, which can be broken: ${leastBits} are the least`
      : undefined;
  }
  if (key.asymmetricKeyType === 'ec' && curves.includes(namedCurve)) return undefined;
  return 'has a key that is neither RSA nor on the curves P-256, P-384 or P-521';
}

function whyNotForSigning(certificate: Certificate): string | undefined {
  const parsed = (type: string): unknown => certificate.extensions?.find(({ extnID }) => extnID === type)?.parsedValue;
  const constraints = parsed(extensions.basicConstraints);
  if (constraints instanceof BasicConstraints && constraints.cA) {
    return 'is one of an authority: it issues certificates to others and is not to sign with';
  }
  const usage = parsed(extensions.keyUsage);
  // The first two bits: digitalSignature and nonRepudiation.
  if (usage instanceof BitString && ((usage.valueBlock.valueHexView[0] ?? 0) & 0xc0) === 0) {
    return 'is not meant for signing: its key usage has neither digitalSignature nor nonRepudiation';
  }
  const purposes = parsed(extensions.purposes);
  if (!(purposes instanceof ExtKeyUsage) || purposes.keyPurposes.length === 0) return undefined;
  return purposes.keyPurposes.every((one) => otherPurposes.includes(one))
    ? 'is meant for servers, programs or time-stamps, not for what a person signs'
    : undefined;
}
