import type { Cents, IsoDate, Length } from '../base/units/index.js';

/** Words of a record that have been through the sieve for trades: only `handout/sieve.ts` makes them. */
export type Sieved = string & { readonly sieved: true };

/** An id, a slug or a digest: for links and look-ups, never printed as words. */
export type Ref = string & { readonly ref: true };

export const ref = (id: string): Ref => id as Ref;

/** Where words point. A writer links what it has a page or a label for, and prints the words alone elsewhere. */
export interface Place<Words extends string = string> {
  readonly to:
    | 'allowance'
    | 'alternative'
    | 'caution'
    | 'category'
    | 'change-order'
    | 'choice'
    | 'finding'
    | 'issue'
    | 'key'
    | 'opening'
    | 'option'
    | 'page'
    | 'product'
    | 'record'
    | 'remark'
    | 'room'
    | 'selection'
    | 'set'
    | 'trade';
  readonly id: Words;
  /** Of a record. */
  readonly line?: number;
}

/** How urgent a choice is, or what became of it: each has one word and one sign, on screen, paper and handout alike. */
export type Status = 'open' | 'due-soon' | 'late' | 'chosen' | 'none' | 'ordered' | 'installed';

export type Is<Kind extends string, Holds = object> = { readonly is: Kind } & Readonly<Holds>;

/** A value with its meaning, never formatted. `say.ts` makes the words for people, `raw.ts` the value for machines, `gate.ts`
 *  takes its words through the sieve: a new kind is added here and does not compile until it stands in those three. */
export type Cell<Words extends string = string> =
  /** A dash in a column of figures, blank in one of words, empty in data. */
  | Is<'nothing'>
  /** Names, and sentences of the program or of records. */
  | Is<'words', { text: Words; place?: Place<Words>; tone?: Tone }>
  /** One line of Markdown, as people wrote it. */
  | Is<'prose', { text: Words }>
  /** `101 Great room`, and where its page is. */
  | Is<'room', { number: Words; name: Words; place?: Place<Words> }>
  /** D01, CS1, (H3): in brackets what stands only for now. */
  | Is<'mark', { text: Words; place?: Place<Words>; bracketed?: boolean }>
  | Is<'length', { nm: Length }>
  | Is<'span', { from: Length; to: Length }>
  /** `unit` only where it is in neither the head nor a column beside it. */
  | Is<'amount', { value: number; digits: number; unit?: Words }>
  | Is<'count', { value: number }>
  /** Rise over run. */
  | Is<'pitch', { slope: number }>
  | Is<'percent', { value: number }>
  | Is<'unit', { unit: Words }>
  | Is<'pack', { count: number; name: Words; holds: number; unit: Words }>
  | Is<'pieces', { of: readonly { readonly count: number; readonly length: Length }[] }>
  /** Working days: of a lead time, or what is left. */
  | Is<'days', { working: number }>
  | Is<'day', { day: IsoDate & Words }>
  /** Numbers of rooms in the order of the house; long lists are counted where people read. */
  | Is<'rooms', { numbers: readonly Words[]; all?: boolean }>
  | Is<'finish', Finish<Words>>
  | Is<'status', { status: Status; place?: Place<Words> }>
  /** How a door swings, drawn as in plan. Words beside it say the same. */
  | Is<'swing', { leaves: 'single' | 'pair'; hinge?: 'left' | 'right'; into: 'near' | 'far' | 'unknown' }>
  /** Side by side in a line, parted by a comma or, for marks, by a space. */
  | Is<'list', { of: readonly Cell<Words>[]; parted: ', ' | ' ' | '; ' | ' › ' }>
  /** One under another, each with what it is of, before or after it. */
  | Is<'lines', { of: readonly { readonly at?: Words; readonly after?: Words; readonly cell: Cell<Words> }[] }>;

type Tone = 'plain' | 'quiet' | 'strong';

/** What a selection puts at a place. */
export interface Finish<Words extends string = string> {
  readonly name: Words;
  /** `standard`: nothing is chosen and the contract's standard stands for now. `considered`: one of several. */
  readonly standing: 'chosen' | 'standard' | 'considered' | 'open' | 'none';
  /** Of a choice that is not made. */
  readonly urgency?: 'open' | 'due-soon' | 'late';
  readonly by: 'contractor' | 'owner-furnished';
  /** Its key in the finish schedule. */
  readonly key?: Words;
  /** Keys alone, where the sheet explains them. */
  readonly keyOnly?: boolean;
  readonly place?: Place<Words>;
  readonly selection?: Words;
  /** Its kind, of what is open or none beside others: two that are not decided would not be told apart. */
  readonly kind?: Words;
}

/** Money is the house's affair. `change`: with its sign. */
/** `told`: nothing is an amount, as on a paper to be signed; absent: nothing is a dash. `currency`: its code, where several houses stand in one
 *  table; absent: the house's. */
export type MoneyCell = Is<
  'money',
  { cents: Cents; change?: boolean; strong?: boolean; zero?: 'told'; currency?: string }
>;

/** Who may read is the type of the cells. A trade's cells may stand in the house's sheet, never the reverse: there is no money
 *  among them, and each of their words went through the sieve. Plain unions: a conditional type over an audience would be
 *  invariant, and nothing would fit anything. */
export type TradeCell = Cell<Sieved>;
export type HouseCell = Cell | MoneyCell;

export type Kind = HouseCell['is'];

export const nothing: Is<'nothing'> = { is: 'nothing' };
export const words = (text: string, place?: Place): Cell =>
  text === '' ? nothing : { is: 'words', text, ...(place && { place }) };
export const quiet = (text: string): Cell => (text === '' ? nothing : { is: 'words', text, tone: 'quiet' });
