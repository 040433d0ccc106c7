import { describe, expect, test } from 'vitest';
import { alikeProblems } from '../../src/core/book/alike-problems.js';
import type { Option, Records } from '../../src/core/model/index.js';
import { category, measuredBy, option } from '../caution/house.js';

const floor = category([], { slug: 'floor', name: 'Floor', ...measuredBy('area') });

function records(options: readonly Option[], more: { chosen?: string; layer?: 'insulation' } = {}): Records {
  const { chosen, layer } = more;
  const selection = {
    at: ['floor'],
    category: 'floor',
    considering: options.map(({ slug }) => slug),
    ...(chosen && { chosen }),
  };
  return {
    rooms: [{ name: 'Study', selections: [selection] }],
    categories: [{ ...floor, ...(layer && { layer }) }],
    options,
  } as unknown as Records;
}

function plank(slug: string, color: string, attributes: Parameters<typeof option>[0] = {}): Option {
  return option(attributes, { slug, name: slug, category: 'floor', swatch: { pattern: 'planks', colors: [color] } });
}

describe('options that pictures show alike', () => {
  test.each([
    ['one swatch', [plank('oak', '#aa9966'), plank('ash', '#aa9966')], {}, 1],
    [
      'three of one swatch, each two of them',
      [plank('a', '#aa9966'), plank('b', '#aa9966'), plank('c', '#aa9966')],
      {},
      3,
    ],
    ['two colors', [plank('oak', '#aa9966'), plank('ash', '#aa9967')], {}, 0],
    ['one swatch, chosen', [plank('oak', '#aa9966'), plank('ash', '#aa9966')], { chosen: 'oak' }, 0],
    ['what no picture shows', [plank('oak', '#aa9966'), plank('ash', '#aa9966')], { layer: 'insulation' }, 0],
    [
      'tile of two sizes',
      [plank('a', '#aa9966', { length: '12"', width: '12"' }), plank('b', '#aa9966', { length: '24"', width: '12"' })],
      {},
      0,
    ],
  ] as const)('%s', (_, options, more, count) => {
    expect(alikeProblems(records(options, more)).map(({ severity }) => severity)).toEqual(Array(count).fill('notice'));
  });

  test('are told once, with both names and the place', () => {
    const one = records([plank('oak', '#aa9966'), plank('ash', '#aa9966')]);
    const twice = { ...one, rooms: [...one.rooms, ...one.rooms] };
    expect(alikeProblems(twice).map(({ message }) => message)).toEqual([
      'oak and ash have one swatch, and nothing else that pictures show: both are considered (Floor, Study)',
    ]);
  });
});
