import { layOver, type Wish } from './lay-over.js';
import type { Held } from './hold-against.js';
import type { Slip, SlipChoice } from './slip.js';

/** What one or several slips want alike at a place, held against a house. */
export interface HeldWish {
  /** Places of the slips among those that were laid, the lowest first. */
  readonly slips: readonly number[];
  readonly held: Held;
}

/** Places at which slips want different things, of which at least one may be taken. */
export interface Difference {
  readonly selection: string;
  /** One for each thing that is wanted. */
  readonly wishes: readonly HeldWish[];
}

/** Slips over each other on a house as it stands. Each place that a slip names is in exactly one of these. */
export interface LaidTogether {
  /** Wanted by two or more, and may be taken. */
  readonly agreed: readonly HeldWish[];
  /** Wanted by one alone, and may be taken. */
  readonly single: readonly HeldWish[];
  readonly differing: readonly Difference[];
  /** Wanted, and chosen already. */
  readonly already: readonly HeldWish[];
  /** What no longer fits the records: each wish by itself where several differ. */
  readonly refused: readonly HeldWish[];
}

/** Lays slips over each other and holds what they want against a house, by a function that says of each choice what becomes of it. Of slips that want the same, made
 *  at different times, the one counts that still fits. */
export function layTogether(slips: readonly Pick<Slip, 'choices'>[], hold: (choice: SlipChoice) => Held): LaidTogether {
  const { alike, single, differing } = layOver(slips);
  const [both, one] = [
    alike.flatMap((wishes) => heldWish(wishes, hold)),
    single.flatMap((wish) => heldWish([wish], hold)),
  ];
  const all = differing.map((wishes) => {
    const [first] = wishes;
    return { selection: first?.choice.selection ?? '', wishes: byWhat(wishes).flatMap((same) => heldWish(same, hold)) };
  });
  const isOpen = ({ wishes }: Difference): boolean => wishes.some(({ held }) => held.is === 'open to it');
  const decided = [...both, ...one, ...all.flatMap((place) => (isOpen(place) ? [] : place.wishes))];
  const being = (is: Held['is'], wishes: readonly HeldWish[]) => wishes.filter(({ held }) => held.is === is);
  return {
    agreed: being('open to it', both),
    single: being('open to it', one),
    differing: all.filter(isOpen),
    already: being('so already', decided),
    refused: being('refused', decided),
  };
}

/** How a difference was settled: by the option that is wanted, `none` or null as in a slip; or the place stays as it stands. */
export type Settled = { readonly now: string | null } | 'as it stands';

/** What slips come to once they are laid together: what nobody contradicts, and of differences what was settled. */
export function togetherChoices(
  { agreed, single, differing }: LaidTogether,
  settled: ReadonlyMap<string, Settled>,
): readonly SlipChoice[] {
  const chosen = differing.flatMap((difference) => wishSettled(difference, settled));
  return [...agreed, ...single, ...chosen].map(({ held }) => held.choice);
}

/** Differences that nobody has settled yet. */
export function unsettled({ differing }: LaidTogether, settled: ReadonlyMap<string, Settled>): readonly Difference[] {
  return differing.filter(
    (one) => settled.get(one.selection) !== 'as it stands' && wishSettled(one, settled).length === 0,
  );
}

/** The wish for which a difference was settled; none where a slip that wanted it was taken away meanwhile. */
function wishSettled({ selection, wishes }: Difference, settled: ReadonlyMap<string, Settled>): readonly HeldWish[] {
  const as = settled.get(selection);
  if (as === undefined || as === 'as it stands') return [];
  return wishes.filter(({ held }) => held.is === 'open to it' && held.choice.now === as.now);
}

function byWhat(wishes: readonly Wish[]): readonly (readonly Wish[])[] {
  return [...new Set(wishes.map(({ choice }) => choice.now))].map((now) =>
    wishes.filter(({ choice }) => choice.now === now),
  );
}

function heldWish(wishes: readonly Wish[], hold: (choice: SlipChoice) => Held): readonly HeldWish[] {
  const all = wishes.map(({ choice }) => hold(choice));
  const held = all.find(({ is }) => is !== 'refused') ?? all[0];
  return held ? [{ slips: wishes.map(({ slip }) => slip), held }] : [];
}
