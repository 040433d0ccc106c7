import {
  documentName,
  matchIssue,
  roleOf,
  vouchFor,
  type IssueMatch,
  type SignerRole,
  type Vouched,
} from '../../../signoff/index.js';
import { printInstant } from '../../../signoff/sign/index.js';
import {
  comparePages,
  printedText,
  verifyPdf,
  type PagesCompared,
  type PdfReport,
  type SignatureReport,
} from '../../../signoff/verify/index.js';
import { documentsOf, loadSigning, readIssuedPdf } from '../load-signing.js';

/** All that a signed book proves, held against its house. */
export interface Verification {
  /** True when there is nothing among the problems. */
  readonly holds: boolean;
  readonly report: PdfReport;
  readonly signatures: readonly JudgedSignature[];
  /** Absent without a house to compare with. */
  readonly match?: IssueMatch;
  /** Against the issue's PDF in the house folder; absent when that is not there. */
  readonly pages?: PagesCompared;
  /** What does not hold, in words. */
  readonly problems: readonly string[];
}

export interface JudgedSignature {
  readonly report: SignatureReport;
  readonly role?: SignerRole;
  readonly vouched: Vouched;
}

interface VerifyWish {
  /** Absent: there is no house to compare with. */
  readonly houseDir?: string;
  /** Certificates to trust: PEM text or DER. */
  readonly roots?: readonly (string | Uint8Array)[];
}

/** Checks a signed book: its signatures, who vouches for the signers, and whether it is an issue of the house: by the data
 *  that it carries, by the digest printed on its pages, and byte for byte where the issued PDF is at hand. */
export async function verifySigned(pdf: Uint8Array, { houseDir, roots = [] }: VerifyWish): Promise<Verification> {
  const report = await verifyPdf(pdf, { roots });
  // Of what cannot be read there is no more to say.
  if (report.verdict === 'unreadable') return { holds: false, report, signatures: [], problems: report.problems };
  const signing = houseDir === undefined ? undefined : await loadSigning(houseDir);
  const match = signing && matchIssue(report, printedText(pdf), documentsOf(signing));
  const issued = houseDir !== undefined && match?.issue ? await readIssuedPdf(houseDir, match.issue) : undefined;
  const pages = issued && comparePages(pdf, issued);
  const signatures = report.signatures.map((one): JudgedSignature => {
    const role = roleOf(one.field);
    return { report: one, vouched: vouchFor(one, signing?.signers ?? []), ...(role && { role }) };
  });
  const problems = [
    ...report.problems,
    ...(report.verdict === 'unsigned' ? ['it is not signed'] : []),
    ...signatures.flatMap(signerProblems),
    ...(signing?.problems ?? []),
    ...(match?.problems ?? ['it is not compared with an issue: name the house folder with --house']),
    ...pageProblems(pages, match),
  ];
  return {
    holds: problems.length === 0,
    report,
    signatures,
    problems,
    ...(match && { match }),
    ...(pages && { pages }),
  };
}

function signerProblems({ report: { field, certificate, at, signer }, vouched }: JudgedSignature): readonly string[] {
  const who = signer === '' ? field : `${field}, ${signer}`;
  const problems = vouched.problem === undefined ? [] : [`${who}: ${vouched.problem}`];
  if (!certificate || certificate.validAtSigning) return problems;
  const days = `${printInstant(certificate.from)} to ${printInstant(certificate.to)}`;
  const when = at ? `was not valid when it signed, ${printInstant(at)}` : 'signed without a time';
  return [...problems, `${who}: the certificate ${when}; it is valid from ${days}`];
}

function pageProblems(pages: PagesCompared | undefined, match: IssueMatch | undefined): readonly string[] {
  const name = `the PDF of ${match?.issue ? documentName(match.issue) : 'it'} in the house folder`;
  if (pages?.kind === 'altered') return [`it was changed after ${name} was printed: ${pages.why}`];
  if (pages?.kind === 'other-file') {
    return [
      `its pages cannot be proven: it is not ${name} with signatures added, but another file or one written anew`,
    ];
  }
  return [];
}
