import type { Option } from '../model/index.js';
import { problemAt, type Problem } from '../../base/problem/index.js';
import { layerMismatches } from '../takeoff/index.js';

/** A warning where an option of insulation claims what its layers do not give. What is worked out goes by the layers. */
export function layerProblems(options: readonly Option[]): readonly Problem[] {
  return options.flatMap((option) =>
    layerMismatches(option).map(({ attribute, typed, given, why }) => {
      const message = `${option.name} says ${typed} for ${attribute}; ${why} is ${given}`;
      const fix =
        'write what its layers give, or list them as they are built: layers: [{ what: …, in: cavity, thickness: …, r-per-inch: … }]';
      const path = ['attributes', ...(attribute in option.attributes ? [attribute] : [])];
      return problemAt(option.origin, path, 'layers-differ', message, { fix, severity: 'warning' });
    }),
  );
}
