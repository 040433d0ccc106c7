import type { Product } from '../product.js';
import { buildUp } from './build-up.js';
import { finishes } from './finishes.js';
import { masonry } from './masonry.js';
import { openings } from './openings.js';

/** Facts of options by name: everything that rules, schedules, take-off and drawings read from an option's attributes. A
 *  name is written once, in the files beside this one; readers take it by type. */
export const products = { ...openings, ...masonry, ...buildUp, ...finishes } satisfies Readonly<
  Record<string, Product>
>;

export type ProductName = keyof typeof products;
