import { printDay, type IsoDate } from '../../../base/units/index.js';
import { documentName, type IssuedFacts, type SignerRole, type Vouched } from '../../../signoff/index.js';
import { printInstant } from '../../../signoff/sign/index.js';
import type { SignatureReport } from '../../../signoff/verify/index.js';

export interface JudgedSignature {
  readonly report: SignatureReport;
  readonly role?: SignerRole;
  readonly vouched: Vouched;
}

interface Days {
  /** What was signed; absent when nobody knows. */
  readonly issue?: IssuedFacts;
  readonly today: IsoDate;
}

/** Why signatures do not count as those of the people whose fields they are in, or prove no day, in words. */
export function signerProblems(signatures: readonly JudgedSignature[], days: Days): readonly string[] {
  return [
    ...signatures.flatMap((one) => {
      const { field, signer } = one.report;
      const who = signer === '' ? field : `${field}, ${signer}`;
      const wrong = [one.vouched.problem, whyInvalid(one.report), whyUntimely(one.report, days)];
      return wrong.flatMap((problem) => (problem === undefined ? [] : [`${who}: ${problem}`]));
    }),
    ...sharedCertificates(signatures),
  ];
}

function whyInvalid({ certificate, at }: SignatureReport): string | undefined {
  if (!certificate || certificate.validAtSigning) return undefined;
  const days = `${printInstant(certificate.from)} to ${printInstant(certificate.to)}`;
  const when = at ? `was not valid when it signed, ${printInstant(at)}` : 'signed without a time';
  return `the certificate ${when}; it is valid from ${days}`;
}

/** Hours by which a clock on a wall is before UTC at most, and behind it. */
const [most, least] = [14, -12];

/** A day is a place's own, a signature's time is not: only what is wrong at every place is told. */
function whyUntimely({ at }: SignatureReport, { issue, today }: Days): string | undefined {
  if (!at) return undefined;
  const says = `it says that it was made on ${printInstant(at)}`;
  const proof = 'so that it is not proven when';
  if (issue && dayAt(at, most) < issue.date) {
    return `${says}, before the day of ${documentName(issue)}, ${printDay(issue.date)}, ${proof}`;
  }
  return dayAt(at, least) > today ? `${says}, which is after today, ${printDay(today)}, ${proof}` : undefined;
}

function dayAt(at: Date, hours: number): IsoDate {
  return new Date(at.getTime() + hours * 3_600_000).toISOString().slice(0, 10);
}

/** One certificate for two roles is one person, whoever vouches for it. */
function sharedCertificates(signatures: readonly JudgedSignature[]): readonly string[] {
  const fields = new Map<string, Set<string>>();
  for (const { role, report } of signatures) {
    if (role === undefined || !report.certificate) continue;
    const { fingerprint } = report.certificate;
    fields.set(fingerprint, (fields.get(fingerprint) ?? new Set()).add(report.field));
  }
  return [...fields.values()].flatMap((some) =>
    some.size < 2
      ? []
      : [`${[...some].join(' and ')} were signed with one certificate, which proves one person and not ${some.size}`],
  );
}
