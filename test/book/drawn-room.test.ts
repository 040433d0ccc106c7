import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { drawnRoom, lookUp, type DrawnRoom } from '../../src/core/book/index.js';
import { loadBook } from '../../src/disk/load/index.js';
import { printLength, type IsoDate } from '../../src/base/units/index.js';

let drawn: (room: string) => DrawnRoom;

beforeAll(async () => {
  const { book } = await loadBook(join(import.meta.dirname, '../..'), '2026-04-20' as IsoDate);
  if (!book) throw new Error('the demo house has errors');
  drawn = (slug) => {
    const room = book.rooms.find((one) => one.slug === slug);
    if (!room) throw new Error(`no room ${slug}`);
    return drawnRoom(room, lookUp(book));
  };
});

describe('what the drawings of the demo house show', () => {
  test('the boards of a ceiling, not the gypsum behind them', () => {
    const { ceiling } = drawn('great-room');
    expect(ceiling).toMatchObject({ lay: 'boards', product: 'Clear fir 1x6' });
    expect(ceiling?.surfaces.map(({ facet, run }) => [facet, run])).toEqual([
      [0, 'north-south'],
      [1, 'north-south'],
    ]);
    expect(drawn('kitchen').ceiling?.lay).toBe('sheets');
  });

  test('the finish of each wall, and of what stands before it; an open choice is named as such', () => {
    const { walls, features } = drawn('great-room');
    expect(walls.get('north')?.map(({ label }) => label)).toContain('Tallow, matte');
    expect(features.get('breast')).toBe('Stone facing, still open');
    // Tile goes on after paint, on walls of its own; the niche in it takes the tile.
    const bath = drawn('primary-bath');
    expect(new Set(bath.walls.get('shower-east')?.map(({ label }) => label))).toEqual(
      new Set([bath.features.get('niche')]),
    );
    expect(bath.walls.get('west')?.[0]?.label).not.toBe(bath.features.get('niche'));
  });

  test('the height of a guard that all considered railings share', () => {
    const guard = drawn('gallery').guards.get('edge');
    expect(guard?.guard).toBe('Railing, still open');
    expect(guard?.guardHeight === undefined ? '' : printLength(guard.guardHeight)).toBe(`3'-0"`);
    expect(drawn('great-room').guards.size).toBe(0);
  });
});
