import { goneWords } from '../core/fact/index.js';
import { lookUp, type Book } from '../core/book/index.js';
import { whatFollows, type WhatFollows } from '../table/index.js';
import {
  chosenAt,
  sortPicks,
  tryPicks,
  type KeptPick,
  type Pick,
  type SortedPicks,
  type TriableHouse,
} from '../try/index.js';
import { errorsIn, type Outcome, type Problem } from '../base/problem/index.js';
import type { IsoDate } from '../base/units/index.js';
import type { PickStore } from './kept-picks.js';

/** What a page shows of the picks. */
export interface Trying {
  readonly on: IsoDate;
  /** The Book as it stands, for that day. */
  readonly from: Book;
  readonly picks: readonly KeptPick[];
  /** The Book with all picks; the last one that could be made where they do not go together. */
  readonly to: Book;
  readonly follows?: WhatFollows;
  /** Why there is no Book with these picks. */
  readonly problems: readonly Problem[];
  /** Picks of older records, until somebody says what becomes of them. */
  readonly older?: SortedPicks;
}

/** A house whose picks are tried, kept and told to whoever shows them. */
export interface Trial {
  readonly house: TriableHouse;
  readonly now: () => Trying;
  /** Picks an option at a place; what stands there is no pick. */
  readonly pick: (selection: string, option: string | null) => void;
  /** Picks several at once; what is locked stays, and so does what is picked elsewhere. */
  readonly pickSet: (picks: readonly Pick[]) => void;
  /** Tries these and nothing else; what is locked stays. */
  readonly take: (picks: readonly Pick[]) => void;
  /** The whole Book with any picks, for the day that is computed for. */
  readonly bookWith: (picks: readonly Pick[]) => Outcome<Book>;
  readonly computeFor: (day: IsoDate) => void;
  readonly clear: () => void;
  /** Takes up picks of older records that still fit, or forgets them. */
  readonly takeUpOlder: () => void;
  readonly forgetOlder: () => void;
  /** Reads again what is kept: another page of the book may have picked. */
  readonly refresh: () => void;
}

export function startTrial(house: TriableHouse, store: PickStore, show: (trying: Trying) => void): Trial {
  const compose = tryPicks(house);
  let on = house.on;
  let picks: readonly KeptPick[] = [];
  let older: SortedPicks | undefined;
  let trying: Trying;

  const standing = (): Book => {
    const made = compose([], on);
    if (!made.value) throw new Error(made.problems.map(({ message }) => message).join('; '));
    return made.value;
  };
  const compute = (before?: Trying): Trying => {
    const from = before?.on === on ? before.from : standing();
    const base = { on, from, picks, ...(older && { older }) };
    if (picks.length === 0) return { ...base, to: from, problems: [] };
    const made = compose(
      picks.map(({ selection, now }) => ({ selection, option: now })),
      on,
    );
    if (!made.value) return { ...base, to: from, problems: errorsIn(made.problems) };
    const selections = picks.map(({ selection }) => selection);
    const follows = whatFollows({ from, to: made.value, selections, signedRooms: house.signedRooms });
    return { ...base, to: made.value, follows, problems: [] };
  };
  const changed = (): void => {
    trying = compute(trying);
    show(trying);
  };
  const keep = (): void => {
    const isPlain = picks.length === 0 && on === house.on;
    store.write(isPlain ? undefined : { snapshot: house.snapshot, picks, ...(on !== house.on && { on }) });
  };
  const set = (next: readonly KeptPick[]): void => {
    picks = next;
    keep();
    changed();
  };
  const read = (): void => {
    const kept = store.read();
    const isNow = kept?.snapshot === house.snapshot;
    on = (isNow ? kept.on : undefined) ?? house.on;
    const sorted = sortPicks(kept?.picks ?? [], standing(), house.locks);
    // What was picked from other records is nobody's choice until it was looked at again.
    older = !isNow && sorted.fit.length + sorted.unfit.length > 0 ? sorted : undefined;
    picks = isNow ? sorted.fit : [];
  };
  const withPick = (before: readonly KeptPick[], selection: string, option: string | null): readonly KeptPick[] => {
    const place = lookUp(trying.from).selection(selection);
    if (!place || house.locks[selection] !== undefined) return before;
    if (goneWords(lookUp(trying.from).option(place.category, option ?? '') ?? {}, on) !== undefined) return before;
    const was = chosenAt(place);
    const at = before.findIndex((pick) => pick.selection === selection);
    const one: KeptPick = { selection, was, now: option };
    if (option === was) return before.filter((pick) => pick.selection !== selection);
    return at < 0 ? [...before, one] : before.with(at, one);
  };
  const withAll = (before: readonly KeptPick[], made: readonly Pick[]): readonly KeptPick[] =>
    made.reduce((all, { selection, option }) => withPick(all, selection, option), before);

  read();
  trying = compute();
  return {
    house,
    now: () => trying,
    pick: (selection, option) => set(withPick(picks, selection, option)),
    pickSet: (made) => set(withAll(picks, made)),
    take: (made) => set(withAll([], made)),
    bookWith: (made) => compose(made, on),
    computeFor: (day) => {
      on = day;
      keep();
      changed();
    },
    clear: () => set([]),
    takeUpOlder: () => {
      const fit = older?.fit ?? [];
      older = undefined;
      set([...picks.filter((pick) => !fit.some(({ selection }) => selection === pick.selection)), ...fit]);
    },
    forgetOlder: () => {
      older = undefined;
      set(picks);
    },
    refresh: () => {
      read();
      changed();
    },
  };
}
