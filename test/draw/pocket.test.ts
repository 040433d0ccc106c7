import { describe, expect, it } from 'vitest';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { drawElevation, drawPlan, printPalette } from '../../src/draw/index.js';
import { keyHouse } from './key-house.js';
import { linesOf, nodesOf, pathCorners } from './reading.js';
import { bath } from './rooms.js';

const book = keyHouse();

function measureOf(slug: string): RoomMeasure {
  const room = book.rooms.find((one) => one.slug === slug);
  if (!room) throw new Error(`no room ${slug}`);
  return room.measure;
}

/** How far its leaf reaches past the jambs of D3, to the north and to the south, as drawn; north is up in every plan. */
function leafIn(slug: string): { readonly north: number; readonly south: number } {
  const measure = measureOf(slug);
  const { svg, ratio } = drawPlan(measure, { id: slug, palette: printPalette, number: '1', name: slug });
  const perNanometre = 72 / (ratio * 25_400_000);
  const door = measure.openings.find(({ mark }) => mark === 'D3')!;
  const wall = measure.walls.find(({ id }) => id === door.wall)!;
  // East and west walls run straight down or up the sheet.
  const goes = Math.sign(wall.to.y - wall.from.y);
  const jambs = [door.at, door.at + door.width].map((at) => -(wall.from.y + goes * at) * perNanometre);
  const [head, foot] = [Math.min(...jambs), Math.max(...jambs)];
  const x = wall.from.x * perNanometre;
  // Leaves are white with a fine outline, and lie in the wall's thickness.
  const leaves = nodesOf(svg)
    .filter(({ attributes }) => attributes['fill'] === printPalette.paper && attributes['stroke'] === printPalette.ink)
    .map(({ attributes }) => pathCorners(String(attributes['d'])))
    .filter((ring) => ring.length === 4 && ring.every(([at]) => Math.abs(at - x) < 10))
    .filter((ring) => ring.some(([, y]) => y > head - 1 && y < foot + 1));
  expect(leaves).toHaveLength(1);
  const ys = leaves[0]!.map(([, y]) => y);
  return { north: Math.max(0, head - Math.min(...ys)), south: Math.max(0, Math.max(...ys) - foot) };
}

describe('a pocket door', () => {
  it('slides the recorded way on the plans of both rooms', () => {
    // The hall records it in its east wall: to the right of who faces it is south.
    for (const slug of ['hall', 'parlor']) {
      const { north, south } = leafIn(slug);
      expect(south).toBeGreaterThan(5);
      expect(north).toBe(0);
    }
  });

  it('has its pocket on opposite hands of those who face it from either room', () => {
    const slides = (slug: string) => measureOf(slug).openings.find(({ mark }) => mark === 'D3')?.slides;
    expect([slides('hall'), slides('parlor')]).toEqual(['right', 'left']);
  });

  it('is drawn closed, without an arrow, where its side is not recorded', () => {
    const measure = bath();
    const unknown = measure.openings.map(({ slides: _, ...opening }) => opening);
    const wall = measure.walls.find(({ id }) => id === 'south')!;
    const marks = (openings: RoomMeasure['openings']): number =>
      nodesOf(
        drawElevation({ ...measure, openings }, wall, { id: 'w', palette: printPalette, number: '1', name: 'Bath' })
          .svg,
      ).flatMap(linesOf).length;
    // An arrow is a shaft and two barbs.
    expect(marks(measure.openings) - marks(unknown)).toBe(3);
  });
});
