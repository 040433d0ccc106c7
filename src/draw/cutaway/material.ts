import type { SeenFinish } from '../../core/book/index.js';
import { materialOf, patternInInches, washed, type Material } from '../swatch/index.js';
import type { Look } from './look.js';

/** Made once for each swatch, and for each color on it: a room has few materials and many facets. */
const kept = new WeakMap<object, Map<string, Material>>();

/** What is laid on a surface: a coat alone gives its color to the texture under it. */
export function laidOn({ main, under }: Extract<Look, { is: 'finish' }>): Material {
  const shown = under ?? main;
  const [paint = ''] = (under && main.swatch?.colors) ?? [];
  if (!shown.swatch) return makeMaterial(shown, paint);
  const materials = kept.get(shown.swatch) ?? new Map<string, Material>();
  kept.set(shown.swatch, materials);
  const material = materials.get(paint) ?? makeMaterial(shown, paint);
  materials.set(paint, material);
  return material;
}

function makeMaterial(shown: SeenFinish, paint: string): Material {
  return washed(
    materialOf(shown.swatch, { ...patternInInches(shown.pattern), ...(paint !== '' && { paint }) }, seedOf(shown)),
  );
}

/** The same on the card of its option. */
function seedOf({ category, option = '' }: SeenFinish): string {
  return `${category}/${option}`;
}
