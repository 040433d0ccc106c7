import { slugFor } from '../../../core/records/index.js';
import { fromFeet, toRecordStep, writeLength } from '../../../base/units/index.js';
import { quotedText, untaken } from '../name.js';
import type { Taken } from './read-spaces.js';
import type { Space } from './space.js';
import type { Storey } from './storey.js';

/** A level of the house that rooms are drafted on. */
export interface DraftLevel {
  readonly id: string;
  readonly storey: Storey;
  /** In the model, in feet: where most of its rooms' floors lie. */
  readonly floor: number;
  /** Its line under `levels:` in content/house.md. */
  readonly line: string;
  /** The house has it already. */
  readonly isKnown: boolean;
}

/** The storeys that spaces stand on, from the lowest up. A level of the house by the same name is taken for it. */
export function levelsOf(spaces: readonly Space[], taken: Taken): readonly DraftLevel[] {
  const storeys = [...new Map(spaces.map(({ storey }) => [storey.id, storey])).values()];
  const placed = storeys
    .map((storey) => ({
      storey,
      floor: usualFloor(spaces.filter((space) => space.storey.id === storey.id)),
    }))
    .toSorted((a, b) => a.floor - b.floor || a.storey.id - b.storey.id);
  const ids = new Set<string>();
  const lowest = placed[0]?.floor ?? 0;
  return placed.map(({ storey, floor }, index) => {
    const slug = slugFor(storey.name) || `level-${index + 1}`;
    const known = taken.levels.find(({ id, name }) => !ids.has(id) && (id === slug || slugFor(name) === slug));
    const id = untaken(known?.id ?? slug, ids);
    const over = index === 0 ? '' : `, floor: ${writeLength(toRecordStep(fromFeet(floor - lowest)))}`;
    const line = `  - { id: ${id}, name: ${quotedText(storey.name)}${over} }`;
    return { id, storey, floor, line, isKnown: known !== undefined };
  });
}

/** The middle one of the floors' heights. */
function usualFloor(spaces: readonly Space[]): number {
  const heights = spaces.map(({ shape }) => shape.height).toSorted((a, b) => a - b);
  return heights[Math.floor(heights.length / 2)] ?? 0;
}
