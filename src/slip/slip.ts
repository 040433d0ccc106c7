import type { IsoDate } from '../base/units/index.js';

/** One choice of a slip: what stood when it was made, and what is wanted. Each is an option's slug, `none` where it is declined, or null
 *  where nothing is chosen. */
export interface SlipChoice {
  /** As `selectionId` makes it, such as `great-room/stone-facing/breast`. */
  readonly selection: string;
  readonly was: string | null;
  readonly now: string | null;
}

/** What somebody chose, beside the records as they were then. */
export interface Slip {
  /** The builder's job number. */
  readonly house: string;
  /** Digest of the records that it was made from, in hexadecimal digits. */
  readonly snapshot: string;
  /** Who chose: a name or a role among the people of the house. */
  readonly by: string;
  readonly on: IsoDate;
  /** A sentence to go with the choices. */
  readonly note?: string;
  /** No selection twice. */
  readonly choices: readonly SlipChoice[];
}
