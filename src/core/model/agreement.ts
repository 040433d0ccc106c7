import type { Origin } from '../../base/problem/index.js';
import type { Cents, IsoDate } from '../../base/units/index.js';

export const issuePurposes = ['pricing', 'sign-off', 'construction'] as const;
export type IssuePurpose = (typeof issuePurposes)[number];

/** A numbered version of the book. Its snapshot, `issued/NNN.json`, is the Book as canonical JSON. */
export interface Issue {
  readonly number: number;
  readonly purpose: IssuePurpose;
  readonly date: IsoDate;
  /** Full id of the git commit whose records it was made from. */
  readonly commit: string;
  /** SHA-256 of the snapshot's bytes, in hexadecimal. */
  readonly digest: string;
  /** Digests of what each room's page and each trade's part agree to, by slug. */
  readonly rooms: Readonly<Record<string, string>>;
  readonly trades: Readonly<Record<string, string>>;
  readonly signatures: readonly IssueSignature[];
  /** Ids of the selections that were open; absent in a record from before they were written down. */
  readonly open?: readonly string[];
  /** Digests of what each shared folder gave, by its way from the house folder; absent where there is none. */
  readonly shared?: Readonly<Record<string, string>>;
  /** Issued for construction although things stood in the way: why, and what they were. */
  readonly anyway?: { readonly why: string; readonly despite: readonly string[] };
  /** Taken back: it keeps its number and its files, and nothing stands on it. */
  readonly void?: { readonly on: IsoDate; readonly by: string; readonly why: string };
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** A signature as it was accepted. */
export interface IssueSignature {
  readonly role: 'owner' | 'builder';
  /** By the certificate, or as written under a signature by hand. */
  readonly name: string;
  readonly on: IsoDate;
  /** `hand`: the file is a scan, and nobody but its readers can vouch for it. */
  readonly how: 'certificate' | 'hand';
  /** Path in the house folder. */
  readonly file: string;
  /** SHA-256 of the file. */
  readonly digest: string;
  /** SHA-256 of the certificate. */
  readonly fingerprint?: string;
}

/** An issue counts as signed when owner and builder both signed it. */
export function isSigned({ signatures }: { readonly signatures: readonly Pick<IssueSignature, 'role'>[] }): boolean {
  return (['owner', 'builder'] as const).every((role) => signatures.some((signature) => signature.role === role));
}

export const changeOrderStates = ['proposed', 'approved', 'declined', 'void'] as const;
export type ChangeOrderState = (typeof changeOrderStates)[number];

/** A change of the contract between two versions of the records, with its lines as they were when it was drafted. */
export interface ChangeOrder {
  readonly number: number;
  readonly title: string;
  readonly state: ChangeOrderState;
  /** `issue-N`, or the full id of a commit. */
  readonly from: string;
  readonly to: string;
  readonly proposedOn: IsoDate;
  readonly decidedOn?: IsoDate;
  readonly decidedBy?: string;
  readonly voidReason?: string;
  /** Who asked for it. */
  readonly requestedBy?: string;
  /** The last day on which it can be approved at this amount. */
  readonly validUntil?: IsoDate;
  readonly reason: string;
  /** Working days that it moves the end of the job. */
  readonly days: number;
  readonly amount: Cents;
  /** They add up to `amount`. */
  readonly lines: readonly ChangeLine[];
  /** Where the contract figures mark-up on the net of a change order. */
  readonly netted?: Netted;
  /** Pages of rooms that it replaces; empty in a record from before they were written down. */
  readonly replaces: readonly ReplacedPage[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** A room's page by the SHA-256 digest of what it agrees to, before and with the change; one side is absent when the room is new or gone. */
export interface ReplacedPage {
  readonly room: string;
  readonly from?: string;
  readonly to?: string;
}

/** Additions less deductions, by what they are to, before mark-up; in whole cents. */
export interface Net {
  readonly allowance: Cents;
  /** Beside the allowances. */
  readonly work: Cents;
}

/** The net that mark-up was figured on, and that mark-up. */
export interface Netted extends Net {
  readonly markup: Cents;
}

export interface ChangeLine {
  /** Slug; absent for what is not of one room. */
  readonly room?: string;
  /** Id of the selection. */
  readonly selection?: string;
  /** The term of the contract that it changes: `contract.sum`, `allowances.stone.amount`. */
  readonly term?: string;
  readonly what: string;
  readonly from?: string;
  readonly to?: string;
  readonly quantity?: string;
  readonly amount: Cents;
}
