/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * A change order: what changes between two versions of the records, with its lines as they were when drafted.
 */
export interface RawChangeOrder {
  /**
   * What it is about, in a few words.
   */
  title: string;
  /**
   * Where it stands. A void one keeps its number.
   */
  state: 'proposed' | 'approved' | 'declined' | 'void';
  /**
   * The version before: issue-N, or a whole commit id.
   */
  from: string;
  /**
   * The version after: issue-N, or a whole commit id.
   */
  to: string;
  /**
   * The day it was put to the owner.
   */
  'proposed-on': string;
  /**
   * The day it was approved, declined or voided.
   */
  'decided-on'?: string;
  /**
   * Who decided, by role.
   */
  'decided-by'?: string;
  /**
   * Why, in words that both parties will understand in ten years.
   */
  reason: string;
  /**
   * Working days that it moves the end of the job.
   */
  days: string;
  /**
   * What it adds to the contract sum.
   */
  amount: string;
  /**
   * What it is made of; the amounts add up.
   */
  lines: RawChangeLine[];
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * One line of a change order.
 */
export interface RawChangeLine {
  /**
   * The room, by slug; absent for what is not of one room.
   */
  room?: string;
  /**
   * The selection: room/category/place.
   */
  selection?: string;
  /**
   * What changes.
   */
  what: string;
  /**
   * What it was.
   */
  from?: string;
  /**
   * What it becomes.
   */
  to?: string;
  /**
   * Quantities before and after.
   */
  quantity?: string;
  /**
   * What it adds to the contract sum.
   */
  amount: string;
}
