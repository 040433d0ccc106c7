/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * A layer, a category, or what a trade carries.
 */
export type RawBeneath = string;
/**
 * Any of these.
 *
 * @minItems 1
 */
export type RawAnyBeneath = RawBeneath[];

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
   * What must lie beneath it at the same place: a layer, a category, or the id of something that a trade carries. A list inside the list means any of them.
   */
  'needs-beneath'?: (RawBeneath | RawAnyBeneath)[];
  /**
   * Column of the room finish schedule; place: the column of the place that it is on.
   */
  schedule?: 'floor' | 'base' | 'walls' | 'ceiling' | 'trim' | 'place';
  /**
   * Letters of its keys in the room finish schedule, such as P for P1, P2. Absent: the letter of its column.
   */
  key?: string;
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
    /**
     * Attribute of the options that says how many coats or layers, instead of times.
     */
    'times-by'?: string;
    /**
     * How the trade counts it beside the measure: boards (lineal and board feet, by the attributes face and nominal), sheets (by sheet and stock), gallons (by coverage).
     */
    counted?: 'boards' | 'sheets' | 'gallons';
    /**
     * What is used up with it and not priced apart: compound, tape, screws, grout.
     *
     * @minItems 1
     */
    supplies?: RawSupply[];
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
  /**
   * Walls, ceilings and floors that the insulation fills, with the framing's share: its effective R is worked out.
   *
   * @minItems 1
   */
  assemblies?: RawAssembly[];
}
/**
 * Something used up with the finish.
 */
export interface RawSupply {
  /**
   * What it is, as it is ordered.
   */
  what: string;
  /**
   * How much for how much, such as 5 gal / 1,000 sq ft. It goes with the net quantity measured in that unit; per cu ft, with the joints between pieces, by the attributes length, width and joint and the option's thickness.
   */
  amount: string;
  /**
   * Number among the attributes that multiplies it, such as coats.
   */
  'times-by'?: string;
  /**
   * Only with options whose attribute says one of these texts.
   */
  when?: {
    /**
     * @minItems 1
     */
    [k: string]: string[];
  };
  /**
   * Attribute whose text goes with the name, such as the color of the grout.
   */
  'named-by'?: string;
  pack?: RawSupplyPack;
  /**
   * Waste added to it.
   */
  waste?: string;
  /**
   * Why it is so much, in words.
   */
  why?: string;
  /**
   * Source of the amount, or: common practice, no source.
   */
  source: string;
}
/**
 * What is sold whole.
 */
export interface RawSupplyPack {
  /**
   * Name of the pack, such as pail.
   */
  name: string;
  /**
   * How much it holds, in the unit of the amount.
   */
  holds: number;
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
  /**
   * What its values mean, in words, by value.
   */
  means?: {
    [k: string]: string;
  };
  /**
   * Source of these words, or: common practice, no source.
   */
  source?: string;
}
/**
 * A wall, ceiling or floor with framing in it; resistances in sq ft h degF / Btu.
 */
export interface RawAssembly {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * Surfaces of a room that are of this kind.
   */
  over: 'walls' | 'ceiling' | 'floor';
  framing: RawAssemblyFraming;
  /**
   * What covers framing and insulation alike, air films among it, from outside in.
   */
  layers: RawAssemblyLayer[];
}
/**
 * The framing beside the insulation.
 */
export interface RawAssemblyFraming {
  /**
   * What it is, such as 2x6 studs at 16 inches.
   */
  what: string;
  /**
   * Share of the area that is framing.
   */
  share: string;
  /**
   * R of the framing for an inch.
   */
  'r-per-inch': number;
  /**
   * Depth of the framing; absent, as deep as the insulation.
   */
  depth?: string;
  /**
   * Source, or: common practice, no source.
   */
  source: string;
}
/**
 * A layer.
 */
export interface RawAssemblyLayer {
  /**
   * What it is.
   */
  what: string;
  /**
   * Its R.
   */
  r: number;
  /**
   * Source, or: common practice, no source.
   */
  source: string;
}
