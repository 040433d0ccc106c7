import { printLength } from '../../base/units/index.js';
import type { OpeningForm } from './shape.js';

/** `round`, `arched, rise 8"`, `arched, radius 3'-0"`, `raked, 5'-0" at the left`; nothing for a rectangle. */
export function shapeWords({ shape }: Pick<OpeningForm, 'shape'>): string | undefined {
  switch (shape?.is) {
    case undefined:
      return undefined;
    case 'round':
      return 'round';
    case 'arch':
      return 'rise' in shape
        ? `arched, rise ${printLength(shape.rise)}`
        : `arched, radius ${printLength(shape.radius)}`;
    case 'rake':
      return `raked, ${printLength(shape.to)} at the ${shape.low}`;
  }
}
