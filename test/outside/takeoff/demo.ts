import type { Category } from '../../../src/core/model/index.js';
import { demoHouse } from '../../demo-house.js';

/** A category of the demo house, as the take-off works with it. */
export async function demoCategory(slug: string): Promise<Category> {
  const { records } = await demoHouse();
  const category = records.categories.find((candidate) => candidate.slug === slug);
  if (!category) throw new Error(`the demo house has no category '${slug}'`);
  return category;
}
