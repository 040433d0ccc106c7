import { printDay, shortDigest } from '../../base/units/index.js';
import type { PdfReport, SignatureReport } from '../verify/index.js';
import { signatureField, type SignerRole } from './signer-role.js';

/** What the record of an issue says, as far as a signed PDF is held against it. */
export interface IssuedFacts {
  readonly number: number;
  /** Absent: an issue of the book. */
  readonly is?: 'change order';
  /** `pricing`, `sign-off` or `construction`; of a change order its state. */
  readonly purpose: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  /** SHA-256 of the issue's snapshot, as 64 hexadecimal digits in lower case. */
  readonly digest: string;
  /** Given when the issue was taken back. */
  readonly void?: { readonly on: string; readonly by: string; readonly why: string };
  /** Signatures that were accepted. */
  readonly signatures?: readonly AcceptedSignature[];
}

interface AcceptedSignature {
  readonly role: SignerRole;
  /** `hand`: on paper, so that no PDF holds it. */
  readonly how: 'certificate' | 'hand';
  /** SHA-256 of the certificate, as 64 hexadecimal digits in lower case. */
  readonly fingerprint?: string;
}

export interface IssueMatch {
  /** The issue whose data the PDF carries, else the one whose digest is printed on it. */
  readonly issue?: IssuedFacts;
  /** `matches`: the attached `book.json` has the issue's digest. `absent`: the PDF carries no one book. */
  readonly data: 'matches' | 'differs' | 'absent';
  /** `matches`: the issue's short digest is printed on every page. `unread`: the pages' text is not at hand. */
  readonly printed: 'matches' | 'differs' | 'unread';
  /** Pages, from 1, without the short digest of the issue. */
  readonly pagesWithout: readonly number[];
  /** Roles that signed by certificate as the issue's record says, and whose signature is not in this PDF or does not hold. */
  readonly missing: readonly SignerRole[];
  /** What does not hold, in words. */
  readonly problems: readonly string[];
}

/** Holds a PDF against the issues of a house, or one that carries a change order against those. `pages` is the text of each page without white space. */
export function matchIssue(
  report: PdfReport,
  pages: readonly string[] | undefined,
  known: readonly IssuedFacts[],
): IssueMatch {
  const carried = report.changeOrder ?? report.book;
  const issues = known.filter(({ is }) => (is === 'change order') === (report.changeOrder !== undefined));
  const byData = issues.filter(({ digest }) => digest === carried?.sha256);
  const isPrinted = ({ digest }: IssuedFacts): boolean =>
    pages?.some((text) => text.includes(shortDigest(digest))) === true;
  // The same records can be issued twice; the number that is meant is then the newest that is printed.
  const issue = newest(byData.filter(isPrinted)) ?? newest(byData) ?? newest(issues.filter(isPrinted));
  const data = carried ? (issue?.digest === carried.sha256 ? 'matches' : 'differs') : 'absent';
  const stamp = issue && shortDigest(issue.digest);
  const pagesWithout = (pages ?? []).flatMap((text, index) =>
    stamp !== undefined && text.includes(stamp) ? [] : [index + 1],
  );
  const printed =
    pages === undefined ? 'unread' : pages.length > 0 && pagesWithout.length === 0 ? 'matches' : 'differs';
  const accepted = (issue?.signatures ?? []).filter(({ how }) => how === 'certificate');
  const missing = accepted
    .filter((one) => !report.signatures.some((found) => isSame(found, one)))
    .map(({ role }) => role);
  const match = { data, printed, pagesWithout, missing, ...(issue && { issue }) } as const;
  return { ...match, problems: problemsOf(match, issues.length, report.changeOrder ? 'change order' : 'issue') };
}

function isSame({ field, state, certificate }: SignatureReport, { role, fingerprint }: AcceptedSignature): boolean {
  const isTheirs = fingerprint === undefined || certificate?.fingerprint === fingerprint;
  return field === signatureField(role) && state === 'whole' && isTheirs;
}

/** `issue 2`, `change order 3`. */
export function documentName({ is, number }: Pick<IssuedFacts, 'is' | 'number'>): string {
  return `${is ?? 'issue'} ${number}`;
}

function newest(issues: readonly IssuedFacts[]): IssuedFacts | undefined {
  return issues.toSorted((a, b) => b.number - a.number)[0];
}

function problemsOf(
  { issue, data, printed, pagesWithout, missing }: Omit<IssueMatch, 'problems'>,
  count: number,
  what: 'change order' | 'issue',
): readonly string[] {
  if (!issue) {
    if (count === 0) return [`the house has no ${what}s to compare it with`];
    return [
      data === 'absent'
        ? 'it carries no book.json, and the digest of no issue is printed on it'
        : `the data attached to it is that of no ${what} of the house`,
    ];
  }
  const name = documentName(issue);
  const problems: string[] = [];
  if (issue.void)
    problems.push(`${name} was voided on ${printDay(issue.void.on)} by ${issue.void.by}: ${issue.void.why}`);
  if (data === 'differs')
    problems.push(`the data attached to it is not that of ${name}, whose digest is printed on it`);
  if (data === 'absent') problems.push(`it does not carry the data of ${name}`);
  if (printed === 'unread') problems.push('the text of its pages cannot be read');
  if (printed === 'differs') {
    const where = pagesWithout.slice(0, 8).join(', ') + (pagesWithout.length > 8 ? ' and others' : '');
    problems.push(`the digest of ${name}, ${shortDigest(issue.digest)}, is not printed on page ${where}`);
  }
  for (const role of missing) {
    problems.push(
      `the record of ${name} says that the ${role} signed; that signature is not in this file, which may have been cut back`,
    );
  }
  return problems;
}
