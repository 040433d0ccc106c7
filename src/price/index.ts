export * from './cost.js';
export { contractSteps } from './contract-steps.js';
export { contractEffect, selectionEffect } from './effect.js';
export { changeInWorld, countedOption, priceHouse } from './house-price.js';
export type { HousePrice, SizedAllowance } from './house-price.js';
export type { Item, PriceBook } from './item.js';
export { makeLedger } from './ledger.js';
export { priceOf, shareOf, shareOut } from './rounding.js';
export { costsWith, ownerPurchases, priceWorld, worldCost } from './world.js';
