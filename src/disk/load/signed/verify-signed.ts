import { documentName, matchIssue, roleOf, vouchFor, type IssueMatch } from '../../../signoff/index.js';
import {
  comparePages,
  printedText,
  verifyPdf,
  type PagesCompared,
  type PdfReport,
} from '../../../signoff/verify/index.js';
import type { IsoDate } from '../../../base/units/index.js';
import { documentsOf, loadSigning, readIssuedPdf } from '../load-signing.js';
import { signerProblems, type JudgedSignature } from './signer-problems.js';

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

interface VerifyWish {
  /** The day that no signature can be after. */
  readonly today: IsoDate;
  /** Absent: there is no house to compare with. */
  readonly houseDir?: string;
  /** Certificates to trust: PEM text or DER. */
  readonly roots?: readonly (string | Uint8Array)[];
}

/** Checks a signed book: its signatures, who vouches for the signers, and whether it is an issue of the house: by the data
 *  that it carries, by the digest printed on its pages, and byte for byte where the issued PDF is at hand. */
export async function verifySigned(
  pdf: Uint8Array,
  { today, houseDir, roots = [] }: VerifyWish,
): Promise<Verification> {
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
    ...signerProblems(signatures, { today, ...(match?.issue && { issue: match.issue }) }),
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
