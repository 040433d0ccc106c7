import { counted, printDay, shortDigest } from '../base/units/index.js';
import type { JudgedSignature, Verification } from '../disk/load/signed/index.js';
import { printable } from '../base/problem/index.js';
import type { IssuedFacts } from '../signoff/index.js';
import { printInstant } from '../signoff/sign/index.js';
import { describeChange, type TimeStamp } from '../signoff/verify/index.js';
import { printFingerprint } from './print-fingerprint.js';

/** A verification for the terminal. Names in it were written by whoever made the PDF, so nothing of it moves the cursor. */
export function printVerification(file: string, verification: Verification): string {
  const { report, signatures, problems } = verification;
  if (report.verdict === 'unreadable')
    return `${printable(`${file}: ${problems.join('; ')}`)}\nNothing is proven by it.\n`;
  const left = report.toSign.length === 0 ? '' : `; not signed: ${report.toSign.join(', ')}`;
  const ending =
    problems.length === 0
      ? ['All of this holds.']
      : ['What does not hold:', ...problems.map((problem) => `  - ${problem}`)];
  const parts = [
    [`${file}: ${report.verdict}`, `${counted(signatures.length, 'signature')}${left}`],
    ...signatures.map(signatureLines),
    issueLines(verification),
    ending,
  ];
  return `${parts.map((lines) => lines.map((line) => `${printable(line)}\n`).join('')).join('\n')}`;
}

function signatureLines({ report, vouched }: JudgedSignature): readonly string[] {
  const { certificate, says, at } = report;
  const who = report.signer === '' ? 'nobody can tell who' : report.signer;
  const named = says.name === undefined || says.name === report.signer ? '' : `, who writes "${says.name}"`;
  return [
    `${report.field}: ${report.state}`,
    `  signed by    ${who}${named}${at ? `, ${printInstant(at)} by the signer's clock` : ''}`,
    ...(report.timeStamp ? [`  time-stamp   ${stampWords(report.timeStamp)}`] : []),
    ...(says.reason === undefined ? [] : [`  says         ${says.reason}`]),
    ...(certificate
      ? [
          `  certificate  issued by ${certificate.issuer}, ${certificate.validAtSigning ? 'valid' : 'not valid'} when it signed`,
          `               ${printFingerprint(certificate.fingerprint)}`,
        ]
      : []),
    `  vouched for  ${{ house: "by the house's record", 'given-root': 'by --trust', nobody: 'by nobody' }[vouched.by]}`,
    ...report.after.map((change) => `  afterwards   ${describeChange(change)}`),
  ];
}

function stampWords({ at, authority, trust, problem }: TimeStamp): string {
  const said = `${at ? printInstant(at) : 'no time'} by ${authority?.subject ?? 'nobody that can be told'}`;
  if (problem !== undefined) return `${said}, which proves nothing`;
  return trust === 'given-root'
    ? `${said}, whom --trust vouches for`
    : `${said}, whom nobody vouches for: anybody can make one`;
}

function issueLines({ match, pages, report }: Verification): readonly string[] {
  if (!match) return ['issue: not compared'];
  const { issue, data, printed } = match;
  if (!issue) return [`${report.changeOrder ? 'change order' : 'issue'}: none of the house`];
  const what = issue.is ?? 'issue';
  const carried = report.changeOrder ?? report.book;
  const count = { matches: `that of the ${what}`, differs: 'another', absent: 'none' }[data];
  const stamp = {
    matches: `${shortDigest(issue.digest)} on every page`,
    differs: `${shortDigest(issue.digest)} is not on every page`,
    unread: 'cannot be read',
  }[printed];
  const compared = {
    same: 'the issued PDF, byte for byte, with signatures added',
    'other-file': 'not proven to be those of the issued PDF',
    altered: 'altered after they were issued',
    missing: `not compared: the folder has no PDF of this ${what}`,
  }[pages?.kind ?? 'missing'];
  const roles = (issue.signatures ?? []).map(({ role, how }) => (how === 'hand' ? `${role} by hand` : role));
  const signed = roles.length === 0 ? '' : `, signed by ${roles.join(' and ')} as recorded`;
  return [
    `${what}: ${issue.number}${issue.is === undefined ? ' for' : ','} ${issue.purpose}, ${printDay(issue.date)}${signed}`,
    `  data         ${count}${carried ? `, SHA-256 ${carried.sha256}` : ''}`,
    `  printed      ${stamp}`,
    `  pages        ${compared}`,
  ];
}

/** A verification for other programs; times as ISO 8601, digests as hexadecimal. */
export function verificationJson({ holds, report, signatures, match, pages, problems }: Verification): object {
  const { book, verdict, toSign, attachments } = report;
  return {
    holds,
    verdict,
    signatures: signatures.map(({ report: { after, ...one }, role, vouched }) => ({
      ...one,
      role: role ?? null,
      vouchedFor: vouched.by,
      after: after.map(describeChange),
    })),
    toSign,
    issue: match?.issue && match.issue.is === undefined ? issueFacts(match.issue) : null,
    changeOrder: match?.issue?.is === undefined ? null : issueFacts(match.issue),
    data: match?.data ?? null,
    printed: match?.printed ?? null,
    pagesWithoutDigest: match?.pagesWithout ?? [],
    missingSignatures: match?.missing ?? [],
    pages: pages?.kind ?? null,
    bookSha256: book?.sha256 ?? null,
    attachments,
    problems,
  };
}

function issueFacts({ number, purpose, date, digest, signatures }: IssuedFacts): IssuedFacts {
  return { number, purpose, date, digest, ...(signatures && { signatures }) };
}
