/** Trying choices where no records can be read. In: a house packed as JSON, and picks among its options. Out: the whole Book with them, by the same
 *  core; what locks a place; which picks still fit newer records. Runs in a browser as it is. Absent: the page, writing anything down. */
export { packHouse, type HouseToPack, type PackedHouse } from './pack-house.js';
export { unpackHouse, type TriableHouse } from './unpack-house.js';
export { tryPicks, type TryPicks } from './try-picks.js';
export { chosenAt, withPicks, type Pick } from './pick.js';
export { lockOf } from './lock.js';
export { sortPicks, type KeptPick, type SortedPicks } from './sort-picks.js';
export { slipsKey, storeKey, tryFields } from './fields.js';
export { triedOptions, type TriedOption } from './tried-options.js';
