import type { Origin, Path } from '../../base/problem/index.js';
import type { Cents, Decimal, IsoDate, Length, Locale, Unit } from '../../base/units/index.js';
import type { RoomUse } from './room.js';

export interface House {
  readonly name: string;
  /** The builder's job number. */
  readonly number: string;
  readonly place: string;
  /** Where the built site stands, https: handouts, and the codes on printed sheets, look there for the current issue. */
  readonly site?: string;
  /** Folders of records in common with other houses, by their way from the house folder. */
  readonly shared: readonly string[];
  readonly people: readonly Person[];
  readonly units: Locale['units'];
  /** Print the other system's figure after the house's own. */
  readonly beside: boolean;
  readonly currency: string;
  readonly language?: string;
  /** Words of money beside those of all houses. */
  readonly moneyWords?: readonly string[];
  /** Handouts tell the names of those whom a trade calls, not their roles alone. */
  readonly namesToTrades?: boolean;
  /** Absent where its record names none: insulation is held against no table then. */
  readonly climateZone?: string;
  /** The code that is adopted where it is built. */
  readonly code?: AdoptedCode;
  readonly contract: Contract;
  /** Calendar days for which a quoted price is taken for good, where the quotation names no last day. */
  readonly pricesGoodFor?: number;
  readonly levels: readonly Level[];
  readonly allowances: readonly Allowance[];
  readonly calendar: HouseCalendar;
  readonly milestones: readonly Milestone[];
  readonly acceptances: readonly Acceptance[];
  /** Depth of the studs, from which jambs are worked out. */
  readonly studs?: Studs;
  readonly wallTypes?: readonly WallType[];
  /** Of true north, in degrees clockwise from the north that walls are named by. */
  readonly north?: number;
  /** Slug of the room whose picture stands for the house. */
  readonly picture?: string;
  /** What every room of a kind must have. */
  readonly slots?: readonly Slot[];
  /** Places that are to have the same option. */
  readonly matches: readonly Match[];
  /** Markdown. */
  readonly body: string;
  readonly origin: Origin;
}

/** A building code as a place has adopted it: what decides, whatever edition a rule's figure is from. */
export interface AdoptedCode {
  readonly name: string;
  readonly edition: string;
  /** Who adopted it; its building office is asked. */
  readonly by: string;
}

export interface Person {
  /** Role, such as `owner`, `builder`, `architect`. */
  readonly role: string;
  /** By-role name: 'The owners', 'Site lead'. */
  readonly name: string;
  readonly contact?: string;
  /** Digits with what parts them, as people write it: `555-0142`. */
  readonly phone?: string;
  readonly mail?: string;
}

/** What a cost is made of; every allowance says which of these it covers. */
export const costParts = ['material', 'freight', 'tax', 'labor'] as const;
export type CostPart = (typeof costParts)[number];

export interface Contract {
  readonly sum: Cents;
  readonly date: IsoDate;
  /** The rates of every authority that charges one. */
  readonly tax: readonly TaxRate[];
  /** Is mark-up figured on every addition by itself, or on the additions less the deductions of a change order? */
  readonly markupOn: 'each-line' | 'net';
  /** Mark-up on what goes over an allowance, and on work that is added beside the allowances. */
  readonly overageMarkup: Decimal;
  readonly workMarkup: Decimal;
  /** The contractor's fee, a share of what changes in cost, added and returned alike. */
  readonly fee?: Decimal;
  /** Share of an underrun that returns to the owner. */
  readonly creditReturns: Decimal;
  /** Mark-up that returns with it: none, as much as would have been added, or a rate of its own. */
  readonly creditMarkup: false | 'as-added' | Decimal;
  readonly contingency: Cents;
  /** What one working day costs by which the job ends later. */
  readonly dayCost?: Cents;
  /** Who pays the installation of what the owner furnishes. */
  readonly ownerFurnishedInstall: 'contract' | 'owner';
  /** How tenths of a cent round. The only rule so far is half-up, once a line. */
  readonly rounding: 'half-up';
}

/** A sales tax and what of a cost it is charged on. */
export interface TaxRate {
  /** Who charges it; absent where there is only one. */
  readonly authority?: string;
  readonly rate: Decimal;
  readonly on: readonly ('material' | 'freight' | 'labor')[];
}

/** Depth of the studs in walls between rooms and in outside walls. */
export interface Studs {
  readonly inside: Length;
  readonly outside: Length;
}

/** A kind of wall. */
export interface WallType {
  readonly id: string;
  readonly name: string;
  /** From finished face to finished face; of an outside wall, from the finished face inside to the outside of its framing. */
  readonly thickness: Length;
  /** Where it stands when a wall's record names no type. */
  readonly usualFor?: 'inside' | 'outside';
}

/** Words of a slot for the places of a room; a kind of feature is a word too. */
export const slotPlaces = [
  'floor',
  'ceiling',
  /** A ceiling with a slope: it lies under a roof. */
  'sloped-ceiling',
  /** What of a ceiling lies under the roof. */
  'roof-ceiling',
  'walls',
  /** What of walls stands outside. */
  'outside-walls',
  'base',
  'doors',
  /** Doors to another room that is heated, in the room that records them. */
  'inside-doors',
  'windows',
  'cased-openings',
] as const;

/** A place that needs something: one of `needs`, each a layer, a category or the id of what a trade carries. */
export interface Slot {
  readonly at: string;
  readonly needs: readonly string[];
  /** Uses of rooms that it speaks of; absent: all. */
  readonly in?: readonly RoomUse[];
  readonly except?: readonly RoomUse[];
}

/** Places of one category that are to have the same option. */
export interface Match {
  readonly name: string;
  readonly category: string;
  /** Without a place: all selections of the category in the room. */
  readonly places: readonly { readonly room: string; readonly place?: string }[];
  readonly why: string;
}

export interface Level {
  readonly id: string;
  readonly name: string;
  /** Of its floor over the ground outside; negative below it. */
  readonly aboveGround?: Length;
  /** Of its floor over the lowest level's, where that does not tell it. */
  readonly floor?: Length;
}

export interface Allowance {
  readonly id: string;
  readonly name: string;
  /** A lump sum, or a rate for each unit measured where the allowance is used. */
  readonly amount:
    { readonly by: 'lump'; readonly sum: Cents } | { readonly by: 'unit'; readonly rate: Decimal; readonly unit: Unit };
  readonly covers: readonly CostPart[];
  /** Categories that may draw on it. */
  readonly categories: readonly string[];
  readonly note?: string;
  /** As they came. */
  readonly invoices?: readonly Invoice[];
}

/** What a supplier or an installer asks for an order on an allowance, in what the allowance covers. */
export interface Invoice {
  /** Id of the option that was ordered, `<category>/<slug>`. */
  readonly option: string;
  readonly number: string;
  readonly on: IsoDate;
  readonly amount: Cents;
  /** Who holds it, by role. */
  readonly heldBy: string;
  /** Is it the last for its order? Then they count together. */
  readonly last: boolean;
}

export type Weekday = 'monday' | 'tuesday' | 'wednesday' | 'thursday' | 'friday' | 'saturday' | 'sunday';

export interface HouseCalendar {
  readonly weekend: readonly Weekday[];
  readonly holidays: 'us-federal' | 'none';
  readonly closed: readonly { readonly from: IsoDate; readonly to: IsoDate; readonly why: string }[];
  /** Working days the builder needs between a decision and acting on it. */
  readonly reviewDays: number;
}

export interface Milestone {
  readonly id: string;
  readonly name: string;
  readonly when:
    | { readonly by: 'date'; readonly date: IsoDate }
    /** `days` working days after the milestone `after`. */
    | { readonly by: 'after'; readonly after: string; readonly days: number };
  /** The day it was reached. Nothing moves it any more. */
  readonly doneOn?: IsoDate;
  readonly note?: string;
}

/** A caution that somebody accepts, with the reason. It stays in the register. */
export interface Acceptance {
  /** Id of the caution. */
  readonly caution: string;
  readonly by: string;
  readonly on: IsoDate;
  readonly why: string;
  /** Where the id stands in the record. */
  readonly path: Path;
}
