export * from './cost.js';
export { agreedSteps } from './agreed-steps.js';
export type { AllowanceMove, EffectDifference } from './contract-effects.js';
export { contractSteps } from './contract-steps.js';
export type { SelectionStep } from './contract-steps.js';
export { allowanceEffect, comparedParts, contractEffect, selectionEffect } from './effect.js';
export {
  markupOnNet,
  markupRate,
  netMarkupText,
  nettedBy,
  nettedText,
  netSteps,
  onNet,
  sumOf,
  takeOff,
} from './markup.js';
export type { ChangeKind, MarkupRules, NetStep, OnNet } from './markup.js';
export { changeInWorld, countedOption, priceHouse } from './house-price.js';
export type { HousePrice } from './house-price.js';
export type { Item, PriceBook, SizedAllowance } from './item.js';
export { makeLedger } from './ledger.js';
export { lotsOf, orderList } from './order-list.js';
export type { CountOrder } from './order-list.js';
export { effectText, partsText, reckoningText } from './reason.js';
export { creditMarkupText, markupOnText, markupText, taxText } from './rule-words.js';
export { priceOf, shareOf, shareOut, sumOfShares } from './rounding.js';
export { invoicesByOrder, isInvoiced } from './invoiced.js';
export type { OrderInvoices } from './invoiced.js';
export { baseOf, taxOn } from './tax.js';
export { computedCosts, costsWith, ownerPurchases, priceWorld, swapIn, worldCost } from './world.js';
export type { Swap, World } from './world.js';
