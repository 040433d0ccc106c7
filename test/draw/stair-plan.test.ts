import { expect, it } from 'vitest';
import { drawPlan, printPalette } from '../../src/draw/index.js';
import { dashes, pens } from '../../src/draw/pen.js';
import { base } from './every-drawing.js';
import { measured, size } from './fixtures.js';
import { nodesOf, pathCorners, textsOf } from './reading.js';

/** A flight of risers of 7 1/2" and treads of 10" in a room without a laid floor, up to the north, its foot at y = 2'. */
function plan(risers: number) {
  const rise = `${(risers * 7.5) / 12}'`;
  const stair = { kind: 'stair', id: 'stair', name: 'Stair', x: `4'-0"`, y: `2'-0"`, go: 'north', width: `3'-0"` };
  const measure = measured({
    slug: 'hall',
    shape: size(12, 20),
    ceiling: { form: 'flat', height: 9 * 304_800_000 } as never,
    features: [{ ...stair, rise, risers, going: '10"', rails: 0, handrails: 1 }],
  });
  const { svg, ratio } = drawPlan(measure, { ...base, id: 'plan' });
  /** Inches north of the flight's foot, of lines of one look. */
  const ys = (look: Partial<Record<string, string | number>>): number[][] =>
    nodesOf(svg)
      .filter(
        ({ name, attributes }) =>
          name === 'path' && Object.entries(look).every(([key, value]) => attributes[key] === value),
      )
      .map(({ attributes }) => pathCorners(String(attributes['d'])).map(([, y]) => -(y * ratio) / 72 - 24));
  return {
    words: textsOf(svg).map(({ content }) => content),
    treads: ys({ stroke: printPalette.hair, 'stroke-width': pens.fine }).map(([y = 0]) => Math.round(y)),
    outline: ys({ fill: printPalette.paper, 'stroke-width': pens.fine }).find((all) =>
      all.some((y) => Math.abs(y) < 0.1),
    ),
    arrow: ys({ fill: printPalette.accent })[0],
    hidden: ys({ stroke: printPalette.ink, 'stroke-dasharray': dashes.hidden, 'stroke-width': pens.fine }),
  };
}

it('a flight is broken where the plan is cut, 5 feet up, and goes on in dashes', () => {
  const { words, treads, outline = [], arrow = [], hidden } = plan(16);
  expect(words).toContain('UP 16 R');
  // 60" are 8 risers of 7 1/2": eight treads of 10" are seen, the break leaning over the last.
  expect(Math.max(...treads)).toBeLessThan(86);
  expect(treads.filter((y) => y < 75)).toEqual([10, 20, 30, 40, 50, 60, 70]);
  const top = outline.filter((y) => y > 1);
  // Four corners of the zigzag between the two ends of the line, which leans.
  expect(top).toHaveLength(6);
  expect(top.reduce((sum, y) => sum + y, 0) / 6).toBeCloseTo(80, 0);
  expect(Math.max(...arrow)).toBeLessThan(80);
  // Behind it, to the last tread at 150".
  expect(hidden).toHaveLength(1);
  expect(Math.max(...hidden[0]!)).toBeCloseTo(150, 0);
});

it('a flight that ends under the plane is seen whole', () => {
  const { treads, hidden, arrow = [], words } = plan(7);
  expect(words).toContain('UP 7 R');
  expect(treads).toEqual([10, 20, 30, 40, 50]);
  expect(hidden).toEqual([]);
  expect(Math.max(...arrow)).toBeGreaterThan(55);
});
