/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * Name of a schedule.
 */
export type RawScheduleName =
  | 'finish'
  | 'finish-keys'
  | 'finish-remarks'
  | 'doors'
  | 'openings'
  | 'hardware'
  | 'railings'
  | 'stone'
  | 'insulation'
  | 'sound-walls'
  | 'backing';

/**
 * A trade: its sections, what it needs to know, its scope.
 */
export interface RawTrade {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * Contact, by role.
   */
  contact: string;
  /**
   * Specification section numbers in quotes.
   */
  sections: string[];
  /**
   * What the trade must know before it prices.
   */
  'needs-to-know'?: string[];
  /**
   * What the trade does.
   */
  'scope-in'?: string[];
  /**
   * What others do.
   */
  'scope-out'?: string[];
  /**
   * What the trade provides for others, by ids that options' needs and categories' needs-beneath name.
   */
  carries?: RawCarried[];
  /**
   * Schedules of the house that the trade's handout carries, in this order.
   */
  schedules?: RawScheduleName[];
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * Something the trade provides.
 */
export interface RawCarried {
  /**
   * Name that needs refer to.
   */
  id: string;
  /**
   * What it is, as printed.
   */
  what: string;
  /**
   * Place in the build-up; backing when absent.
   */
  layer?: 'framing' | 'insulation' | 'backing' | 'substrate' | 'finish' | 'edge' | 'fixture';
}
