import { expect, test } from 'vitest';
import { layOver, type SlipChoice } from '../../src/slip/index.js';

const choice = (selection: string, now: string | null): SlipChoice => ({ selection, was: null, now });

test('slips agree where all who name a place want the same there', () => {
  const floor = [choice('study/floor/floor', 'oak'), choice('study/floor/floor', 'oak')] as const;
  const paint = [choice('study/paint/walls', 'oat'), choice('study/paint/walls', null)] as const;
  const trim = choice('study/base-trim/base', 'none');
  expect(layOver([{ choices: [floor[0], paint[0]] }, { choices: [paint[1], floor[1], trim] }])).toEqual({
    alike: [
      [
        { slip: 0, choice: floor[0] },
        { slip: 1, choice: floor[1] },
      ],
    ],
    single: [{ slip: 1, choice: trim }],
    differing: [
      [
        { slip: 0, choice: paint[0] },
        { slip: 1, choice: paint[1] },
      ],
    ],
  });
});

test('of three slips one that differs is enough', () => {
  const wishes = ['oak', 'oak', 'pine'].map((now) => ({ choices: [choice('study/floor/floor', now)] }));
  const { alike, single, differing } = layOver(wishes);
  expect([alike.length, single.length, differing.length]).toEqual([0, 0, 1]);
});
