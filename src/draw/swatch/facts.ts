import { patternFacts, thingFacts, type PatternFacts, type Telling } from '../../core/fact/index.js';
import { feet, type Length } from '../../base/units/index.js';
import type { MaterialFacts } from './stuff.js';

/** What a record tells of a material's pattern, in inches. */
export function patternInInches({ size, bond, turn, courses }: PatternFacts): MaterialFacts {
  return {
    ...(size && { size: [inches(size[0]), inches(size[1])] }),
    ...(bond && { bond }),
    ...(turn !== undefined && { turn }),
    ...(courses && { courses: courses.map(inches) }),
  };
}

/** All that an option's record tells its sample, in inches. */
export function sampleFacts(option: Telling): MaterialFacts {
  const { face, through, opening, nominal, ...thing } = thingFacts(option);
  return {
    ...patternInInches(patternFacts(option)),
    thing: {
      ...thing,
      ...(face !== undefined && { face: inches(face) }),
      ...(through !== undefined && { through: inches(through) }),
      ...(opening && { opening: [inches(opening[0]), inches(opening[1])] }),
      // Dressed timber is half an inch less than it is called. Common practice, no source.
      ...(nominal && { section: [nominal[0] - 0.5, nominal[1] - 0.5] }),
    },
  };
}

function inches(length: Length): number {
  return feet(length) * 12;
}
