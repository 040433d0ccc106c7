import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength, printLength, type Length } from '../../src/base/units/index.js';
import { drawPlan, printPalette } from '../../src/draw/index.js';
import { drawDimensions } from '../../src/draw/dimension.js';
import { scalesFrom } from '../../src/draw/scale.js';
import { Sheet } from '../../src/draw/sheet.js';
import { group } from '../../src/base/svg/index.js';
import { base } from './every-drawing.js';
import { textsOf } from './reading.js';
import { greatRoom } from './rooms.js';

/** What is written along a string. */
function written(stops: readonly number[]): readonly string[] {
  const [scale] = scalesFrom(96);
  const sheet = new Sheet(scale!);
  drawDimensions(sheet, { origin: [0, 0], along: [1, 0], outward: [0, -1], stops });
  return textsOf(group({}, sheet.groups())).map(({ content }) => content);
}

const lengthOf = (text: string): number => {
  const { value } = parseLength(text) as { readonly value?: Length };
  if (value === undefined) throw new Error(`'${text}' is not a length`);
  return value;
};

describe('a string of dimensions', () => {
  it('closes: its parts, as written, add up to the whole, as written', () => {
    const parts = fc.array(fc.integer({ min: 1_600_000, max: 4_000_000_000 }), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(fc.integer({ min: -9e9, max: 9e9 }), parts, (start, lengths) => {
        const stops = lengths.reduce((all, length) => [...all, all.at(-1)! + length], [start]);
        const texts = written(stops);
        expect(texts).toHaveLength(lengths.length);
        const sum = texts.reduce((total, text) => total + lengthOf(text), 0);
        expect(printLength(sum as Length)).toBe(printLength((stops.at(-1)! - start) as Length));
      }),
      { numRuns: 300 },
    );
  });

  it('of thirds of an inch closes, where parts rounded one by one would not', () => {
    const third = 25_400_000 / 3;
    // 1/3" is 5/16" to the sixteenth: three of them lack one.
    expect([...written([0, third, 2 * third, 3 * third])].sort()).toEqual(['3/8"', '5/16"', '5/16"']);
  });
});

it('a chimney breast is located along its wall, on the plan', () => {
  const room = greatRoom();
  const breast = room.features.find(({ kind }) => kind === 'chimney-breast')!;
  const [cover] = breast.covers;
  const { svg } = drawPlan(room, { ...base, palette: printPalette, id: 'plan' });
  const texts = textsOf(svg).map(({ content }) => content);
  // Windows of 4' stand 2' and 18' from the left in a wall of 24'.
  const beside = [cover!.from - 6 * 304_800_000, 18 * 304_800_000 - cover!.to].map((gap) => printLength(gap as Length));
  for (const length of [printLength((cover!.to - cover!.from) as Length), ...beside]) expect(texts).toContain(length);
});
