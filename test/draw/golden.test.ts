import { describe, expect, it } from 'vitest';
import { drawCeilingPlan, drawPlan, drawSwatch, printPalette } from '../../src/draw/index.js';
import { svgText, type SvgNode } from '../../src/base/svg/index.js';
import { chapel } from './shaped-rooms.js';
import { closet, neighbours } from './rooms.js';
import { drawWalls } from './walls.js';

const base = { number: '110', name: 'Coat closet', palette: printPalette, neighbours };

/** One element a line, so that a change shows where it is. */
function lines(svg: SvgNode): string {
  return `${svgText(svg).replace(/></g, '>\n<')}\n`;
}

describe('small drawings, reviewed by eye', () => {
  it('plan of a closet', async () => {
    await expect(lines(drawPlan(closet(), { ...base, id: 'plan' }).svg)).toMatchFileSnapshot('golden/closet-plan.svg');
  });

  it('elevation of its door wall', async () => {
    const south = drawWalls(closet(), { ...base, id: 'wall' }).find(({ id }) => id === 'wall-south');
    await expect(lines(south!.svg)).toMatchFileSnapshot('golden/closet-south.svg');
  });

  it('its ceiling', async () => {
    await expect(lines(drawCeilingPlan(closet(), { ...base, id: 'ceiling' }).svg)).toMatchFileSnapshot(
      'golden/closet-ceiling.svg',
    );
  });

  it('openings that are no rectangles', async () => {
    const north = drawWalls(chapel(), { ...base, id: 'wall' }).find(({ id }) => id === 'wall-north');
    await expect(lines(north!.svg)).toMatchFileSnapshot('golden/chapel-north.svg');
  });

  it('a ceiling with a skylight', async () => {
    await expect(lines(drawCeilingPlan(chapel(), { ...base, id: 'ceiling' }).svg)).toMatchFileSnapshot(
      'golden/chapel-ceiling.svg',
    );
  });

  it('a swatch of knobs', async () => {
    const svg = drawSwatch(
      { pattern: 'knob', colors: ['#b79b62'] },
      { width: 96, height: 60, seed: 'knob', title: 'Brass knob' },
    );
    await expect(lines(svg)).toMatchFileSnapshot('golden/knob.svg');
  });
});
