import type { DrawnCourses, DrawnGuard, Stamp } from '../book/index.js';
import type { FeatureMeasure, RoomMeasure, Swatch } from '../model/index.js';
import type { IsoDate, Unit } from '../units/index.js';

/** One trade's part of the book: all that it needs to quote and build, and nothing of anyone's money. No field of this type
 *  holds money, by type: `test/handout/no-money.types.ts` goes through every field. Every prose text has been through the
 *  sieve (`sieve.ts`). Plain JSON: lengths in whole nanometres, areas in sq ft, days as YYYY-MM-DD. */
export interface Handout {
  readonly format: 'bookmatch/handout/1';
  readonly cover: HandoutCover;
  /** What changed for this trade since the issue before; absent when there is none to compare with. */
  readonly changes?: HandoutChanges;
  readonly scope: {
    readonly in: readonly string[];
    readonly out: readonly string[];
    readonly needsToKnow: readonly string[];
    /** Markdown. */
    readonly notes: string;
  };
  /** The trade's kinds of work, in working order. */
  readonly steps: readonly HandoutStep[];
  readonly interfaces: {
    readonly leftForYou: readonly HandoutInterface[];
    readonly leftByYou: readonly HandoutInterface[];
  };
  readonly products: readonly HandoutProduct[];
  /** What the whole house needs of each product. */
  readonly orders: readonly HandoutOrder[];
  readonly supplies: readonly HandoutSupply[];
  /** In order of work: by the first kind of work in them, then by number. */
  readonly rooms: readonly HandoutRoom[];
  /** Specification sections, by number. */
  readonly sections: readonly HandoutSection[];
  readonly cautions: readonly HandoutCaution[];
  readonly questions: readonly HandoutQuestion[];
  /** Names of all rooms by slug: drawings write the neighbour's name behind an opening. */
  readonly roomNames: Readonly<Record<string, string>>;
}

export interface HandoutCover {
  readonly house: string;
  readonly job: string;
  readonly place: string;
  readonly climateZone: string;
  readonly metric: 'none' | 'beside';
  /** The trade, and its contact by role. */
  readonly trade: { readonly slug: string; readonly name: string; readonly contact: string };
  /** The day of the records. */
  readonly on: IsoDate;
  /** Absent: not issued. */
  readonly stamp?: Stamp;
  /** The parties by role. Names and ways to reach them only of those whom a trade calls: never the owner's. */
  readonly people: readonly { readonly role: string; readonly name?: string; readonly contact?: string }[];
  readonly sections: readonly { readonly number: string; readonly title: string }[];
  /** Where the current issue is listed, when the house says so. */
  readonly site?: string;
}

export interface HandoutChanges {
  readonly since: { readonly number: number; readonly date: IsoDate };
  readonly rooms: readonly { readonly room: string; readonly lines: readonly HandoutChange[] }[];
  /** Product data that changed: 'Clear fir 1x6', 'grade: select → clear'. */
  readonly products: readonly { readonly name: string; readonly lines: readonly string[] }[];
}

export interface HandoutChange {
  /** 'Ceiling board, ceiling'. */
  readonly what: string;
  /** 'Clear pine 1x6 → Clear fir 1x6', 'net 240 → 252 sq ft'. */
  readonly lines: readonly string[];
}

export interface HandoutStep {
  readonly category: string;
  readonly section: string;
  /** Milestone at which the product is on site, with its day. */
  readonly milestone: string;
  readonly date?: IsoDate;
  readonly rooms: readonly string[];
  /** Work of others on the same places: 'Gypsum board (Drywall)'. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** What one trade leaves for another. */
export interface HandoutInterface {
  /** The other trade. */
  readonly trade: string;
  readonly items: readonly {
    readonly what: string;
    /** Product that needs it. */
    readonly of: string;
    readonly rooms: readonly string[];
    readonly before: string;
    readonly date?: IsoDate;
  }[];
  /** Kinds of work that stand under or over yours: 'Gypsum board'. */
  readonly work: readonly string[];
}

export interface HandoutProduct {
  /** `P1`: named so in rooms, orders and sections. */
  readonly key: string;
  readonly category: string;
  readonly section: string;
  readonly name: string;
  readonly maker: string;
  readonly model: string;
  readonly summary: string;
  readonly attributes: readonly { readonly label: string; readonly text: string }[];
  readonly thickness?: string;
  readonly weight?: string;
  readonly packs: readonly { readonly part: string; readonly text: string }[];
  /** `6 weeks`. */
  readonly lead: string;
  readonly needs: readonly HandoutNeed[];
  readonly rooms: readonly string[];
  /** Does it stand anywhere for certain, or is it only considered? */
  readonly standing: 'decided' | 'considered';
  readonly swatch: Swatch;
  /** Markdown, from what the option's body marks for trades. */
  readonly notes: string;
}

export interface HandoutNeed {
  readonly what: string;
  /** Name of the trade that provides it. */
  readonly by: string;
  readonly before: string;
  readonly date?: IsoDate;
}

export interface HandoutOrder {
  readonly product: string;
  readonly name: string;
  readonly part: string;
  readonly unit: Unit;
  readonly net: number;
  readonly required: number;
  /** `18 bundles of 24 sq ft`. */
  readonly order: string;
  /** Pieces by stock length where the boards were laid out. */
  readonly stock: string;
  /** As the trade counts it: `54 gal`, `34 sheets 4'-0" × 12'-0"`. */
  readonly counts: string;
  readonly rooms: readonly string[];
  readonly lead: string;
  readonly supply: string;
}

/** What is used up with the trade's products, for the whole house: mud, tape, grout, nails. */
export interface HandoutSupply {
  readonly what: string;
  readonly unit: string;
  readonly net: number;
  readonly required: number;
  /** `12 boxes of 50 lb`. */
  readonly order: string;
  readonly rooms: readonly string[];
}

export interface HandoutRoom {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  readonly level: string;
  /** Markdown, from what the room's body marks for trades. */
  readonly notes: string;
  /** `metric` where the house shows it beside. */
  readonly facts: readonly { readonly label: string; readonly text: string; readonly metric?: string }[];
  /** In working order. */
  readonly places: readonly HandoutPlace[];
  /** Doors and openings that this trade works at, and those in the walls that it works on. */
  readonly openings: readonly HandoutOpening[];
  readonly drawings: HandoutDrawings;
  readonly shape: HandoutShape;
}

/** What this trade needs to see of a room, and what it puts there itself. */
export interface HandoutDrawings {
  readonly ceiling: boolean;
  /** Ids of upright steps of the ceiling. */
  readonly steps: readonly string[];
  /** Ids of walls that carry this trade's work and are more than a plain rectangle. */
  readonly walls: readonly string[];
  readonly features: readonly string[];
  /** Of these, what paper has room for: not a flat ceiling without boards; walls whose faces it works on and that the plan and
   *  the list of openings do not say, with a raked top or with something on them. */
  readonly printed: { readonly ceiling: boolean; readonly walls: readonly string[] };
  /** Its boards or sheets, with the line to start from. */
  readonly courses: { readonly ceiling?: DrawnCourses; readonly floor?: DrawnCourses };
  /** What it puts on each wall and feature last. */
  readonly finishes: readonly { readonly at: string; readonly label: string }[];
  /** Its guards at open edges. */
  readonly guards: readonly { readonly at: string; readonly guard: DrawnGuard }[];
}

export interface HandoutPlace {
  /** Id of the selection. */
  readonly id: string;
  readonly place: string;
  readonly category: string;
  readonly state: 'open' | 'chosen' | 'none' | 'ordered' | 'installed';
  readonly stateText: string;
  /** Key of its product; absent for a deliberate none, or while open without a standard. */
  readonly product?: string;
  readonly finish: string;
  readonly supply: string;
  readonly note: string;
  /** What it goes on, from the framing out: 'Gypsum board: Five-eighths ceiling (Drywall)'. */
  readonly on: readonly string[];
  readonly needs: readonly HandoutNeed[];
  /** What this trade provides here for others. */
  readonly leaves: readonly { readonly what: string; readonly for: string; readonly before: string }[];
  readonly quantities: readonly HandoutQuantity[];
  /** While open: all that is considered, each with what it would take. */
  readonly considered: readonly {
    readonly product: string;
    readonly name: string;
    readonly quantities: readonly HandoutQuantity[];
    readonly needs: readonly HandoutNeed[];
  }[];
  /** Ids of cautions. */
  readonly cautions: readonly string[];
}

export interface HandoutQuantity {
  readonly part: string;
  readonly unit: Unit;
  readonly gross: number;
  readonly net: number;
  /** `2 coats`. */
  readonly factors: readonly string[];
  readonly wastePercent: number;
  readonly required: number;
  readonly places: readonly {
    readonly name: string;
    readonly gross: number;
    readonly adjustments: readonly { readonly what: string; readonly why: string; readonly amount: number }[];
    readonly net: number;
  }[];
  readonly layout?: HandoutLayout;
}

export interface HandoutLayout {
  readonly lay: 'boards' | 'sheets';
  /** '21 courses; first 4 1/8", last 4 1/8"'. */
  readonly courses: string;
  /** To buy: '18 at 12', 24 at 16''. */
  readonly pieces: string;
  /** How they are cut: '12 of 3'-4" from 8'-0"'. */
  readonly cuts: string;
  readonly wastePercent: number;
}

export interface HandoutOpening {
  readonly mark: string;
  readonly kind: string;
  /** 'South wall, 3'-0" from the left'; the wall alone where the trade does not work at the opening. */
  readonly at: string;
  readonly to: string;
  /** Width × height, with the sill of a window. */
  readonly size: string;
  /** 'hinges left seen from 101, swings into 104 Pantry'. */
  readonly action: string;
  readonly note: string;
}

export interface HandoutSection {
  readonly number: string;
  readonly title: string;
  /** How the work is measured, with the source of the rule. */
  readonly measured: readonly { readonly category: string; readonly rule: string; readonly source: string }[];
  /** Markdown, from the bodies of its categories. */
  readonly notes: string;
  /** General, products, execution: equal texts of several products stand once. */
  readonly parts: readonly {
    readonly title: 'General' | 'Products' | 'Execution';
    readonly items: readonly { readonly products: readonly string[]; readonly text: string }[];
  }[];
}

export interface HandoutCaution {
  readonly id: string;
  readonly title: string;
  readonly room: string;
  readonly place: string;
  readonly seen: string;
  readonly says: string;
  readonly source: string;
  readonly ask: string;
  readonly accepted: string;
}

export interface HandoutQuestion {
  readonly room: string;
  readonly place: string;
  readonly category: string;
  /** What is asked. */
  readonly question: string;
  readonly decideBy?: IsoDate;
  readonly reason: string;
  /** Keys and names of what is considered. */
  readonly options: readonly { readonly product: string; readonly name: string }[];
}

/** A room's measures without the prose and the places in records that they came from. */
export type HandoutShape = Omit<RoomMeasure, 'features'> & { readonly features: readonly HandoutFeature[] };
export type HandoutFeature = Omit<FeatureMeasure, 'data'> & { readonly data?: ShapeValue };

/** A feature's own figures, as its kind reads them: lengths in nanometres, marks and names. */
export type ShapeValue =
  null | boolean | number | string | readonly ShapeValue[] | { readonly [name: string]: ShapeValue | undefined };
