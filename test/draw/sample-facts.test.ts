import { describe, expect, it } from 'vitest';
import type { BookOption } from '../../src/core/book/index.js';
import { svgText, type SvgNode } from '../../src/base/svg/index.js';
import { drawSwatch, sampleFacts } from '../../src/draw/index.js';
import { demoBook } from '../demo-house.js';
import { cornersOf, nodesOf } from './reading.js';

const book = await demoBook('2026-04-20');
const sample = (option: BookOption, seed = option.id): SvgNode =>
  drawSwatch(option.swatch, { width: 400, height: 300, seed, title: 'T', facts: sampleFacts(option) });
const optionOf = (id: string): BookOption => book.options.find((one) => one.id === id)!;

/** Width and height of the smallest box around a figure of a sample that has an outline of its own. */
function cutEnd(id: string): readonly [number, number] {
  const outlined = nodesOf(sample(optionOf(id))).filter(
    ({ name, attributes }) =>
      name === 'path' && attributes['stroke'] !== undefined && /Z$/u.test(String(attributes['d'])),
  );
  const boxes = outlined.map((node) => {
    const corners = cornersOf(node);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)] as const;
  });
  expect(boxes.length).toBeGreaterThan(0);
  return boxes.reduce((least, box) => (box[0] * box[1] < least[0] * least[1] ? box : least));
}

describe('samples of the demo', () => {
  const categories = [...new Set(book.options.map(({ category }) => category))];

  it.each(categories)('no two options of %s look alike by their facts', (category) => {
    const byLook = new Map<string, string[]>();
    for (const option of book.options.filter((one) => one.category === category && one.swatch)) {
      const look = svgText(sample(option, 'one seed for all'));
      byLook.set(look, [...(byLook.get(look) ?? []), option.slug]);
    }
    expect([...byLook.values()].filter((alike) => alike.length > 1)).toEqual([]);
  });
});

describe('trim is cut at its own width and thickness', () => {
  it.each([
    ['casing/flat-alder-4-1-2', 0.875, 4.5],
    ['casing/flat-poplar-3-1-2', 0.75, 3.5],
    ['casing/backband-poplar-4', 1.125, 4],
    ['base-trim/flat-alder-6', 0.75, 6],
  ])('%s', (id, through, face) => {
    const [wide, high] = cutEnd(id);
    expect(wide / high).toBeCloseTo(through / face, 2);
  });

  it('all to one scale', () => {
    expect(cutEnd('base-trim/flat-alder-6')[1] / cutEnd('casing/flat-poplar-3-1-2')[1]).toBeCloseTo(6 / 3.5, 2);
  });
});

it.each([
  ['exposed-timber/fir-8x10-free-of-heart', 7.5, 9.5],
  ['exposed-timber/fir-8x12-free-of-heart', 7.5, 11.5],
  ['exposed-timber/fir-box-beam-6x10', 5.5, 9.5],
])('a timber has its own section: %s', (id, wide, deep) => {
  const nodes = nodesOf(sample(optionOf(id)));
  const end = nodes.find(({ attributes }) => attributes['fill'] === 'none' && /Z$/u.test(String(attributes['d'])))!;
  const corners = cornersOf(end);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  expect((Math.max(...xs) - Math.min(...xs)) / (Math.max(...ys) - Math.min(...ys))).toBeCloseTo(wide / deep, 2);
});

it.each([
  ['fireplace/gas-linear-60', 60, 20],
  ['fireplace/wood-factory-built-42', 42, 36],
])('a fireplace has the proportion of its opening: %s', (id, wide, high) => {
  const boxes = nodesOf(sample(optionOf(id)))
    .filter(({ name, attributes }) => name === 'rect' && Number(attributes['width']) < 380)
    .map(({ attributes }) => Number(attributes['width']) / Number(attributes['height']));
  expect(boxes.some((share) => Math.abs(share - wide / high) < 0.03)).toBe(true);
});

it('a door has the panels, and the glass, that its record counts', () => {
  const glass = '#cfdadb';
  const panes = (id: string): number =>
    nodesOf(sample(optionOf(id))).filter(({ attributes }) => attributes['fill'] === glass).length;
  expect(panes('interior-door/glass-lite-alder-80')).toBe(1);
  expect(panes('interior-door/two-panel-alder-80')).toBe(0);
});

describe('the sheen of paint', () => {
  const look = (sheen: string): string => {
    const paint = book.options.find(({ id }) => id === 'paint/satin-fog')!;
    const attributes = paint.attributes.map((one) =>
      one.name === 'sheen'
        ? { ...one, attribute: { text: sheen, value: { kind: 'text', text: sheen } as const } }
        : one,
    );
    return svgText(sample({ ...paint, attributes }));
  };
  const panes = (sheen: string): number => look(sheen).match(/ opacity="0\.(?!5")/gu)?.length ?? 0;

  it('is seen: no two of one color look alike, and a flat one throws nothing back', () => {
    const sheens = ['flat', 'matte', 'eggshell', 'satin', 'semi-gloss', 'gloss'];
    expect(new Set(sheens.map(look)).size).toBe(sheens.length);
    expect(panes('flat')).toBe(0);
    expect(panes('satin')).toBe(6);
  });

  it('leaves a paint as it was whose sheen has no such name', () => {
    expect(look('as the sample')).toBe(look('flat'));
  });
});
