import type { Caution, CautionSource } from '../caution.js';
import type { HouseView } from '../view.js';
import type { Example } from './example.js';

/** One thing that is worth a second look, as a rule in a file of its own. */
export interface Rule {
  /** Slug, the first part of the ids of its cautions. */
  readonly id: string;
  readonly title: string;
  readonly source: CautionSource;
  /** The figures it looks for, with units, as printed in the register. */
  /** In the units of the house in force. */
  readonly limits: () => readonly { readonly what: string; readonly text: string }[];
  /** Some that it sees and some that it passes over. */
  readonly examples: readonly Example[];
  find(house: HouseView): readonly Finding[];
}

/** What a rule saw at one place. Of one place, a rule's findings become one caution. */
export type Finding = Pick<Caution, 'room' | 'place' | 'placeText' | 'selections' | 'trades' | 'seen' | 'says' | 'ask'>;
