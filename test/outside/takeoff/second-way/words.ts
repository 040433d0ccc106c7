import fc from 'fast-check';
import type { Takeoff } from '../../../../src/core/takeoff/index.js';

/** A calculator for who ticks a page by its words. */

export const numberIn = (text: string | undefined): number => Number((text ?? '').replaceAll(',', ''));
/** As many digits after the point as are read, half of the last away from nothing; a calculator's own noise left out. */
export const read = (value: number, digits = 1): number => {
  const steps = Math.floor(Number((Math.abs(value) * 10 ** digits).toPrecision(13)) + 1 / 2);
  return (Math.sign(value) * steps) / 10 ** digits + 0;
};

/** In 64ths, so that six digits tell all of each. */
export const areas = fc.integer({ min: 1, max: 190_000 }).map((count) => count / 64);

/** A take-off of such places, in coats and with waste. */
export function takeoff(places: readonly (readonly [string, number])[], times: number, waste: number): Takeoff {
  const net = places.reduce((sum, [, area]) => sum + area, 0);
  return {
    part: 'main',
    unit: 'sq ft',
    places: places.map(([place, area]) => ({ place, name: place, gross: area, adjustments: [], net: area })),
    gross: net,
    net,
    factors: times === 1 ? [] : [{ times, why: '' }],
    waste: { percent: waste * 100, why: '' },
    required: net * times * (1 + waste),
    rule: '',
    source: '',
  };
}
