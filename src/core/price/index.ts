export * from './cost.js';
export { agreedSteps } from './agreed-steps.js';
export type { AllowanceMove, EffectDifference } from './contract-effects.js';
export { contractSteps, type SelectionStep } from './contract-steps.js';
export { comparedParts, contractEffect, selectionEffect } from './effect.js';
export { changeInWorld, countedOption, priceHouse, type HousePrice } from './house-price.js';
export type { InvoicedOrder, Item, PriceBook, SizedAllowance } from './item.js';
export { makeLedger } from './ledger.js';
export { lotsOf, orderList, type CountOrder } from './order-list.js';
export { reckoningText } from './reason.js';
export { pricePool, type PricedPool, type PricePool } from './pool.js';
export { priceOf, shareOf, shareOut } from './rounding.js';
export { ownerPurchases, worldCost } from './world.js';
export {
  markupOnNet,
  netSteps,
  nettedBy,
  nettedText,
  onNet,
  sumOf,
  takeOff,
  type MarkupRules,
  type OnNet,
} from './markup.js';
export { creditMarkupText, markupOnText, markupText, taxText } from './rule-words.js';
export { taxOn } from './tax.js';
export { mostCombinations, type Range } from './combinations.js';
export type { ChoiceFigure, OpenChoices } from './open-choices.js';
export type { Stand, Together } from './together.js';
