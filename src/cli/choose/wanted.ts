import { layOver, type SlipChoice } from '../../slip/index.js';
import type { IsoDate } from '../../base/units/index.js';
import type { ReadSlip } from './read-slips.js';

/** A choice that is to be taken: what is wanted, by whom, chosen when, and by which slip. */
export interface Wanted {
  readonly choice: SlipChoice;
  readonly by: string;
  readonly on: IsoDate;
  /** Of one slip, or of several that want the same; none where it is chosen straight. */
  readonly slips: readonly ReadSlip[];
}

/** What slips want together. */
export interface WantedTogether {
  readonly wanted: readonly Wanted[];
  /** Places for which they want different things. */
  readonly differing: readonly (readonly Wanted[])[];
}

/** Slips laid over each other. What several want alike is wanted once, as the first of them has it. */
export function wantedBy(slips: readonly ReadSlip[]): WantedTogether {
  const { alike, single, differing } = layOver(slips.map(({ slip }) => slip));
  const wish = ({ slip: index, choice }: (typeof single)[number]): readonly Wanted[] => {
    const read = slips[index];
    return read ? [{ choice, by: read.by, on: read.slip.on, slips: [read] }] : [];
  };
  const both = alike.flatMap((wishes): readonly Wanted[] => {
    const all = wishes.flatMap(wish);
    const [first] = all;
    return first ? [{ ...first, slips: all.flatMap((one) => one.slips) }] : [];
  });
  return { wanted: [...both, ...single.flatMap(wish)], differing: differing.map((wishes) => wishes.flatMap(wish)) };
}
