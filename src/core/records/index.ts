/** The records room. In: a house's files as text. Out: records read, checked and cross-referenced, or every problem with its
 *  place. Absent: the disk (src/store reads it) and any measuring or money. */
export { readRecords, recordReader, type ReadRecords } from './read-records.js';
export type { RecordShelves } from './read-draft.js';
export { largestRecord, readFrontMatter } from './front-matter.js';
export { splice, type Edit } from './splice.js';
export { setKeys, spliceKeys, valueAt, type SetKeys } from './splice-keys.js';
export { appendItem } from './splice-items.js';
export { appendProse } from './append-prose.js';
export { onlyChose } from './only-chose.js';
export { writeChoices, writeOverride, type NewChoice } from './write-choice.js';
export { identityOf, isShared, pathInHouse, photoPath, readNumbered, sharedKinds, slugOfPath } from './record-path.js';
export type { RecordKind } from './record-path.js';
export { slugFor } from '../../base/units/index.js';
export { readChangeOrderRecord } from './read-change-order-record.js';
export { readIssueRecord } from './read-issue-record.js';
export { readSigners, type Signer } from './read-signers.js';
export { likeMarks } from './like-marks.js';
export { onlyTrades, openMark, withoutBuilder, withoutMarks } from './marks.js';
export { localeOfHouse } from './house-locale.js';
export { schemaOf } from './validators.js';
export { notations, patternWords } from './formats.js';
export { typeWords } from './value-words.js';
export type { RawCategory } from './raw/category.js';
export type { RawAllowance, RawHouse, RawMilestone, RawSlot } from './raw/house.js';
export type { RawOption } from './raw/option.js';
export type { RawRoom, RawSelection } from './raw/room.js';
export type { RawTrade } from './raw/trade.js';
export { misclosureOf, type Misclosure } from './walk-closure.js';
