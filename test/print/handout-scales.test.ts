import { expect, test } from 'vitest';
import { makeHandout } from '../../src/handout/index.js';
import { roomDrawings } from '../../src/print/handout/drawings.js';
import { roomBlock } from '../../src/print/handout/room.js';
import { demoBook } from '../demo-house.js';

const book = await demoBook('2026-04-20');
const handouts = book.trades.map((trade) => makeHandout(book, trade));
const rooms = handouts.flatMap((handout) => handout.rooms.map((room) => ({ handout, room })));
/** Details are drawn as large as they are read at. */
const details = /^Step from|edge$|stair well$|^Chimney breast$/u;

test('plans of a handout are at one scale, small rooms at another', () => {
  const scales = new Set(rooms.map(({ room, handout }) => roomDrawings(room, handout).plan.scale));
  expect([...scales].sort()).toEqual([`1/16" = 1'-0"`, `1/8" = 1'-0"`]);
});

test('ceiling, sections and walls of a room have the scale of its plan', () => {
  const others = rooms.flatMap(({ room, handout }) => {
    const { plan, others: drawings } = roomDrawings(room, handout);
    return drawings.filter(({ title }) => !details.test(title)).map(({ scale }) => scale === plan.scale);
  });
  expect(others.length).toBeGreaterThan(50);
  expect(others).not.toContain(false);
});

test('a scale that several have is said once, with the plan', () => {
  for (const { room, handout } of rooms) {
    const { plan, drawings } = roomBlock(room, handout);
    const told = drawings.map(({ scale }) => scale).filter((scale) => scale !== '');
    expect(told).not.toContain(roomDrawings(room, handout).plan.scale);
    expect(plan.scale.endsWith(' unless said otherwise')).toBe(drawings.length > told.length);
  }
});

test('a mason sets corners by the breast: it is a quarter of an inch to the foot', () => {
  const masonry = rooms.filter(({ handout }) => handout.cover.trade.slug === 'masonry');
  const breasts = masonry.flatMap(({ room, handout }) =>
    roomDrawings(room, handout).others.filter(({ title }) => title === 'Chimney breast'),
  );
  expect(breasts.map(({ scale }) => scale)).toEqual([`1/4" = 1'-0"`]);
});
