/** The tables of the house, one file each, and the sheets that are made of them. In: a Book by its names. Out: tables laid out, for
 *  the house or, where their rows hold no money, for a trade. Absent: markup. */
export { namesOf } from './names-of.js';
export type { Schedule } from './schedule.js';
export { dataFile, dataTables, tableNames } from './files.js';
export { alternativeLines, alternatives, alternativeSection, alternativeSheet } from './alternatives/index.js';
export { foldedSteps, moneySections, moneySheets } from './money/index.js';
export { agreedSections, changeOrderBlocks, changeOrderDetails, changeOrderSheet } from './agreed/index.js';
export { houseSheet, outsideSheet } from './laying/index.js';
export { roomSheet } from './rooms.js';
export {
  boundsHere,
  calendarBlocks,
  criticalWords,
  dayCostWords,
  dayRules,
  lastDaysHere,
  openSinceWords,
  decisionSheet,
  movedDecisions,
  movedMilestones,
} from './calendar/index.js';
export { cautionRules, cautionSheet } from './cautions/index.js';
export { comparisonSections, fieldTable } from './comparison/index.js';
export { conventions } from './conventions.js';
export { findingSheet, scopeSheet } from './scope/index.js';
export { backing, needColumns, needRows, type NeedRow } from './backing.js';
export { optionsAt } from './options-at.js';
export { placesOf, saidOnce } from './places-of.js';
export { sharePlace } from './share-place.js';
export { tradeTables } from './trade-tables.js';
export {
  setsTable,
  stillOpen,
  stillOpenWords,
  whatFollows,
  type Tried,
  type TriedSet,
  type WhatFollows,
} from './tried/index.js';
export { finishSheet } from './finish-sheet.js';
export { openingSheet } from './opening-sheet.js';
export { houseSheets } from './sheets.js';
export { orderSheet, orderTables } from './order-sheet.js';
export { orders } from './orders.js';
export {
  houseStanding,
  housesTable,
  housesTotals,
  mostUrgentFirst,
  type HouseStanding,
  type ListedHouse,
} from './houses/index.js';
export { roomSupplies, supplies } from './supplies.js';
export { quantitiesOfRoom } from './quantities.js';
export { quantitySheet, quantityTables, tradeSheet } from './quantity-sheet.js';
export { fromOtherSide, otherSideWords } from './from-other-side.js';
export { layoutTables, layoutsOnPaper } from './layouts.js';
export { quantityLines } from './takeoff-lines.js';
export { takeoffBlocks } from './takeoff-sheet.js';
export { assemblySteps, takeoffSteps } from './steps.js';
export { wallAsPrinted } from './wall-figures.js';
export { roomCosts } from './room-costs.js';
export { otherSheet } from './other-sheet.js';

export { factWords, standingWords } from './facts.js';
export { choiceText, choiceTitle } from './choice.js';
export { decisionTitle, leftWords, movesWords, pricedWords, rangeWords, wholeRange, restWords } from './decision.js';
export { dueNext, headline, needsALook, summarySheet, type Due, type NeedsALook } from './summary/index.js';
