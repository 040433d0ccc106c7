/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * A finish that can be chosen. It has a price, or parts when it is bought in parts.
 */
export interface RawOption {
  /**
   * Name as printed.
   */
  name: string;
  /**
   * Maker.
   */
  maker: string;
  /**
   * Model or item number.
   */
  model: string;
  /**
   * One line for a card.
   */
  summary: string;
  price?: RawPrice;
  pack?: RawPack;
  /**
   * Waste added to the net quantity, for a finish bought as one thing.
   */
  waste?: string;
  /**
   * Parts of a finish bought in parts, such as flats and corners.
   */
  parts?: {
    [k: string]: RawPart;
  };
  /**
   * Freight for the house's whole order.
   */
  freight?: string;
  /**
   * Where the price comes from.
   */
  quoted?: {
    /**
     * Day of the quotation.
     */
    on: string;
    /**
     * Who quoted, by role.
     */
    by: string;
  };
  /**
   * Time from order to site.
   */
  lead: string;
  /**
   * Weight in place, such as 2.1 lb / sq ft.
   */
  weight?: string;
  /**
   * Thickness in place.
   */
  thickness?: string;
  /**
   * What the category asks of its options; the category's record says which and of what kind.
   */
  attributes?: {
    [k: string]: unknown;
  };
  /**
   * What must be there before it can be installed.
   */
  needs?: RawNeed[];
  /**
   * Drawn swatch.
   */
  swatch: {
    /**
     * Pattern drawn.
     */
    pattern:
      | 'boards'
      | 'planks'
      | 'herringbone'
      | 'ashlar'
      | 'ledge'
      | 'cobble'
      | 'tile'
      | 'hex'
      | 'texture'
      | 'solid'
      | 'metal'
      | 'cable'
      | 'pickets'
      | 'glass'
      | 'batt'
      | 'foam'
      | 'layers'
      | 'panel-door'
      | 'slab-door'
      | 'lever'
      | 'knob'
      | 'profile'
      | 'timber'
      | 'flame'
      | 'stair';
    /**
     * Colours as #rrggbb, the main one first.
     *
     * @minItems 1
     */
    colors: string[];
    /**
     * Real width of one repeat, such as a board's face.
     */
    repeat?: string;
  };
  /**
   * Specification text, a short paragraph each.
   */
  specification: {
    /**
     * General: scope, submittals, conditions.
     */
    general: string;
    /**
     * Products.
     */
    products: string;
    /**
     * Execution.
     */
    execution: string;
  };
  /**
   * Care, for the hand-over.
   */
  care: string;
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * Price of a finish bought as one thing.
 */
export interface RawPrice {
  /**
   * Material, such as $7.40 / sq ft.
   */
  material: string;
  /**
   * Installation, such as $4.10 / sq ft.
   */
  labor: string;
}
/**
 * What is sold whole.
 */
export interface RawPack {
  /**
   * Name of the pack, such as bundle.
   */
  name: string;
  /**
   * What one pack holds, such as 24 sq ft.
   */
  holds: string;
}
/**
 * One part: its price, pack and waste.
 */
export interface RawPart {
  /**
   * Material, such as $7.40 / sq ft.
   */
  material: string;
  /**
   * Installation, such as $4.10 / sq ft.
   */
  labor: string;
  pack?: RawPack;
  /**
   * Waste added to the net quantity.
   */
  waste?: string;
}
/**
 * Something another trade provides.
 */
export interface RawNeed {
  /**
   * Name by which a trade says that it carries this.
   */
  id?: string;
  /**
   * What is needed.
   */
  what: string;
  /**
   * Trade that provides it.
   */
  by: string;
  /**
   * Milestone before which it is needed.
   */
  before: string;
}
