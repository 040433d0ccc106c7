/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

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
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
