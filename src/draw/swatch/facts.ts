import { factOf, patternFacts, thingFacts, type PatternFacts, type Telling } from '../../core/fact/index.js';
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
    ...glossFact(factOf(option, 'paint', 'sheen')),
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

/** Middles of what painters' associations call by these names, by a gloss meter at 60° (ASTM D523), from memory. */
const glosses: Readonly<Record<string, number>> = {
  flat: 0.03,
  matte: 0.05,
  eggshell: 0.17,
  satin: 0.28,
  'semi-gloss': 0.52,
  gloss: 0.78,
};

function glossFact(sheen: string | undefined): Pick<MaterialFacts, 'gloss'> {
  const gloss = sheen === undefined ? undefined : glosses[sheen];
  return gloss === undefined ? {} : { gloss };
}

function inches(length: Length): number {
  return feet(length) * 12;
}
