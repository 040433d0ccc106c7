import type {
  DrawnCourses,
  DrawnGuard,
  GuardBeyond,
  DrawnPost,
  DrawnRoom,
  KeyLevel,
  KeyRoom,
  SeenFinish,
} from '../core/book/index.js';
import type { IssuePurpose, RoomMeasure, RoomSection, Specification, Swatch } from '../core/model/index.js';
import type { Cell, Ref, Sieved, Status, TradeBlock } from '../sheet/index.js';
import type { MaterialFacts } from '../draw/index.js';
import type { Locale } from '../base/units/index.js';
import type { Cleared } from './cleared.js';
import type { Own, Said } from './own.js';

/** A day, YYYY-MM-DD, of a record. */
export type Day = Sieved;

/** What stands at a place, or is asked for. */
export type HandoutFinish = Extract<Cell<Sieved>, { is: 'finish' }>;

/** One trade's part of the book: all that it needs to quote and build, and nothing of anyone's money. No field of this type
 *  holds money, and no field is a plain string: each is a word of the program (`Own`), has been through the sieve (`Sieved`), is
 *  one of a closed list, or is an id that is never printed (`Ref`). `test/handout/no-money.types.ts` goes through every field.
 *  Plain JSON: lengths in whole nanometres, areas in sq ft, days as YYYY-MM-DD. */
export interface Handout {
  readonly format: 'bookmatch/handout/3';
  readonly cover: HandoutCover;
  readonly card: HandoutCard;
  /** What changed for this trade since the issue before; absent when there is none to compare with. */
  readonly changes?: HandoutChanges;
  readonly scope: {
    readonly in: readonly Sieved[];
    readonly out: readonly Sieved[];
    readonly needsToKnow: readonly Sieved[];
    /** Markdown. */
    readonly notes: Sieved;
  };
  /** The trade's kinds of work, in working order. */
  readonly steps: TradeBlock;
  /** What others leave for the trade. */
  readonly leftForYou: TradeBlock;
  /** What it leaves for others. */
  readonly leftByYou: TradeBlock;
  readonly products: readonly HandoutProduct[];
  /** What the whole house needs of each product. */
  readonly orders: TradeBlock;
  /** What is used up with them. */
  readonly supplies: TradeBlock;
  /** The schedules that the trade's record asks for; those without rows are left out. */
  readonly schedules: readonly TradeBlock[];
  /** In order of work: by the first kind of work in them, then by number. */
  readonly rooms: readonly HandoutRoom[];
  /** The specification by kind of work, in the order of its section numbers. */
  readonly sections: readonly HandoutSection[];
  readonly cautions: readonly HandoutCaution[];
  readonly questions: readonly HandoutQuestion[];
  /** Where the house's rooms lie, for key plans. */
  readonly levels: readonly HandoutLevel[];
  /** Names of all rooms: drawings write the neighbour's name behind an opening. */
  readonly roomNames: readonly { readonly slug: Ref; readonly name: Sieved }[];
}

export interface HandoutCover {
  readonly house: Sieved;
  readonly job: Sieved;
  readonly place: Sieved;
  readonly climateZone?: Sieved;
  readonly units: Locale['units'];
  readonly language?: Ref;
  /** Is the other system's figure printed after the house's own? */
  readonly beside: boolean;
  /** The trade, and its contact by role. */
  readonly trade: { readonly slug: Ref; readonly name: Sieved; readonly contact: Sieved };
  /** The day of the records. */
  readonly on: Day;
  /** Absent: not issued. */
  readonly stamp?: {
    readonly number: number;
    readonly purpose: IssuePurpose;
    readonly date: Day;
    /** SHA-256 of the issue's snapshot, in hexadecimal. */
    readonly digest: Ref;
  };
  /** The parties by role. Ways to reach them only of those whom a trade calls, never the owner's; their names where the house says so. */
  readonly people: readonly HandoutPerson[];
  readonly sections: readonly { readonly number: Sieved; readonly title: Said }[];
  /** Where the current issue is listed, when the house says so. */
  readonly site?: Ref;
}

export interface HandoutPerson {
  readonly role: Sieved;
  readonly name?: Sieved;
  readonly contact?: Sieved;
  readonly phone?: Sieved;
  readonly mail?: Sieved;
}

/** What its foreman asks first, by the day of the records. */
export interface HandoutCard {
  /** Those first whose work comes next; those whose milestones are all past last. */
  readonly rooms: readonly HandoutNext[];
  /** What others must have done, in the same order. */
  readonly first: readonly (HandoutComing & {
    readonly what: Sieved;
    /** Name of the trade that provides it. */
    readonly by: Sieved;
    /** The products of which one must be chosen for it to be needed; none where what needs it is decided. */
    readonly onlyIf: readonly Sieved[];
  })[];
}

export interface HandoutComing {
  /** Name of the milestone, and its day. */
  readonly milestone: Sieved;
  readonly date?: Day;
  /** It is done, or its day is before that of the records. */
  readonly isPast: boolean;
}

export interface HandoutNext extends HandoutComing {
  readonly slug: Ref;
  readonly number: Sieved;
  readonly name: Sieved;
  /** 'Stone facing, Hearth'. */
  readonly work: Own;
}

export interface HandoutChanges {
  readonly since: { readonly number: number; readonly date: Day };
  readonly rooms: readonly { readonly room: Said; readonly lines: readonly HandoutChange[] }[];
  /** Product data that changed: 'Clear fir 1x6', 'grade: select → clear'. */
  readonly products: readonly { readonly name: Sieved; readonly lines: readonly Said[] }[];
}

export interface HandoutChange {
  /** 'Ceiling board, ceiling'. */
  readonly what: Said;
  /** 'Clear pine 1x6 → Clear fir 1x6', 'net 240 → 252 sq ft'. */
  readonly lines: readonly Said[];
}

export interface HandoutProduct {
  /** `<category>/<slug>`: where its data stands. */
  readonly id: Ref;
  /** Its key in the room finish schedule; products that the schedule does not name are called by their names. */
  readonly key?: Sieved;
  readonly category: Sieved;
  readonly section: Sieved;
  readonly name: Sieved;
  /** What an option does not tell yet is absent, of these and below. */
  readonly maker?: Sieved;
  readonly model?: Sieved;
  readonly summary?: Sieved;
  readonly attributes: readonly { readonly label: Sieved; readonly text: Said }[];
  readonly thickness?: Own;
  readonly weight?: Own;
  readonly packs: readonly { readonly part: Sieved; readonly text: Own }[];
  /** `6 weeks`. */
  readonly lead: Own;
  readonly needs: readonly HandoutNeed[];
  readonly rooms: readonly Sieved[];
  /** It with its key, and 'if chosen' where it stands nowhere for certain. */
  readonly finish: HandoutFinish;
  readonly swatch?: Cleared<Swatch>;
  /** What its record tells its sample: sizes, panels, glass, sheen. */
  readonly sample: Cleared<MaterialFacts>;
  /** Markdown, from what the option's body marks for trades. */
  readonly notes: Sieved;
}

export interface HandoutNeed {
  readonly what: Sieved;
  /** Name of the trade that provides it. */
  readonly by: Sieved;
  readonly before: Sieved;
  readonly date?: Day;
}

export interface HandoutRoom {
  readonly slug: Ref;
  readonly number: Sieved;
  readonly name: Sieved;
  readonly level: Sieved;
  /** Markdown, from what the room's body marks for trades. */
  readonly notes: Sieved;
  /** `beside` in the other system, where the house shows it. */
  readonly facts: readonly { readonly label: Own; readonly text: Said; readonly beside?: Own }[];
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
  readonly steps: readonly Sieved[];
  /** Ids of walls that carry this trade's work and are more than a plain rectangle. */
  readonly walls: readonly Sieved[];
  readonly features: readonly Sieved[];
  /** Cuts of the room: absent, those that are chosen for it; none where they show nothing that this trade works at. */
  readonly sections?: Cleared<readonly RoomSection[]>;
  /** Of these, what paper has room for: not a flat ceiling without boards; walls whose faces it works on and that the plan and
   *  the list of openings do not say, with a raked top or with something on them. */
  readonly printed: { readonly ceiling: boolean; readonly sections: boolean; readonly walls: readonly Sieved[] };
  /** Its boards or sheets, with the line to start from. */
  readonly courses: { readonly ceiling?: Cleared<DrawnCourses>; readonly floor?: Cleared<DrawnCourses> };
  /** What it puts on each wall and feature last. */
  readonly finishes: readonly { readonly at: Sieved; readonly label: Sieved }[];
  /** Its guards at open edges. */
  readonly guards: readonly { readonly at: Sieved; readonly guard: Cleared<DrawnGuard> }[];
  /** Posts at the house's open edges, whoever sets them: what is behind them is another trade's. */
  readonly posts: readonly { readonly at: Sieved; readonly along: readonly DrawnPost[] }[];
  /** Guards of other rooms that are seen through its openings, by the opening's mark, whoever sets them. */
  readonly beyond: readonly { readonly at: Sieved; readonly guards: Cleared<readonly GuardBeyond[]> }[];
  /** What a picture of the room shows of its own choices, in working order: what others put there is not in it. */
  readonly seen: readonly Cleared<SeenFinish>[];
  /** Side from which the room's record says that its picture is seen. */
  readonly viewFrom?: NonNullable<DrawnRoom['viewFrom']>;
}

export interface HandoutPlace {
  /** Id of the selection. */
  readonly id: Ref;
  readonly place: Sieved;
  readonly category: Sieved;
  readonly status: Status;
  /** When it is decided, or was to be; empty for what is. */
  readonly when: Own;
  /** What stands here, with 'if chosen' while it is open. */
  readonly finish: HandoutFinish;
  readonly supply: Own;
  readonly note: Sieved;
  /** What it goes on, from the framing out: 'Gypsum board: Five-eighths ceiling (Drywall)'. */
  readonly on: readonly Said[];
  readonly needs: readonly HandoutNeed[];
  /** What this trade provides here for others. */
  readonly leaves: readonly { readonly what: Sieved; readonly for: Sieved; readonly before: Sieved }[];
  readonly quantities: readonly HandoutQuantity[];
  /** What it weighs here, where the option records a weight. */
  readonly weight?: Own;
  /** While open: what is used up with it here. What is decided stands in the list of supplies. */
  readonly supplies: readonly HandoutSupply[];
  /** While open: what else is considered, each with what it would take. */
  readonly considered: readonly Pick<HandoutPlace, 'finish' | 'quantities' | 'needs' | 'weight' | 'supplies'>[];
  /** Ids of cautions. */
  readonly cautions: readonly Ref[];
}

/** 'Metal lath', '237.9 sq ft with 10 % waste'. */
export interface HandoutSupply {
  readonly what: Sieved;
  readonly text: Own;
}

export interface HandoutQuantity {
  readonly part: Sieved;
  /** Of the house, as the figures are. */
  readonly unit: Sieved;
  readonly gross: number;
  readonly net: number;
  /** After the point, with which net and places hold as printed. */
  readonly digits: number;
  /** `2 coats`. */
  readonly factors: readonly Own[];
  readonly wastePercent: number;
  readonly required: number;
  /** How often it is done, such as in coats: that often a part of what is required. */
  readonly times: number;
  /** Figures as printed: they add up to the net. */
  readonly places: readonly {
    readonly name: Sieved;
    readonly gross: number;
    readonly adjustments: readonly { readonly what: Sieved; readonly why: Sieved; readonly amount: number }[];
    readonly net: number;
  }[];
  readonly layout?: HandoutLayout;
}

export interface HandoutLayout {
  readonly lay: 'boards' | 'sheets';
  /** '21 courses; first 4 1/8", last 4 1/8"'. */
  readonly courses: Own;
  /** Which of the two counts, pieces and area, is the order, and which its check. */
  readonly order: Sieved;
  /** What becomes of the pieces. */
  readonly why: Sieved;
  /** How they are cut: '12 of 3'-4" from 8'-0"'. */
  readonly cuts: Own;
  readonly wastePercent: number;
}

export interface HandoutOpening {
  readonly mark: Sieved;
  readonly kind: Own;
  /** 'South wall, 3'-0" from the left'; the wall alone where the trade does not work at the opening. */
  readonly at: Said;
  readonly to: Said;
  /** Width × height, with the sill of a window. */
  readonly size: Own;
  /** 'hinges left seen from 101, swings into 104 Pantry'. */
  readonly action: Own;
  readonly note: Sieved;
}

/** A kind of work, with a section of the specification for each of its products. */
export interface HandoutSection {
  readonly category: Sieved;
  /** How the work is measured, with the source of the rule. */
  readonly measured: { readonly rule: Sieved; readonly source: Sieved };
  /** Markdown, from the body of the category. */
  readonly notes: Sieved;
  readonly products: readonly HandoutSpecification[];
}

export interface HandoutSpecification {
  readonly id: Ref;
  /** Its own section number, else that of its category. */
  readonly number: Sieved;
  /** By key where the finish schedule gives one, else by name. */
  readonly called: Sieved;
  readonly finish: HandoutFinish;
  /** As far as they are told, in the order of `specificationParts`. */
  readonly parts: readonly { readonly part: keyof Specification; readonly title: Own; readonly text: Sieved }[];
  /** Of general, products and execution those that its record does not tell yet. */
  readonly untold: readonly ('general' | 'products' | 'execution')[];
}

export interface HandoutCaution {
  readonly id: Ref;
  readonly title: Sieved;
  readonly room: Sieved;
  readonly place: Sieved;
  readonly seen: Sieved;
  readonly says: Sieved;
  readonly source: Own;
  readonly ask: Sieved;
  readonly accepted: Said;
}

/** Asked once for all the rooms that it is open in. */
export interface HandoutQuestion {
  /** '101 Great room', or the numbers of several. */
  readonly where: Said;
  /** 'Ceiling board, ceiling'. */
  readonly about: Said;
  readonly status: Status;
  /** 'By 4 May 2026', 'Was due 4 May 2026'; empty for what has no day. */
  readonly when: Own;
  /** What is asked. */
  readonly question: Said;
  readonly reason: Sieved;
  readonly options: readonly HandoutFinish[];
}

/** A level for key plans, its words behind the sieve. */
export type HandoutLevel = Omit<Cleared<KeyLevel>, 'rooms'> & {
  readonly rooms: readonly (Omit<Cleared<KeyRoom>, 'slug'> & { readonly slug: Ref })[];
};

/** A room's measures without the places in records that they came from, its words behind the sieve. */
export type HandoutShape = Cleared<RoomMeasure>;
