import { OctetString } from 'asn1js';
import { ExtKeyUsage, TSTInfo, type Certificate, type SignedData } from 'pkijs';
import { bufferOf, derOf } from '../cms/signing-certificate.js';
import { isStampOf, timeStampContent } from '../cms/time-stamp.js';
import { whyWeak } from '../cms/why-unfit.js';
import { checkMessage } from './check-cms.js';
import type { TimeStamp } from './report.js';
import { describeCertificate, trustOf } from './trust.js';

/** Purpose of keys that stamp times, and the extension that says it (RFC 3161, 2.3). */
const [purpose, purposes] = ['1.3.6.1.5.5.7.3.8', '2.5.29.37'];

/** What a time-stamp (RFC 3161) says of a signature's own bytes, `value`. Never throws. */
export async function checkTimeStamp(
  token: Uint8Array,
  value: Uint8Array,
  roots: readonly Certificate[],
): Promise<TimeStamp> {
  let info: TSTInfo | undefined;
  const cms = await checkMessage(token, {
    type: timeStampContent,
    signed: (data) => {
      const bytes = contentOf(data);
      info = bytes && TSTInfo.fromBER(bufferOf(bytes));
      if (!bytes || !info) return 'it says no time';
      return isStampOf(info.messageImprint, value) ? [bytes] : 'it is over other bytes than this signature';
    },
    over: [value],
  });
  const at = info?.genTime;
  const { certificate } = cms;
  const authority = certificate && describeCertificate(certificate, at);
  const untimely = authority?.validAtSigning === false ? 'its certificate was not valid then' : undefined;
  const problem = cms.problem ?? cms.doubt ?? (certificate && whyNotAuthority(certificate)) ?? untimely;
  return {
    trust: certificate && problem === undefined ? await trustOf(certificate, cms.certificates, roots, at) : 'unknown',
    ...(at && { at }),
    ...(authority && { authority }),
    ...(problem !== undefined && { problem }),
  };
}

function contentOf({ encapContentInfo: { eContent } }: SignedData): Uint8Array | undefined {
  return eContent instanceof OctetString ? new Uint8Array(eContent.getValue()) : undefined;
}

function whyNotAuthority(certificate: Certificate): string | undefined {
  const weak = whyWeak(derOf(certificate));
  if (weak !== undefined) return `its certificate ${weak}`;
  const held: unknown = certificate.extensions?.find(({ extnID }) => extnID === purposes)?.parsedValue;
  return held instanceof ExtKeyUsage && held.keyPurposes.length === 1 && held.keyPurposes[0] === purpose
    ? undefined
    : 'its certificate is not one of a time-stamp authority';
}
