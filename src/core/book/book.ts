import type { BookOption } from './book-option.js';
import type {
  AdoptedCode,
  Allowance,
  Category,
  ChangeOrder,
  CostPart,
  HouseCalendar,
  InsteadOf,
  Issue,
  IssuePurpose,
  LaidHouse,
  Level,
  Net,
  Person,
  Quoted,
  RoomSection,
  RoomUse,
  SelectionFact,
  Source,
  Studs,
  TaxRate,
  Trade,
} from '../model/index.js';
import type { DatedMilestone, Decision } from '../calendar/index.js';
import type { Caution } from '../caution/index.js';
import type { RoomMeasure } from '../measure/index.js';
import type {
  ContractStep,
  Cost,
  LedgerEntry,
  Lot,
  OnNet,
  Order,
  Priced,
  Range,
  ReasonedFigure,
  Reckoning,
} from '../price/index.js';
import type { Scope } from '../scope/index.js';
import type { PlacePart, SupplyOrder, Takeoff } from '../takeoff/index.js';
import type { BookHouseAlternative } from './book-alternative.js';
import type { Schedules } from './schedule/schedule.js';
import type { Cents, CompassBearing, Decimal, IsoDate, Locale } from '../../base/units/index.js';

/** Everything computed for a house on one day; all outputs render this and nothing else. Plain JSON:
 *  lengths in whole nanometres (25 400 000 an inch), areas in sq ft, money in whole cents, days as YYYY-MM-DD. */
export interface Book {
  readonly format: 'bookmatch/book/1';
  /** The day for which states and slack are computed. */
  readonly on: IsoDate;
  readonly house: BookHouse;
  readonly levels: readonly Level[];
  /** Where its rooms stand, as their own tapes tell. */
  readonly laid: LaidHouse;
  readonly trades: readonly BookTrade[];
  readonly categories: readonly BookCategory[];
  readonly options: readonly BookOption[];
  readonly rooms: readonly BookRoom[];
  readonly selections: readonly BookSelection[];
  /** What is open, in decisions: choices whose money moves together are one. By the day they are due. */
  readonly decisions: readonly JointDecision[];
  /** Named sets of choices beside the house as it stands, in order of slug. */
  readonly alternatives: readonly BookHouseAlternative[];
  /** What the whole house buys, pooled by option and part. */
  readonly orders: readonly Order[];
  /** What is used up with the finishes, for the whole house; the finishes' own rates cover it. */
  readonly supplies: readonly SupplyOrder[];
  readonly money: BookMoney;
  readonly calendar: { readonly milestones: readonly DatedMilestone[]; readonly rules: HouseCalendar };
  readonly cautions: readonly Caution[];
  readonly scope: Scope;
  readonly schedules: Schedules;
  readonly issues: readonly BookIssue[];
  readonly changeOrders: readonly BookChangeOrder[];
  /** Each record as written. */
  readonly sources: readonly Source[];
}

export interface BookHouse {
  readonly name: string;
  readonly number: string;
  readonly place: string;
  /** Where the built site stands, https: handouts, and the codes on printed sheets, look there for the current issue. */
  readonly site?: string;
  readonly people: readonly Person[];
  readonly units: Locale['units'];
  readonly beside: boolean;
  readonly currency: string;
  readonly language?: string;
  /** Words of money beside those of all houses, which no handout carries. */
  readonly moneyWords?: readonly string[];
  /** Handouts tell the names of those whom a trade calls, not their roles alone. */
  readonly namesToTrades?: boolean;
  /** Absent where its record names none: insulation is held against no table then. */
  readonly climateZone?: string;
  readonly code?: AdoptedCode;
  readonly studs?: Studs;
  /** Where true north lies, in degrees clockwise from the north that walls are named by; absent where they are the same. */
  readonly north?: number;
  /** Slug of the room whose picture stands on the start page and the cover, where its record names one. */
  readonly picture?: string;
  /** Markdown. */
  readonly body: string;
  readonly source: string;
}

export type BookTrade = Omit<Trade, 'origin'> & { readonly source: string };
export type BookIssue = Omit<Issue, 'origin'> & { readonly source: string };
export type BookChangeOrder = Omit<ChangeOrder, 'origin'> & {
  readonly source: string;
  /** The contract sum as first agreed. */
  readonly contractFirst: Cents;
  /** The contract sum with the change orders approved before this one, and with this one too. */
  readonly contractBefore: Cents;
  readonly contractAfter: Cents;
  /** Working days by which the change orders approved before this one move the end of the job. */
  readonly daysBefore: number;
};
export type BookCategory = Omit<Category, 'origin'> & { readonly source: string };

export type { BookOption };

export interface BookRoom {
  readonly slug: string;
  readonly number: string;
  readonly name: string;
  readonly level: string;
  readonly use: RoomUse;
  readonly body: string;
  readonly measure: RoomMeasure;
  /** Side from which its picture is seen, where its record says so. */
  readonly viewFrom?: CompassBearing;
  /** Cuts through it that are drawn; absent where there are none. */
  readonly sections?: readonly RoomSection[];
  /** Ids of its selections, in working order. */
  readonly selections: readonly string[];
  /** What is used up in it; whole packs are opened for the house, not for a room. */
  readonly supplies?: readonly SupplyOrder[];
  readonly cost: Cost;
  /** Change against the contract that this room's choices make. */
  readonly change: Cents;
  readonly open: number;
  /** How it stands against the last issue that owner and builder signed; absent while nothing is signed. */
  readonly signed?: SignedState;
  readonly source: string;
}

/** What was signed, and whether it is still so. */
export interface SignedState {
  /** Number of the signed issue. */
  readonly issue: number;
  readonly state: 'signed' | 'changed' | 'new';
  /** What changed since, each in a few words; empty unless `changed`. */
  readonly what: readonly string[];
}

export type SelectionState = 'open' | 'chosen' | 'none' | 'ordered' | 'installed';

/** A place that a selection covers, or a part of it. */
export interface SelectionPlace {
  readonly id: string;
  readonly name: string;
  readonly part?: PlacePart;
}

export interface BookSelection {
  /** `<room>/<category>/<first place>`: unique in the house. */
  readonly id: string;
  readonly room: string;
  readonly category: string;
  readonly trade: string;
  /** Places it covers, resolved: `walls` has become each wall. */
  readonly places: readonly SelectionPlace[];
  /** Places as people say them: 'Ceiling', 'North and east walls', 'Doors D01, D02'. */
  readonly placeText: string;
  readonly standard?: string;
  readonly allowance?: string;
  readonly considering: readonly string[];
  /** Option slug; absent while open or for a deliberate none. */
  readonly chosen?: string;
  readonly chosenOn?: IsoDate;
  readonly chosenBy?: string;
  /** Short digest of the choice slip by which it was handed over, such as `4F2A-91C0-77BE`. */
  readonly slip?: string;
  readonly supply: 'contractor' | 'owner-furnished';
  readonly state: SelectionState;
  readonly note?: string;
  /** The option whose figures stand in the totals: the chosen one, else the standard, else none. */
  readonly counted?: string;
  readonly takeoff: readonly Takeoff[];
  /** Its share of the house's cost with the counted option. */
  readonly cost: Cost;
  /** Weight of the counted option in place, in pounds. */
  readonly pounds?: number;
  /** Change of the contract total by this choice; 0 when it is the standard or within an allowance. What others'
   *  choices move in packs that it shares is in `money.sharedPacks`. */
  readonly change: Cents;
  /** How the change comes about, figure by figure; absent at the standard and where an allowance pays for all of it. */
  readonly reckoning?: Reckoning;
  /** Every option that could stand here, the counted one too, in the record's order. */
  readonly alternatives: readonly Alternative[];
  /** Where the other open choices on its allowance stand while its alternatives are priced; absent where there are none. */
  readonly rest?: Rest;
  readonly decision: Decision;
  /** The first of the issues that have it open without a break up to the last one; absent when it is decided, or was not open in
   *  the last. */
  readonly openSince?: { readonly issue: number; readonly date: IsoDate };
  /** What it costs by the contract to decide one working day after the last one: the days by which the job ends later.
   *  Absent when decided, when the job does not end later, and when the contract has no cost of a day. */
  readonly delayCost?: Cents;
  /** What happened after the choice, in order. */
  readonly facts: readonly SelectionFact[];
  /** What stood before a change after release or order. */
  readonly insteadOf?: ChangedOrder;
  readonly signed?: SignedState;
  /** The finish set of the house's record that its room has it from. */
  readonly finishSet?: string;
  readonly source: string;
  /** Its line in its room's record, or in that of the house where it is from a finish set. */
  readonly line: number;
}

/** Where the other open choices on an allowance stand while one of them is priced. */
export interface Rest {
  /** What they move so, while the one is open: total less today's. */
  readonly change: Cents;
  readonly lines: readonly {
    readonly selection: string;
    /** `<category>/<slug>`: the standard, or the middle one by price where there is none; absent where nothing is considered
     *  either, and the place stays open. */
    readonly option?: string;
    readonly isStandard: boolean;
    readonly isConsidered: boolean;
  }[];
}

/** Open choices whose money moves together: what draws on one allowance, or may share an order. */
export interface JointDecision {
  /** Id of the selection that is due first. */
  readonly id: string;
  readonly allowance?: string;
  /** The day by which the first of them is due. */
  readonly by: IsoDate;
  /** By the day they are due, each with what may still be chosen for it. */
  readonly choices: readonly {
    readonly selection: string;
    readonly options: readonly {
      readonly option: string;
      /** The alternative's `againstToday`. */
      readonly change: Cents;
      /** The same over what may be chosen for the others, and with them as they rest; absent where there are none. */
      readonly range?: Range;
    }[];
  }[];
  /** The cheapest and the dearest way to make them all, priced as whole houses: total less today's. */
  readonly low: DecidedWay;
  readonly high: DecidedWay;
  /** `all`: every combination was priced. `ends`: there are too many; each at its cheapest, and each at its dearest. */
  readonly priced: Priced;
}

export interface DecidedWay {
  readonly change: Cents;
  readonly options: readonly PickedOption[];
}

export interface PickedOption {
  readonly selection: string;
  /** `<category>/<slug>`; absent where nothing is considered. */
  readonly option?: string;
}

/** One option for one place, with the exact effect on the house of choosing it. */
export interface Alternative {
  readonly option: string;
  readonly isStandard: boolean;
  readonly isChosen: boolean;
  readonly takeoff: readonly Takeoff[];
  readonly cost: Cost;
  /** What the whole house would buy of it then, with what other places need of the same. */
  readonly lots: readonly Lot[];
  readonly pounds?: number;
  /** House total with it, less house total with the standard (or with the place left out when there is none); both with the
   *  selection's `rest`. */
  readonly againstStandard: Cents;
  /** House total with it, less house total with the place as it stands today. With a `rest`, both are houses in which the
   *  other open choices on the allowance stand at it: what choosing this moves once they are chosen so. */
  readonly againstToday: Cents;
  /** The contract's total with it, and with the selection's `rest`: today's + rest.change + againstToday. */
  readonly houseTotal: Cents;
  /** What is left in the allowance that it draws on; below 0 what is over. */
  readonly left?: {
    /** With it, and what is open on the allowance still open. */
    readonly after: Cents;
    /** With the `rest` besides. */
    readonly withRest: Cents;
  };
  /** Where `againstToday` comes from; the amounts add up to it. */
  readonly effects: readonly ReasonedFigure[];
  readonly decision: Decision;
  /** As in a selection, if it is this one. */
  readonly delayCost?: Cents;
  /** What the supplier keeps of its material here when it is sent back, by the option's terms. */
  readonly restocking?: Cents;
}

/** A choice that was changed after release or order. */
export interface ChangedOrder extends Omit<InsteadOf, 'restocking'> {
  /** What the supplier keeps, and where the figure comes from: as written, or by the option's terms. */
  readonly restocking?: ReasonedFigure;
}

export interface BookMoney {
  readonly tax: readonly TaxRate[];
  readonly markupOn: 'each-line' | 'net';
  readonly overageMarkup: Decimal;
  readonly workMarkup: Decimal;
  readonly fee?: Decimal;
  readonly creditReturns: Decimal;
  readonly creditMarkup: false | 'as-added' | Decimal;
  readonly ownerFurnishedInstall: 'contract' | 'owner';
  readonly rounding: string;
  readonly contingency: Cents;
  /** What one working day costs by which the job ends later. */
  readonly dayCost?: Cents;
  /** From the contract sum to today's total, step by step. */
  readonly steps: readonly ContractStep[];
  /** What choices elsewhere move at places that stand at their standard, because whole packs are shared. */
  readonly sharedPacks: Cents;
  /** Additions less deductions of all choices and allowances, and what mark-up on that net and the fee add to it. */
  readonly netChange: Net;
  readonly onNet: OnNet;
  readonly contractSum: Cents;
  /** What was agreed by change order, and what was not. */
  readonly agreed: AgreedMoney;
  /** Contract sum with every choice made so far. */
  readonly today: Cents;
  /** The same with the cheapest, the likely and the dearest of what is still open. */
  readonly low: Cents;
  readonly expected: Cents;
  readonly high: Cents;
  /** How these come about, choice by choice. */
  readonly forecast: { readonly low: Forecast; readonly expected: Forecast; readonly high: Forecast };
  /** Sums of what choices add and take off beside the allowances. */
  readonly upgrades: Cents;
  readonly credits: Cents;
  readonly net: Cents;
  /** Cost of all counted finishes. */
  readonly finishes: Cost;
  readonly byRoom: readonly Total[];
  readonly byTrade: readonly Total[];
  readonly byCategory: readonly Total[];
  readonly allowances: readonly LedgerEntry[];
  /** How the price of each place on an allowance stands: estimated, quoted, ordered, invoiced. */
  readonly priceStates: readonly PriceStanding[];
  /** Prices that money not yet ordered rests on, those that are past first; and after how many days the house takes one
   *  for old. */
  readonly quotes: readonly Quote[];
  readonly pricesGoodFor?: number;
  /** What the owner buys outside the contract. */
  readonly ownerPurchases: Cents;
}

/** How a price stands on a day: `expired`, past its last day; `old`, past the house's limit and without a last day of its
 *  own; `unquoted`, nobody is named for it. */
export type QuoteState = 'good' | 'expired' | 'old' | 'unquoted';

/** A price that money not yet ordered rests on. */
export interface Quote {
  /** `<category>/<slug>`. */
  readonly option: string;
  readonly state: QuoteState;
  readonly quoted?: Quoted;
  /** Calendar days past its last day or the house's limit; 0 while it is good. */
  readonly past: number;
  /** In today's orders, at places where it is not ordered yet. */
  readonly inOrders: Cents;
  /** At open places where it is considered and not counted: what it would cost there. */
  readonly ifChosen: Cents;
  /** Ids of the selections of both. */
  readonly selections: readonly string[];
}

/** How far the price of a place on an allowance has come: an estimate of ours (or a quotation that is past), a supplier's
 *  quotation, an order, an invoice. */
export type PriceState = 'estimated' | 'quoted' | 'ordered' | 'invoiced';

export interface PriceStanding {
  readonly selection: string;
  readonly state: PriceState;
  /** Last day of the quotation, where it names one. */
  readonly until?: IsoDate;
}

/** The contract as it was changed, from the sum first agreed to today's total. */
export interface AgreedMoney {
  /** The contract sum, each approved change order, the current contract sum, what no change order covers, today's total. */
  readonly steps: readonly ContractStep[];
  readonly changeOrders: Cents;
  /** Contract sum with the approved change orders. */
  readonly current: Cents;
  /** Today's total less the current contract sum. */
  readonly notCovered: Cents;
}

/** One way that what is open may be decided: today + every `alone` + `together` = `total`. */
export interface Forecast {
  readonly total: Cents;
  /** How the options were picked. */
  readonly why: string;
  /** By decision, in the order of the Book's. */
  readonly lines: readonly {
    /** Id of the decision. */
    readonly decision: string;
    readonly options: readonly PickedOption[];
    /** What the decision alone would change of today's total. */
    readonly alone: Cents;
  }[];
  /** What decisions move only together: packs that they share. */
  readonly together: Cents;
}

export interface Total {
  /** Slug of the room, trade or category. */
  readonly of: string;
  readonly cost: Cost;
  readonly change: Cents;
}

export type { Allowance, CostPart };

/** What an issued copy says of itself at the foot of every page. */
export interface Stamp {
  readonly number: number;
  readonly purpose: IssuePurpose;
  readonly date: IsoDate;
  /** SHA-256 of the issue's snapshot, in hexadecimal. */
  readonly digest: string;
  /** What stood in the way, and why it was issued all the same. */
  readonly anyway?: Issue['anyway'];
}
