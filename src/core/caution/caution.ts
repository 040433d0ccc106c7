import type { IsoDate } from '../../base/units/index.js';

/** Something seen in the house that wants a second look before it is built: what is there, what a published source says
 *  of it, and whom to ask. Never a verdict: local code and licensed practice decide. */
export interface Caution {
  /** `<rule>/<room>/<place>`: stable, so that a house can accept it by name. */
  readonly id: string;
  /** Slug of the rule, such as `guard-at-drop`. */
  readonly rule: string;
  readonly title: string;
  readonly room: string;
  /** Id of the place: `ceiling`, a wall's name, an opening's mark, a feature's id. */
  readonly place: string;
  readonly placeText: string;
  /** Ids of the selections it speaks of; none when nothing was selected where something may be needed. */
  readonly selections: readonly string[];
  /** Slugs of the trades that should read it. */
  readonly trades: readonly string[];
  /** What was seen, with its figure: 'The edge drops 10'-6" and no guard is selected.' */
  readonly seen: string;
  /** What the source says, in our words, with its limit. */
  readonly says: string;
  readonly source: CautionSource;
  /** Of a figure from a code: its edition, and which code decides where the house is built. Empty for any other source. */
  readonly locally: string;
  /** Whom to ask. */
  readonly ask: string;
  /** Given when the house's record accepts it, with the reason; it stays in the register. */
  readonly accepted?: { readonly by: string; readonly on: IsoDate; readonly why: string };
}

/** Where a figure is from. */
export interface CautionSource {
  readonly document: string;
  /** Empty for common practice. */
  readonly edition: string;
  readonly section: string;
  /** Do places adopt it as their code, in an edition and with changes of their own? */
  readonly isCode: boolean;
}
