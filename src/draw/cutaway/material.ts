import { feet } from '../../base/units/index.js';
import type { SeenFinish } from '../../core/book/index.js';
import { materialOf, washed, type Material, type MaterialFacts } from '../swatch/index.js';
import type { Look } from './look.js';

/** What is laid on a surface: a coat alone gives its color to the texture under it. */
export function laidOn({ main, under }: Extract<Look, { is: 'finish' }>): Material {
  const [paint] = main.swatch?.colors ?? [];
  const shown = under ?? main;
  return washed(
    materialOf(shown.swatch, { ...factsOf(shown), ...(under && paint !== undefined && { paint }) }, seedOf(shown)),
  );
}

/** The same on the card of its option. */
function seedOf({ category, option = '' }: SeenFinish): string {
  return `${category}/${option}`;
}

function factsOf({ pattern: { size, bond, turn, courses } }: SeenFinish): MaterialFacts {
  const inches = (length: Parameters<typeof feet>[0]): number => feet(length) * 12;
  return {
    ...(size && { size: [inches(size[0]), inches(size[1])] }),
    ...(bond && { bond }),
    ...(turn !== undefined && { turn }),
    ...(courses && { courses: courses.map(inches) }),
  };
}
