import { PDFName, type PDFDict } from 'pdf-lib';
import type { Certificate } from 'pkijs';
import { textOf, type PdfFile, type Revision } from '../pdf/index.js';
import { checkCms, otherBytes } from './check-cms.js';
import type { SignatureReport } from './report.js';
import { readSignedRange, type SignedRange } from './signed-range.js';
import { describeCertificate, trustOf } from './trust.js';

export interface FoundSignature {
  readonly field: string;
  /** Number of the object that holds the signature dictionary. */
  readonly object: number;
  readonly dict: PDFDict;
  readonly revision: Revision;
}

export interface CheckedSignature {
  /** Absent when it cannot be told what was signed. */
  readonly range?: SignedRange;
  readonly report: SignatureReport;
}

const kinds = ['/adbe.pkcs7.detached', '/ETSI.CAdES.detached'];

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
  const cms = await checkCms(range.contents, signed);
  const certificate = cms.certificate && describeCertificate(cms.certificate, cms.at);
  const trust = cms.certificate ? await trustOf(cms.certificate, cms.certificates, roots, cms.at) : 'unknown';
  // A certificate that vouches for itself and does not hold together is not the signer's.
  const isBroken = trust === 'unknown' && certificate !== undefined && certificate.subject === certificate.issuer;
  const problem = cms.problem ?? (isBroken ? 'its certificate is not as it was made' : undefined);
  const report: SignatureReport = {
    ...blank,
    state: problem === undefined ? 'whole' : 'altered',
    signer: certificate?.subject ?? '',
    digestMatches: cms.digestMatches,
    signatureVerifies: cms.signatureVerifies,
    trust,
    problems: problem === undefined ? [] : [problem],
    ...(certificate && { certificate }),
    ...(cms.at && { at: cms.at }),
  };
  return { range, report: ofKnownKind(revision, dict, report, cms.problem) };
}

/** A signature of another kind may hold all the same: it is not proven, unless its bytes are plainly other ones. */
function ofKnownKind(
  revision: Revision,
  dict: PDFDict,
  report: SignatureReport,
  problem: string | undefined,
): SignatureReport {
  const kind = String(revision.resolve(dict.get(PDFName.of('SubFilter'))));
  if (kinds.includes(kind) || problem === otherBytes) return report;
  const words = `a signature of the kind ${kind.slice(0, 40)} is not checked here`;
  return { ...report, state: 'unproven', problems: [words] };
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
