/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */

/**
 * One name.
 */
export type RawSlotNeed = string;
/**
 * Any of these.
 *
 * @minItems 1
 */
export type RawSlotNeeds = string[];

/**
 * The house: parties, contract rules, allowances, working calendar and milestones.
 */
export interface RawHouse {
  /**
   * Name of the house.
   */
  name: string;
  /**
   * The builder's job number, in quotes when it is all digits.
   */
  number: string;
  /**
   * Where it is built.
   */
  place: string;
  /**
   * Address where the built site stands, https only: a handout that is online looks there whether it is current.
   */
  site?: string;
  /**
   * Whether metric sizes are printed beside feet and inches.
   */
  metric?: 'none' | 'beside';
  /**
   * Which dollars the contract's $ means: the house has one currency.
   */
  currency: 'USD' | 'CAD' | 'AUD' | 'NZD';
  /**
   * Climate zone that insulation is checked against, such as 6B.
   */
  'climate-zone': string;
  /**
   * The parties, by role.
   */
  people: {
    /**
     * Role, such as owner, builder or architect.
     */
    role: string;
    /**
     * Name by role, such as The owners.
     */
    name: string;
    /**
     * How to reach them.
     */
    contact?: string;
  }[];
  /**
   * The contract and how it settles choices.
   */
  contract: {
    /**
     * Contract sum.
     */
    sum: string;
    /**
     * Day of the contract.
     */
    date: string;
    /**
     * Sales tax, and what it is charged on.
     */
    tax: {
      /**
       * Rate of the tax.
       */
      rate: string;
      /**
       * What the tax is charged on.
       */
      on: ('material' | 'freight' | 'labor')[];
    };
    /**
     * Mark-up on what goes over an allowance or a standard.
     */
    'overage-markup': string;
    /**
     * Share of an underrun that returns to the owner.
     */
    'credit-returns': string;
    /**
     * Whether the mark-up returns with a credit.
     */
    'credit-markup': boolean;
    /**
     * Contingency inside the contract sum.
     */
    contingency: string;
    /**
     * Who pays the installation of what the owner furnishes.
     */
    'owner-furnished-install': 'contract' | 'owner';
    /**
     * How parts of a cent round, once a line.
     */
    rounding: 'half-up';
  };
  /**
   * Levels, lowest first.
   *
   * @minItems 1
   */
  levels: RawLevel[];
  /**
   * Allowances of the contract.
   */
  allowances?: RawAllowance[];
  /**
   * Which days are worked.
   */
  calendar: {
    /**
     * Days of the week that are not worked.
     *
     * @maxItems 6
     */
    weekend: ('monday' | 'tuesday' | 'wednesday' | 'thursday' | 'friday' | 'saturday' | 'sunday')[];
    /**
     * Which holidays are not worked.
     */
    holidays: 'us-federal' | 'none';
    /**
     * Other days that are not worked.
     */
    closed?: {
      /**
       * First day closed.
       */
      from: string;
      /**
       * Last day closed.
       */
      to: string;
      /**
       * Reason as printed.
       */
      why: string;
    }[];
    /**
     * Time the builder needs between a decision and acting on it.
     */
    review: string;
  };
  /**
   * Milestones of the job.
   *
   * @minItems 1
   */
  milestones: RawMilestone[];
  /**
   * Cautions that somebody accepts, with the reason. They stay in the register, shown as accepted.
   */
  cautions?: {
    /**
     * Id of the caution, as bookmatch check --cautions prints it; or a list of them for one reason.
     */
    accept: string | string[];
    /**
     * Who accepts it, by role.
     */
    by: string;
    /**
     * Day of the acceptance.
     */
    on: string;
    /**
     * The reason, as printed.
     */
    why: string;
  }[];
  /**
   * Certificates that owner and builder sign with, so that `verify` knows them.
   */
  signers?: {
    /**
     * For whom it signs.
     */
    role: 'owner' | 'builder';
    /**
     * SHA-256 of the certificate, as `sign` prints it: 64 hexadecimal digits, with or without colons.
     */
    fingerprint: string;
  }[];
  /**
   * Depth of the studs, from which jambs are worked out.
   */
  studs?: {
    /**
     * Walls between rooms.
     */
    inside: string;
    /**
     * Outside walls.
     */
    outside: string;
  };
  /**
   * What every room of a kind must have: a place that lacks it is listed as never chosen.
   */
  slots?: RawSlot[];
  /**
   * A note the builder keeps: printed in no handout.
   */
  private?: string;
}
/**
 * A storey of the house.
 */
export interface RawLevel {
  /**
   * Short name by which rooms refer to the level, such as main.
   */
  id: string;
  /**
   * Name as printed, such as Main level.
   */
  name: string;
}
/**
 * Money the contract sets aside for finishes not yet chosen.
 */
export interface RawAllowance {
  /**
   * Short name by which selections draw on the allowance.
   */
  id: string;
  /**
   * Name as printed.
   */
  name: string;
  /**
   * A lump sum such as $9,800, or a rate such as $6.50 / sq ft for what is measured.
   */
  amount: string;
  /**
   * What the allowance pays for. Contracts differ, so there is no default.
   *
   * @minItems 1
   */
  covers: ('material' | 'freight' | 'tax' | 'labor')[];
  /**
   * Categories whose selections may draw on it.
   *
   * @minItems 1
   */
  categories: string[];
  /**
   * What the contract says beside it.
   */
  note?: string;
}
/**
 * A step of the job: on a fixed day, or working days after another milestone.
 */
export interface RawMilestone {
  /**
   * Short name by which categories and other milestones refer to it.
   */
  id: string;
  /**
   * Name as printed, such as Framing starts.
   */
  name: string;
  /**
   * The day, when it is fixed.
   */
  date?: string;
  /**
   * The milestone it follows.
   */
  after?: string;
  /**
   * Working days after that milestone.
   */
  days?: number;
  /**
   * A remark printed in the calendar.
   */
  note?: string;
}
/**
 * A place that needs something.
 */
export interface RawSlot {
  /**
   * floor, ceiling, sloped-ceiling, walls, outside-walls, base, doors, inside-doors, windows, cased-openings, or a kind of feature.
   */
  at: string;
  /**
   * A layer, a category or what a trade carries; a list means any of them.
   */
  needs: RawSlotNeed | RawSlotNeeds;
  /**
   * Uses of rooms that it speaks of. Absent: all.
   *
   * @minItems 1
   */
  in?: (
    | 'living'
    | 'kitchen'
    | 'dining'
    | 'study'
    | 'bedroom'
    | 'bath'
    | 'powder'
    | 'laundry'
    | 'mudroom'
    | 'hall'
    | 'stair'
    | 'gallery'
    | 'closet'
    | 'pantry'
    | 'entry'
    | 'utility'
    | 'garage'
    | 'porch'
  )[];
  /**
   * Uses of rooms that it leaves out.
   *
   * @minItems 1
   */
  except?: (
    | 'living'
    | 'kitchen'
    | 'dining'
    | 'study'
    | 'bedroom'
    | 'bath'
    | 'powder'
    | 'laundry'
    | 'mudroom'
    | 'hall'
    | 'stair'
    | 'gallery'
    | 'closet'
    | 'pantry'
    | 'entry'
    | 'utility'
    | 'garage'
    | 'porch'
  )[];
}
