import { PDFHexString, PDFName, PDFString, type PDFDict } from 'pdf-lib';
import type { Certificate } from 'pkijs';
import { textOf, type PdfFile, type Revision } from '../pdf/index.js';
import { derOf } from '../cms/signing-certificate.js';
import { whyUnfit } from '../cms/why-unfit.js';
import { checkCms, otherBytes, type CmsCheck } from './check-cms.js';
import { checkTimeStamp } from './check-time-stamp.js';
import type { SignatureReport, TimeStamp } from './report.js';
import type { FoundSignature } from './find-signatures.js';
import { readSignedRange, type SignedRange } from './signed-range.js';
import { describeCertificate, trustOf } from './trust.js';

export interface CheckedSignature {
  /** Absent when it cannot be told what was signed. */
  readonly range?: SignedRange;
  readonly report: SignatureReport;
}

const pades = '/ETSI.CAdES.detached';
const kinds = ['/adbe.pkcs7.detached', pades];

/** Checks one signature by itself; what came after it is not looked at. */
export async function checkSignature(
  file: PdfFile,
  { field, object, dict, revision }: FoundSignature,
  roots: readonly Certificate[],
): Promise<CheckedSignature> {
  const range = readSignedRange(file, revision, dict, object);
  const blank: SignatureReport = {
    field,
    state: 'altered',
    signer: '',
    says: wordsOf(revision, dict),
    coversRevision: typeof range !== 'string',
    digestMatches: false,
    signatureVerifies: false,
    trust: 'unknown',
    after: [],
    problems: [],
  };
  if (typeof range === 'string') return { report: { ...blank, problems: [range] } };
  const { bytes } = file;
  const signed = [bytes.subarray(0, range.hole[0]), bytes.subarray(range.hole[1], range.end)];
  const kind = String(revision.resolve(dict.get(PDFName.of('SubFilter'))));
  const cms = await checkCms(range.contents, signed);
  const stated = timeOf(revision, dict);
  const at = kind === pades ? stated : (cms.at ?? stated);
  const certificate = cms.certificate && describeCertificate(cms.certificate, at);
  const trust = cms.certificate ? await trustOf(cms.certificate, cms.certificates, roots, at) : 'unknown';
  // A certificate that vouches for itself and does not hold together is not the signer's.
  const isBroken = trust === 'unknown' && certificate !== undefined && certificate.subject === certificate.issuer;
  const unfit = cms.certificate && whyUnfit(derOf(cms.certificate));
  const isOther = !kinds.includes(kind);
  const [token] = cms.timeStamps ?? [];
  const timeStamp = token && cms.value ? await checkTimeStamp(token, cms.value, roots) : undefined;
  const doubt = isOther
    ? `a signature of the kind ${kind.slice(0, 40)} is not checked here`
    : (cms.doubt ??
      (unfit && `its certificate ${unfit}`) ??
      (kind === pades ? whyNotPades(cms, stated) : undefined) ??
      (timeStamp && whyNotStamped(timeStamp, at)));
  const wrong = cms.problem ?? (isBroken ? 'its certificate is not as it was made' : undefined);
  // What is not checked here may hold all the same, unless its bytes are plainly other ones.
  const problem = (isOther || unfit !== undefined) && wrong !== otherBytes ? undefined : wrong;
  const told = problem ?? doubt;
  const report: SignatureReport = {
    ...blank,
    state: problem !== undefined ? 'altered' : doubt !== undefined ? 'unproven' : 'whole',
    signer: certificate?.subject ?? '',
    digestMatches: cms.digestMatches,
    signatureVerifies: cms.signatureVerifies,
    trust,
    problems: told === undefined ? [] : [told],
    ...(certificate && { certificate }),
    ...(at && { at }),
    ...(timeStamp && { timeStamp }),
  };
  return { range, report };
}

/** Clocks differ by this at most, in milliseconds. */
const hour = 3_600_000;

/** Why what an authority said does not go with the signature. */
function whyNotStamped({ problem, at: stamped }: TimeStamp, at: Date | undefined): string | undefined {
  if (problem !== undefined) return `its time-stamp proves nothing: ${problem}`;
  const isEarlier = stamped !== undefined && at !== undefined && at.getTime() - stamped.getTime() > hour;
  return isEarlier ? 'it gives a later time than its time-stamp' : undefined;
}

/** Clocks of two time zones differ by this at most, in hours. */
const zones = 26;

/** What a signature of the kind PAdES lacks. */
function whyNotPades(cms: CmsCheck, stated: Date | undefined): string | undefined {
  // Both are wanted by EN 319 142-1, 6.3 (from memory). By the older attribute (RFC 2634) it would be named by SHA-1.
  if (!cms.namesCertificate) return 'it does not name its certificate (RFC 5035), as its kind has to';
  if (stated === undefined) return 'it does not say when it was made, as its kind has to';
  const apart = Math.abs((cms.at ?? stated).getTime() - stated.getTime()) / hour;
  return apart > zones ? 'it gives two times that are days apart' : undefined;
}

/** The time that stands in the PDF's own words: by the signer's clock, and among the signed bytes. */
function timeOf(revision: Revision, dict: PDFDict): Date | undefined {
  const value = revision.resolve(dict.get(PDFName.of('M')));
  if (!(value instanceof PDFString) && !(value instanceof PDFHexString)) return undefined;
  try {
    const date = value.decodeDate();
    return Number.isFinite(date.getTime()) ? date : undefined;
  } catch {
    return undefined;
  }
}

function wordsOf(revision: Revision, dict: PDFDict): SignatureReport['says'] {
  const [name, reason, location] = ['Name', 'Reason', 'Location'].map((key) =>
    textOf(revision.resolve(dict.get(PDFName.of(key)))),
  );
  return {
    ...(name !== undefined && { name }),
    ...(reason !== undefined && { reason }),
    ...(location !== undefined && { location }),
  };
}
