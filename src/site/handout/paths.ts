import type { HandoutRoom } from '../../handout/index.js';

/** Where things are in a handout's folder. */
export const handoutPaths = {
  start: 'index.html',
  products: 'products.html',
  specification: 'specification.html',
  asBuilt: 'as-built.html',
} as const;

export function roomPath(room: Pick<HandoutRoom, 'slug'>): string {
  return `rooms/${room.slug}.html`;
}

/** Where a product stands: `products.html#P3`. */
export function productPath(key: string): string {
  return `${handoutPaths.products}#${key}`;
}
