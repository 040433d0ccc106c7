export * from './book.js';
export type * from './book-alternative.js';
export type * from './schedule/index.js';
export { makeBook, type Composing } from './make-book.js';
export { keptWork, type Work } from './kept-work.js';
export { lastMilestone } from './make-decider.js';
export { priceChoices, type PricedChoices } from './price-choices.js';
export { optionId } from './draft.js';
export { optionSlugs } from './option-slugs.js';
export { priceRecords } from './price-drafts.js';
export { handOf, makeSchedules } from './schedule/index.js';
export {
  drawnRoom,
  postsIn,
  type DrawnCourses,
  type DrawnGuard,
  type DrawnPost,
  type DrawnRoom,
} from './drawn-room.js';
export { seenIn, type Instead, type SeenFinish, type SeenRail, type SeenRole } from './seen.js';
export { keyLevels, type KeyLevel, type KeyRoom, type PlanOpening, type PlanWall } from './key-level.js';
export { wallsBetween, type WallBetween } from './walls-between.js';
export { openIn } from './open-in.js';
export { picturedRoom } from './pictured-room.js';
export { lookUp, type LookUp } from './look-up.js';
export { lastIssue } from './last-issue.js';
export { groupBy } from './group-by.js';
export { placeGroup, placeGroups } from './place-group.js';
