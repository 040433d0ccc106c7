/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * A kind of finish, with the conventions of its trade.
 */
export interface RawCategory {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * Trade that does it, by its file name.
   */
  trade: string;
  /**
   * Specification section number in quotes, such as "06 20 00".
   */
  section: string;
  /**
   * Working order on site; lower comes first.
   */
  sequence: number;
  /**
   * Milestone at which the product must be on site.
   */
  'needed-at': string;
  /**
   * A milestone that the choice fixes before its own installation.
   */
  'fixes-early'?: {
    /**
     * The milestone.
     */
    milestone: string;
    /**
     * Why, in a sentence.
     */
    why: string;
  };
  /**
   * Place in the build-up.
   */
  layer: 'framing' | 'insulation' | 'backing' | 'substrate' | 'finish' | 'edge' | 'fixture';
  /**
   * Column of the room finish schedule.
   */
  schedule?: 'floor' | 'base' | 'walls' | 'ceiling' | 'trim';
  /**
   * How the trade measures it.
   */
  measure: {
    /**
     * Way of measuring.
     */
    by: 'area' | 'run' | 'each' | 'stone' | 'railing' | 'stair' | 'lump';
    /**
     * Which openings are taken off an area: none, all, or over 32 sq ft.
     */
    openings?: string;
    /**
     * Coats or layers.
     */
    times?: number;
    /**
     * The rule in one sentence.
     */
    words: string;
    /**
     * Source of the rule, or: common practice, no source.
     */
    source: string;
    /**
     * Lay the pieces out on the surface, course by course, cut from the option's stock lengths: boards or sheets.
     */
    lay?: 'boards' | 'sheets';
  };
  /**
   * What options of this category must say, by name.
   */
  attributes?: {
    [k: string]: RawAttributeRule;
  };
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * One attribute of the category's options.
 */
export interface RawAttributeRule {
  /**
   * Label as printed.
   */
  label: string;
  /**
   * What kind of value it is.
   */
  kind: 'text' | 'number' | 'length' | 'lengths' | 'yes-no';
  /**
   * Whether every option must say it.
   */
  required?: boolean;
  /**
   * The texts it may be.
   *
   * @minItems 1
   */
  choices?: string[];
}
