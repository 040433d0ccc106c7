import { keptWork, makeBook, type Book } from '../core/book/index.js';
import { keptLayouts } from '../core/takeoff/index.js';
import type { Outcome } from '../base/problem/index.js';
import type { IsoDate } from '../base/units/index.js';
import { picker, type Pick } from './pick.js';
import type { TriableHouse } from './unpack-house.js';

/** The Book of a house with picks, for a day. */
export type TryPicks = (picks: readonly Pick[], on: IsoDate) => Outcome<Book>;

/** Composes whole Books of one house with whatever is picked; nothing is added to another Book's figures. What several of them have in common is
 *  kept while the function lives. */
export function tryPicks({ records, measures, laid, agreedSum }: TriableHouse): TryPicks {
  const [layOut, work, pick] = [keptLayouts(), keptWork(), picker()];
  return (picks, on) => makeBook(pick(records, picks, on), measures, on, { laid, layOut, work, agreedSum });
}
