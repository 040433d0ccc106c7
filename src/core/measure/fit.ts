import { areaOf, intersect, patchArea, slackAround, subtract, type Patch } from '../../base/geometry/index.js';
import type { Plan } from './plan.js';
import { printArea } from './tape.js';

/** `2 sq ft of the 12 sq ft of void 'Well' lie outside the room`, where that is more than a tape can tell; `what` follows the area.
 *  `reach`: where it may lie outside of the plan. */
export function outsideWords(
  patch: Patch,
  what: string,
  plan: Pick<Plan, 'patch'>,
  reach: readonly Patch[] = [],
): string | undefined {
  const outside = areaOf([plan.patch, ...reach].reduce<readonly Patch[]>(subtract, [patch]));
  if (outside <= slackAround(patch)) return undefined;
  return `${printArea(outside)} of the ${printArea(patchArea(patch))} ${what} lie outside the room`;
}

interface Part {
  readonly name: string;
  readonly patches: readonly Patch[];
}

/** Parts of a floor or a ceiling that lie over earlier ones by more than `slackOf` them, each with words for it. */
export function overlappingParts(
  of: 'floor' | 'ceiling',
  parts: readonly Part[],
  slackOf: (part: Part) => number,
): readonly { readonly index: number; readonly message: string }[] {
  return parts.flatMap((part, index) =>
    parts.slice(0, index).flatMap((earlier) => {
      const shared = areaOf(earlier.patches.flatMap((one) => intersect(part.patches, one)));
      if (shared <= slackOf(part)) return [];
      return [{ index, message: `${of} parts '${earlier.name}' and '${part.name}' overlap by ${printArea(shared)}` }];
    }),
  );
}
