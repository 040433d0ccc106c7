import { measureParts } from '../../model/index.js';
import { feet } from '../../../base/units/index.js';
import { bracketCounts, bracketsAlong } from '../railing/brackets.js';
import { buildRail, postsOf } from '../railing/build.js';
import { infillCounts } from '../railing/infill-counts.js';
import { handrailOf, railOf, runKey } from '../railing/run.js';
import type { PlaceQuantity } from '../takeoff.js';
import type { ConventionRule } from './convention.js';

/** Rail by the run, along the slope where it climbs; a post at both ends of each straight piece and no further apart than the option's
 *  `post-spacing`, one where two runs end together. Beside a stair the handrail on the wall, with its brackets. */
export const railing: ConventionRule = {
  by: 'railing',
  parts: measureParts.railing,
  measures: 'an open edge, a half wall or a stair',
  quantify(place, { option, joints, measure }) {
    const [run, handrail] = [railOf(place), handrailOf(place)];
    if (!run && !handrail) return undefined;
    const { id, name } = place;
    const along = (length: number, why: string | undefined): Pick<PlaceQuantity, 'gross' | 'adjustments' | 'net'> => ({
      gross: length,
      adjustments: [],
      net: length,
      ...(why !== undefined && { why }),
    });
    const brackets = handrail && bracketsAlong(handrail, option, { place: id, name: `${name}, brackets` });
    const rail = run && {
      ...buildRail(run, option, joints.get(runKey(measure.room, run)) ?? []),
      ...(handrail && { handrail: { length: handrail.length, brackets: brackets?.net ?? 0 } }),
    };
    return {
      ...(run &&
        rail && {
          rail: [{ place: id, name, ...along(feet(run.length), run.why), rail }],
          post: [postsOf(rail, option, { place: id, name: `${name}, posts` })],
        }),
      ...(handrail &&
        brackets && {
          handrail: [
            { place: id, name: `${name}, handrail on the wall`, ...along(feet(handrail.length), handrail.why) },
          ],
          bracket: [brackets],
        }),
    };
  },
  counts(quantities, option) {
    const { rail = [], handrail = [], bracket = [] } = quantities;
    return [...infillCounts(rail), ...bracketCounts(handrail, bracket, option)];
  },
};
