import type { Origin, Path } from '../../base/problem/index.js';
import type { Cents, Decimal, IsoDate, Length, Unit, Usage } from '../../base/units/index.js';

/** A finish that can be chosen. A name and a price are enough to consider it; `fact/untold.ts` says what is missing, and what needs it. */
export interface Option {
  readonly slug: string;
  readonly category: string;
  readonly name: string;
  /** Specification section number, where it is another than the category's. */
  readonly section?: string;
  readonly maker?: string;
  readonly model?: string;
  /** One line for a card. */
  readonly summary?: string;
  /** What is bought and priced; simple options have the one part `main`. */
  readonly parts: readonly OptionPart[];
  /** Freight for the house's whole order of this option. */
  readonly freight: Cents;
  readonly quoted?: Quoted;
  /** Working days from order to site; absent: not told yet, which is not 'from stock'. */
  readonly leadDays?: number;
  /** Of these, working days on the road. */
  readonly transitDays?: number;
  /** Milestones, where they are others than the category's. */
  readonly neededAt?: string;
  readonly measuredAfter?: string;
  /** Terms on which the supplier takes it back; `untilDays` are calendar days after it was received. */
  readonly returns?: { readonly untilDays: number; readonly restocking: Decimal };
  /** No longer offered from a day on. */
  readonly withdrawn?: Withdrawn;
  /** Pounds for each unit of the first part. */
  readonly weight?: { readonly pounds: number; readonly per: Unit };
  readonly thickness?: Length;
  /** What the category demands: nominal size, profile, species, R-value … parsed values by name. */
  readonly attributes: Readonly<Record<string, Attribute>>;
  /** Of insulation: its layers from outside in. */
  readonly layers?: readonly InsulationLayer[];
  readonly needs: readonly Need[];
  readonly swatch?: Swatch;
  readonly photo?: OptionPhoto;
  /** Empty where none of it is told yet. */
  readonly specification: Specification;
  readonly care?: string;
  /** What it does not say itself but has from its family or its category. Absent when it says everything itself. */
  readonly shared?: readonly SharedFact[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** A photograph of an option. */
export interface OptionPhoto {
  /** Its name, in `photos/<category>/` of the folder that has the option's record. */
  readonly file: string;
  /** What it shows, in words. */
  readonly shows: string;
  /** Pixels, as it is shown. */
  readonly width: number;
  readonly height: number;
}

/** Something that an option has from its category's record. */
export interface SharedFact {
  /** As it would be written in the option: `lead`, `specification.general`. */
  readonly key: string;
  /** The family that says it; absent: all options of the category have it. */
  readonly family?: string;
  /** Where it is written. */
  readonly path: Path;
  readonly origin: Origin;
}

/** The specification in its parts, each as far as it is told; a record is asked for the first three. */
export interface Specification {
  readonly general?: string;
  readonly products?: string;
  readonly execution?: string;
  readonly submittals?: string;
  readonly 'mock-up'?: string;
  readonly tolerance?: string;
  readonly delivery?: string;
  readonly warranty?: string;
}

/** In the order in which they are read. */
export const specificationParts = [
  'general',
  'submittals',
  'mock-up',
  'delivery',
  'warranty',
  'products',
  'execution',
  'tolerance',
] as const satisfies readonly (keyof Specification)[];

/** One layer of insulation, by the R on its label or by thickness and R for an inch. Framing takes its share from what lies in
 *  the cavity, and nothing from what is continuous outside it. */
export type InsulationLayer = { readonly what: string; readonly where: 'cavity' | 'continuous' } & (
  { readonly r: number; readonly thickness?: Length } | { readonly rPerInch: number; readonly thickness: Length }
);

/** Where a price comes from. */
export interface Quoted {
  readonly on: IsoDate;
  readonly by: string;
  /** Last day that it is good for, where the quotation says one. */
  readonly until?: IsoDate;
}

export interface OptionPart {
  /** `main`, or what the category's convention yields: `flats`, `corners`, `rail`, `post`, `tread`, `riser`. */
  readonly part: string;
  readonly unit: Unit;
  /** Dollars for one unit. */
  readonly material: Decimal;
  /** Absent: installation is not priced yet. */
  readonly labor?: Decimal;
  /** What is sold whole: a bundle that holds 24 sq ft. Absent: sold by the unit, rounded up to a whole unit for `each`. */
  readonly pack?: { readonly name: string; readonly holds: number };
  readonly waste: Decimal;
}

/** An attribute as parsed, with the text that was written. */
export interface Attribute {
  readonly text: string;
  readonly value:
    | { readonly kind: 'text'; readonly text: string }
    | { readonly kind: 'number'; readonly number: number }
    | { readonly kind: 'length'; readonly length: Length }
    | { readonly kind: 'lengths'; readonly lengths: readonly Length[] }
    | { readonly kind: 'yes-no'; readonly yes: boolean };
}

/** Why the maker or supplier no longer offers an option, and the slug of the one that is offered instead. */
export interface Withdrawn {
  readonly on: IsoDate;
  readonly why: string;
  readonly instead?: string;
}

/** Something that must be true, or be there, before the option can be installed. */
export interface Need {
  /** Name by which a trade says that it carries this; without one the trade named in `by` is taken at its word. */
  readonly id?: string;
  readonly what: string;
  /** Trade that provides it. */
  readonly by: string;
  /** Milestone before which it is needed. */
  readonly before: string;
}

export const swatchPatterns = [
  'boards',
  'planks',
  'herringbone',
  'ashlar',
  'ledge',
  'cobble',
  'tile',
  'hex',
  'texture',
  'solid',
  'metal',
  'cable',
  'pickets',
  'glass',
  'batt',
  'foam',
  'layers',
  'panel-door',
  'slab-door',
  'lever',
  'knob',
  'profile',
  'timber',
  'flame',
  'stair',
] as const;

/** Parts of what is made of several materials: of railings, of doors, of stairs. */
export const swatchRoles = ['posts', 'cap', 'infill', 'leaf', 'glass', 'treads', 'risers'] as const;
export type SwatchRole = (typeof swatchRoles)[number];

/** A drawn swatch: a pattern and its colours as `#rrggbb`. */
export interface Swatch {
  readonly pattern: (typeof swatchPatterns)[number];
  readonly colors: readonly string[];
  /** The same colours by the part that has each, where the record says so. */
  readonly roles?: Readonly<Partial<Record<SwatchRole, string>>>;
  /** Real width of one repeat (a board's face, a tile), drawn to scale when given. */
  readonly repeat?: Length;
}

/** Layers of a build-up, from the framing out. */
export const layers = ['framing', 'insulation', 'backing', 'substrate', 'finish', 'edge', 'fixture'] as const;
export type Layer = (typeof layers)[number];

/** Columns of the room finish schedule. */
export const scheduleColumns = ['floor', 'base', 'walls', 'ceiling', 'trim'] as const;
export type ScheduleColumn = (typeof scheduleColumns)[number];

/** A kind of finish, with the conventions of its trade as data. */
export interface Category {
  readonly slug: string;
  readonly name: string;
  readonly trade: string;
  /** Specification section number, such as `09 29 00`. */
  readonly section: string;
  readonly measure: Convention;
  /** What the finish is built into, where its resistance to heat is worked out. */
  readonly assemblies?: readonly Assembly[];
  /** Working order on site: lower comes first. */
  readonly sequence: number;
  /** Milestone at which the product must be on site. */
  readonly neededAt: string;
  /** Milestone after which the product is measured on site and can be ordered. */
  readonly measuredAfter?: string;
  /** Milestones this choice fixes earlier than its own installation, each with the reason in words. */
  readonly fixesEarly: readonly { readonly milestone: string; readonly why: string }[];
  /** What a finish of this kind is in the build-up. */
  readonly layer: Layer;
  /** What must lie beneath it at the same place. Each item lists names, any of which will do: a layer, a category, or the
   *  id of something that a trade carries. */
  readonly needsBeneath?: readonly (readonly string[])[];
  /** Column of the room finish schedule it shows in, if any; `place`: the column of the place that it is on. */
  readonly schedule?: ScheduleColumn | 'place';
  /** Letters of its keys in the room finish schedule; absent: the letter of its column. */
  readonly key?: string;
  readonly attributes: readonly AttributeRule[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** An attribute that options of a category carry. */
export interface AttributeRule {
  readonly name: string;
  readonly label: string;
  readonly kind: 'text' | 'number' | 'length' | 'lengths' | 'yes-no';
  readonly required: boolean;
  readonly choices?: readonly string[];
  /** What a value means, in words: said beside the quantities. `from` is its source. */
  readonly means?: { readonly words: Readonly<Record<string, string>>; readonly from: string };
}

/** How a category is measured. `by` names a convention in src/takeoff/convention. */
export interface Convention {
  readonly by: string;
  /** Which openings are taken off an area. */
  readonly openings:
    { readonly rule: 'all' } | { readonly rule: 'none' } | { readonly rule: 'over'; readonly area: number };
  /** Kinds of features that hide a surface from it; absent: every kind. */
  readonly hiddenBy?: readonly string[];
  /** Where it runs on a wall: at the floor, past openings and what stands there, or under the ceiling. Absent: at the floor. */
  readonly along?: 'floor' | 'ceiling';
  /** `once`: a wall that both its rooms select is counted in the first of them. Absent: in each. */
  readonly betweenRooms?: 'once';
  /** Coats or layers that multiply the area. */
  readonly times: number;
  /** Attribute of the option that says how many instead. */
  readonly timesBy?: string;
  /** Lay the pieces out on the surface as well, cut from the option's `stock` lengths at its `face` coverage. */
  readonly lay?: 'boards' | 'sheets';
  /** Which count of what is laid out is the order, the other its check; absent: area. */
  readonly orderBy?: 'pieces' | 'area';
  /** How the trade counts it beside the measure: boards in lineal and board feet, sheets, gallons. */
  readonly counted?: 'boards' | 'sheets' | 'gallons';
  /** What is used up with it. */
  readonly supplies?: readonly SupplyRule[];
  /** What is said beside the number: the rule in words. */
  readonly words: string;
  /** Source of the rule, or `common practice, no source`. */
  readonly source: string;
}

/** Something used up with a finish: compound with board, grout with tile. It goes with the net quantity of the part that
 *  is measured in the unit of `usage.of`; with `cu ft`, with the joints between the pieces. */
export interface SupplyRule {
  readonly what: string;
  readonly usage: Usage;
  /** A number among the option's attributes that multiplies it, such as coats. */
  readonly timesBy?: string;
  /** Only with options whose attribute says one of these. */
  readonly when: readonly { readonly attribute: string; readonly says: readonly string[] }[];
  /** Attribute whose text goes with the name: the color of the grout. */
  readonly namedBy?: string;
  /** What it goes with where that is not the net quantity. */
  readonly goesWith?: GoesWith;
  readonly pack?: { readonly name: string; readonly holds: number };
  readonly waste: Decimal;
  readonly why?: string;
  readonly source: string;
}

/** Things that are counted beside a net quantity, each with its unit. */
export const goesWithUnits = { 'outside-corners': 'lin ft', pairs: 'each', hinges: 'each' } as const satisfies Readonly<
  Record<string, Unit>
>;
export type GoesWith = keyof typeof goesWithUnits;

/** A wall, ceiling or floor with framing in it, of which the option fills the cavity. The option's attribute `r-value` is
 *  the cavity's. Resistances are in ft²·h·°F/Btu. */
export interface Assembly {
  readonly name: string;
  /** The surfaces of a room that are of this kind. */
  readonly over: 'walls' | 'ceiling' | 'floor';
  readonly framing: {
    readonly what: string;
    /** Share of the area that is framing. */
    readonly share: Decimal;
    readonly rPerInch: number;
    /** Absent: as deep as the insulation, the option's `thickness-in-place`. */
    readonly depth?: Length;
    readonly source: string;
  };
  /** What covers framing and cavity alike, air films among it, from outside in. */
  readonly layers: readonly { readonly what: string; readonly r: number; readonly source: string }[];
}

export interface Trade {
  readonly slug: string;
  readonly name: string;
  readonly contact: string;
  readonly sections: readonly string[];
  readonly needsToKnow: readonly string[];
  readonly scopeIn: readonly string[];
  readonly scopeOut: readonly string[];
  /** What it provides for others, by id. */
  readonly carries?: readonly Carried[];
  /** Schedules that its handout carries, in this order. */
  readonly schedules: readonly ScheduleName[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** Schedules that a trade may ask for: each is a table of `src/table/trade-tables.ts`. */
export type ScheduleName =
  | 'finish'
  | 'finish-keys'
  | 'finish-remarks'
  | 'doors'
  | 'openings'
  | 'hardware'
  | 'railings'
  | 'timbers'
  | 'stone'
  | 'insulation'
  | 'sound-walls'
  | 'paint'
  | 'backing';

/** Something a trade provides, such as blocking for a railing: needs of options and categories name its id. */
export interface Carried {
  readonly id: string;
  readonly what: string;
  readonly layer: Layer;
}
