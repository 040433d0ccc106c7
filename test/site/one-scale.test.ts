import { describe, expect, it } from 'vitest';
import { drawnRoom, lookUp } from '../../src/core/book/index.js';
import { drawRoom } from '../../src/site/drawings.js';
import { makeView } from '../../src/site/view.js';
import { printRoom } from '../../src/print/drawings.js';
import { roomViews } from '../../src/draw/index.js';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-20');
const view = makeView(book);

describe.each(book.rooms.map((room) => [room.slug, room] as const))('%s', (_, room) => {
  it('has its plan and its ceiling at one scale, on its page and on its sheet', () => {
    const { plan, ceiling } = drawRoom(room, view);
    expect(ceiling.scale).toBe(plan.scale);
    const printed = printRoom(room, view);
    for (const above of printed.features.filter(({ title }) => title === 'Reflected ceiling plan'))
      expect(above.scale).toBe(printed.plan.scale);
  });
});

it('some of these would be larger alone', () => {
  const alone = book.rooms.filter((room) => {
    const { plan, ceiling } = roomViews(drawnRoom(room, lookUp(book)));
    const palette = {} as never;
    return plan.draw({ id: 'a', palette }).scale !== ceiling.draw({ id: 'b', palette }).scale;
  });
  expect(alone.length).toBeGreaterThan(0);
});
