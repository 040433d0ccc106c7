import type { DatedMilestone } from './decision.js';

export function milestoneOf(milestones: readonly DatedMilestone[], id: string): DatedMilestone {
  const found = milestones.find((milestone) => milestone.id === id);
  if (!found) throw new Error(`milestone '${id}' is not dated; the loader lets no category name an unknown one`);
  return found;
}
