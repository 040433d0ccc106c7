/** Facts of options: what rules, schedules, take-off and drawings read from attributes by name. In: an option or a category.
 *  Out: values by type. Absent: what a fact means for the house. */
export * from './product.js';
export * from './products/index.js';
export { patternFacts, type PatternFacts, type TileBond } from './pattern.js';
export { thingFacts, type ThingFacts } from './thing.js';
export { jointsIn, trimJoints, type TrimJoint, type TrimJoints } from './trim-joints.js';
export { attributeFor, carries, factOf, isReckoned, unitOfFact, type FactName, type Telling } from './read.js';
export { goneWords, isGone } from './withdrawn.js';
export { makerText, untoldOf, untoldWords, withoutLabor, type AskingCategory, type Untold } from './untold.js';
