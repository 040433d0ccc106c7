import { withLater } from '../../base/units/index.js';
import type { Records, RoomMeasure } from '../model/index.js';
import { makeBuildUps } from './build-up.js';
import { findGaps } from './gaps.js';
import { findIdleInstallers } from './installers.js';
import { makeNames } from './names.js';
import { findUncarriedNeeds } from './needs.js';
import { findOverlaps } from './overlaps.js';
import { findingKinds, type Scope, type ScopeFinding } from './scope.js';
import { findNeverChosen, slotsOfRooms } from './slots.js';
import { findSpots, type Selected } from './spot.js';
import { findRivals } from './rivals.js';

/** Who does each layer of each place, and what nobody or two do. What a kind of finish needs beneath it, what trades carry
 *  and what rooms must have are the records' to say. One pass over selections and places for each question. */
export function findScope(
  records: Records,
  measures: ReadonlyMap<string, RoomMeasure>,
  selections: readonly Selected[],
): Scope {
  const names = makeNames(records.categories, records.trades);
  const spots = findSpots(records.rooms, measures, selections);
  const slots = slotsOfRooms(records, measures, spots);
  const all = [...spots.values()].flatMap((own) => [...own.values()]);
  const findings = [
    ...findGaps(all, names),
    ...findUncarriedNeeds(selections, names),
    ...findRivals(selections, names),
    ...findOverlaps(all, names),
    ...findIdleInstallers(selections, records.house.contract),
    ...findNeverChosen(slots, records.categories, names),
  ];
  return withLater<Pick<Scope, 'findings'>, Pick<Scope, 'buildUps'>>(
    { findings: sortFindings(findings, records) },
    { buildUps: () => makeBuildUps(all, slots, records.house, names) },
  );
}

/** The gravest kind first, and in each the rooms in their order. */
function sortFindings(findings: readonly ScopeFinding[], { rooms }: Records): readonly ScopeFinding[] {
  const order = new Map(rooms.map(({ slug }, index) => [slug, index]));
  const rank = ({ kind, room }: ScopeFinding) => findingKinds.indexOf(kind) * rooms.length + (order.get(room) ?? 0);
  return [...findings].sort((a, b) => rank(a) - rank(b));
}
