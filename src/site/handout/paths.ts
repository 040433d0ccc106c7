import { anchorOf } from '../../write/index.js';

/** Where things are in a handout's folder. */
export const handoutPaths = {
  start: 'index.html',
  products: 'products.html',
  schedules: 'schedules.html',
  specification: 'specification.html',
  asBuilt: 'as-built.html',
} as const;

export function roomPath(room: { readonly slug: string }): string {
  return `rooms/${room.slug}.html`;
}

/** Where a product stands: `products.html#product-floor_oak`. */
export function productPath(id: string): string {
  return `${handoutPaths.products}#${productAnchor(id)}`;
}

export const productAnchor = (id: string): string => anchorOf('product', id);
