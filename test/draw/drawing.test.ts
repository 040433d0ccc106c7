import { describe, expect, it } from 'vitest';
import { drawCeilingPlan, drawPlan, printPalette, screenPalette } from '../../src/draw/index.js';
import { planSpan } from '../../src/draw/plan/span.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { svgText } from '../../src/base/svg/index.js';
import type { Length } from '../../src/base/units/index.js';
import { base, everyDrawing } from './every-drawing.js';
import { ft } from './fixtures.js';
import { rooms } from './rooms.js';
import { drawWalls } from './walls.js';
import { collisions, misplacedSizes, nodesOf, outside, struckThrough, textsOf, unfinite } from './reading.js';

function topOf({ top }: RoomMeasure['walls'][number]): number {
  return Math.max(...top.map(({ height }) => height));
}

describe.each(Object.entries(rooms))('drawings of the %s', (name, room) => {
  const drawings = everyDrawing(room(), name);

  it.each(drawings.map((drawing) => [drawing.id, drawing] as const))(
    '%s keeps its text apart and inside',
    (_, { svg }) => {
      expect(collisions(svg)).toEqual([]);
      expect(struckThrough(svg)).toEqual([]);
      expect(outside(svg)).toEqual([]);
      expect(unfinite(svg)).toEqual([]);
    },
  );

  it.each(drawings.map((drawing) => [drawing.id, drawing] as const))(
    '%s is to scale on a page and legible',
    (_, { svg, scale, width, height, title, description }) => {
      expect(scale).toMatch(/^(1|3\/4|1\/2|3\/8|1\/4|3\/16|1\/8)" = 1'-0"$/);
      expect(width).toBeLessThanOrEqual(7);
      expect(height).toBeLessThanOrEqual(7);
      // The view box is in points: 72 for an inch of paper.
      expect(svg.attributes['width']).toBe(`${Math.round(width * 1000) / 1000}in`);
      expect(String(svg.attributes['viewBox']).split(' ')[2]).toBe(String(Math.round(width * 72)));
      const texts = textsOf(svg);
      expect(texts.every(({ size }) => size >= 7 && size <= 10)).toBe(true);
      expect(texts.map(({ content }) => content)).toContain(`Scale ${scale}`);
      expect(svg.attributes['role']).toBe('img');
      expect(svg.children[0]).toMatchObject({ name: 'title', children: [title] });
      expect(svg.children[1]).toMatchObject({ name: 'desc', children: [description] });
    },
  );

  it.each([7, 3.5, 2.5])(
    'has sizes of openings on no edge, and each in its own opening, on %d inches of paper',
    (box) => {
      const walls = drawWalls(room(), { ...base, id: name, box: { width: box, height: box } });
      expect(walls.flatMap(({ id, svg }) => misplacedSizes(svg, printPalette.glass).map((size) => [id, size]))).toEqual(
        [],
      );
    },
  );

  it('has ids that do not repeat', () => {
    const ids = drawings.flatMap(({ svg }) => nodesOf(svg).flatMap(({ attributes }) => attributes['id'] ?? []));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBe(2 * drawings.length);
  });

  it('reaches over the whole room, so that a scale that brings the bare room out of the box needs no drawing', () => {
    const measure = room();
    const bare = { ...base, id: name, bare: true, box: { width: 100, height: 100 } };
    const ofPlan = planSpan(measure);
    const spans = [ofPlan, ofPlan, ...measure.walls.map((wall) => ({ width: wall.run, height: topOf(wall) }))];
    const seen = [drawPlan(measure, bare), drawCeilingPlan(measure, bare), ...drawWalls(measure, bare)];
    seen.forEach(({ ratio, width, height }, index) => {
      const inches = 12 / ratio / ft(1);
      expect(width).toBeGreaterThanOrEqual((spans[index]?.width ?? 0) * inches);
      expect(height).toBeGreaterThanOrEqual((spans[index]?.height ?? 0) * inches);
    });
  });

  it('is the same twice', () => {
    expect(everyDrawing(room(), name).map(({ svg }) => svgText(svg))).toEqual(drawings.map(({ svg }) => svgText(svg)));
  });
});

describe('a drawing', () => {
  it('takes print colours literally and screen colours as custom properties, and nothing else', () => {
    const colours = (palette: typeof printPalette): string[] => {
      const { svg } = drawPlan(rooms['great-room'](), { ...base, id: 'p', palette });
      return nodesOf(svg)
        .flatMap(({ attributes }) => [attributes['fill'], attributes['stroke']])
        .filter((value) => value !== undefined && value !== 'none')
        .map(String);
    };
    expect(colours(printPalette).every((colour) => /^#[0-9a-f]{6}$/.test(colour))).toBe(true);
    expect(colours(screenPalette).every((colour) => /^var\(--draw-[a-z]+, #[0-9a-f]{6}\)$/.test(colour))).toBe(true);
  });

  it('draws lengths at its scale: the 24-foot wall is 24 feet times 3/16 inch', () => {
    const { svg, scale } = drawPlan(rooms['great-room'](), { ...base, id: 'p' });
    expect(scale).toBe(`3/16" = 1'-0"`);
    // 24 ft × 3/16 in × 72 pt = 324 pt: the overall dimension line.
    expect(svgText(svg)).toMatch(/d="M0 (-[\d.]+)L324 \1"/);
  });

  it('writes each size of the walls and openings on the plan', () => {
    const words = textsOf(drawPlan(rooms['great-room'](), { ...base, id: 'p' }).svg).map(({ content }) => content);
    expect(words).toEqual(
      expect.arrayContaining([
        `24'-0"`,
        `18'-6"`,
        'D01',
        'D02',
        'W01',
        'W02',
        'W03',
        '101',
        'Great room',
        'open to Kitchen',
        'Foyer',
      ]),
    );
    // North wall by hand: 2, window 4, 2 1/2 to the breast, breast 7, 2 1/2 to the next window of 4, 2.
    expect(words.filter((word) => word === `4'-0"`)).toHaveLength(2);
    expect(words.filter((word) => word === `2'-6"`)).toHaveLength(2);
    expect(words.filter((word) => word === `7'-0"`)).toHaveLength(1);
  });

  it('says what is on a wall in its description', () => {
    const [north] = drawWalls(rooms['great-room'](), { ...base, id: 'e' });
    expect(north?.id).toBe('e-north');
    expect(north?.description).toBe(
      `Elevation of the north wall of Great room, 24'-0" long and 9'-0" high. Openings: W01, window, 4'-0" by 5'-0", sill at 2'-6"; W02, window, 4'-0" by 5'-0", sill at 2'-6". Before it: Chimney breast.`,
    );
  });

  it('names finish regions on an elevation', () => {
    const region = {
      outline: [
        { x: 0, y: 0 },
        { x: ft(4), y: 0 },
        { x: ft(4), y: ft(4) },
        { x: 0, y: ft(4) },
      ].map(({ x, y }) => ({ x: x as Length, y: y as Length })),
      holes: [],
    };
    const drawings = drawWalls(rooms.bath(), {
      ...base,
      id: 'e',
      finishes: new Map([['north', [{ label: 'Wainscot', region }]]]),
    });
    expect(textsOf(drawings[0]!.svg).map(({ content }) => content)).toContain('Wainscot');
    expect(textsOf(drawings[1]!.svg).map(({ content }) => content)).not.toContain('Wainscot');
  });
});
