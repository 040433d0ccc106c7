import { describe, expect, it } from 'vitest';
import { onPlan } from '../../src/draw/ceiling/on-plan.js';
import { printPitch } from '../../src/base/units/index.js';
import { seamsOf } from '../../src/draw/ceiling/seam.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { ft, measured, size } from './fixtures.js';
import { kitchen } from './odd-rooms.js';
import { bath, gallery, greatRoom } from './rooms.js';

function seams(measure: RoomMeasure): Record<string, number> {
  const found = seamsOf(measure.ceiling.facets);
  const counts: Record<string, number> = {};
  for (const { kind } of found) counts[kind] = (counts[kind] ?? 0) + 1;
  return counts;
}

describe('seams', () => {
  it('of a gable: one ridge', () => expect(seams(greatRoom())).toEqual({ ridge: 1 }));
  it('of a shed: none', () => expect(seams(gallery())).toEqual({}));
  it('of a hip cut flat: four hips, four breaks', () => expect(seams(bath())).toEqual({ hip: 4, break: 4 }));
  it('of a hip over an L: one ridge, and hips where the outline leaves them', () =>
    expect(seams(kitchen())).toMatchObject({ ridge: 1 }));

  it('of two parts at different heights: a step', () => {
    const over = (west: number, east: number): { x: ReturnType<typeof ft>; y: ReturnType<typeof ft> }[] =>
      [
        [west, 0],
        [east, 0],
        [east, 10],
        [west, 10],
      ].map(([x, y]) => ({ x: ft(x!), y: ft(y!) }));
    const measure = measured({
      slug: 'two',
      shape: size(12, 10),
      ceiling: [
        { name: 'Low', form: { form: 'flat', height: ft(8) }, over: over(0, 5), path: [] },
        { name: 'High', form: { form: 'flat', height: ft(10) }, over: over(5, 12), path: [] },
      ],
    });
    expect(seams(measure)).toEqual({ step: 1 });
  });

  it('know the height of the ridge: 9 ft plate, half of 18.5 ft at 8 in 12 is 6 ft 2 in more', () => {
    const measure = greatRoom();
    const [ridge] = seamsOf(measure.ceiling.facets);
    expect(ridge!.heights.map((height) => Math.round(height / 25_400_000))).toEqual([182, 182]);
  });
});

describe('unfolded facets', () => {
  it('go back onto the plan', () => {
    for (const facet of [...greatRoom().ceiling.facets, ...bath().ceiling.facets, ...gallery().ceiling.facets]) {
      facet.shape.outline.forEach((point, index) => {
        const back = onPlan(facet, point);
        const plan = facet.plan.outline[index]!;
        // A nanometre or two of rounding in the unfolding.
        expect(Math.hypot(back.x - plan.x, back.y - plan.y)).toBeLessThan(10);
      });
    }
  });
});

describe('pitch', () => {
  it.each([
    [8 / 12, '8/12'],
    [0.25, '3/12'],
    [0.35, '4.2/12'],
    [1, '12/12'],
  ])('%d is %s', (slope, words) => expect(printPitch(slope)).toBe(words));
});
