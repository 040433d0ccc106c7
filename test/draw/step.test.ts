import { expect, test } from 'vitest';
import { drawStep, printPalette } from '../../src/draw/index.js';
import { measured } from '../measure/measured.js';
import { box, flat, size } from '../measure/room-record.js';

test('a step of the ceiling is drawn to scale with its run, its height and where it is', () => {
  const [step] =
    measured({
      shape: size(`10'`, `12'`),
      ceiling: [
        { name: 'Border', form: flat(`9'`), over: box(`0'`, `0'`, `2'`, `12'`) },
        { name: 'Tray', form: flat(`10'-4"`), over: box(`2'`, `0'`, `8'`, `12'`) },
      ],
    }).steps ?? [];
  if (!step) throw new Error('the ceiling has a step');
  const drawing = drawStep(step, { palette: printPalette, id: 'step', number: '101', name: 'Hall' });
  const text = JSON.stringify(drawing);
  for (const words of [
    'Step from border up to tray – 101 Hall',
    `12'-0\\"`,
    `1'-4\\"`,
    `From 9'-0\\" to 10'-4\\" above`,
  ]) {
    expect(text).toContain(words);
  }
});
