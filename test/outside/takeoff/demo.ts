import { loadHouse } from '../../../src/disk/load/index.js';
import type { Category } from '../../../src/core/model/index.js';

/** A category of the demo house, as the take-off works with it. */
export async function demoCategory(slug: string): Promise<Category> {
  const { house } = await loadHouse('.');
  const category = house?.records.categories.find((candidate) => candidate.slug === slug);
  if (!category) throw new Error(`the demo house has no category '${slug}', or its records have errors`);
  return category;
}
