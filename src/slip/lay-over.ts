import type { Slip, SlipChoice } from './slip.js';

/** What one slip wants for a selection, by its place among the slips. */
export interface Wish {
  readonly slip: number;
  readonly choice: SlipChoice;
}

/** Slips over each other, by selection, in the order in which they first name one. */
export interface LaidOver {
  /** Wanted alike by two or more. */
  readonly alike: readonly (readonly Wish[])[];
  /** Wanted by one alone. */
  readonly single: readonly Wish[];
  /** Wanted otherwise by some: nobody but they can say which. */
  readonly differing: readonly (readonly Wish[])[];
}

/** Where slips of one house agree and where they differ. */
export function layOver(slips: readonly Pick<Slip, 'choices'>[]): LaidOver {
  const wishes = new Map<string, Wish[]>();
  for (const [slip, { choices }] of slips.entries())
    for (const choice of choices)
      wishes.set(choice.selection, [...(wishes.get(choice.selection) ?? []), { slip, choice }]);
  const all = [...wishes.values()];
  const several = all.filter(({ length }) => length > 1);
  const isAlike = (own: readonly Wish[]): boolean => own.every(({ choice }) => choice.now === own[0]?.choice.now);
  return {
    alike: several.filter(isAlike),
    single: all.flatMap((own) => (own.length === 1 ? own : [])),
    differing: several.filter((own) => !isAlike(own)),
  };
}
