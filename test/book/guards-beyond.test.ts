import { describe, expect, test } from 'vitest';
import { drawnRoom, lookUp, type DrawnRoom } from '../../src/core/book/index.js';
import { svgText } from '../../src/base/svg/index.js';
import { feet } from '../../src/base/units/index.js';
import { roomViews, screenPalette } from '../../src/draw/index.js';
import { handoutDrawnRoom, makeHandout } from '../../src/handout/index.js';
import { demoBook, demoOf } from '../demo-house.js';

const look = lookUp(await demoBook('2026-04-20'));
const drawn = (slug: string, of = look): DrawnRoom => drawnRoom(of.room(slug)!, of);
const southWall = (room: DrawnRoom): string => {
  const view = roomViews(room).walls.find(({ id }) => id === 'south')!;
  return svgText(view.draw({ id: 'a', palette: screenPalette }).svg);
};

/** The demo house with its gallery or its great room written otherwise. */
function written(path: string, from: string, to: string): DrawnRoom {
  const { sources } = look.book;
  const edited = sources.map((source) =>
    source.path === path ? { ...source, text: source.text.replace(from, to) } : source,
  );
  expect(edited).not.toEqual(sources);
  const { book, problems } = demoOf(edited, '2026-04-20');
  if (!book) throw new Error(JSON.stringify(problems.slice(0, 2)));
  return drawn('great-room', lookUp(book));
}

describe('the guard of the gallery, seen from the great room', () => {
  test('stands in the opening that is the gallery’s open side, from end to end', () => {
    const [guard, ...more] = drawn('great-room').beyond?.get('O04') ?? [];
    expect(more).toEqual([]);
    expect(guard).toMatchObject({ name: 'Gallery edge', guard: { guard: 'Railing, still open' } });
    expect([feet(guard!.from), feet(guard!.to), feet(guard!.guard!.guardHeight!)]).toEqual([0, 14, 3]);
    expect(southWall(drawn('great-room'))).toContain('Gallery edge: Railing, still open, 3');
  });

  test('is not seen through what is another opening: of another width, or at another height', () => {
    const gallery = 'content/rooms/gallery.md';
    const edge = 'name: Gallery edge, wall: north, at: 0\'-0", run: 14\'-0", drop: 10\'-4"';
    const shorter = written(gallery, edge, edge.replace('at: 0\'-0", run: 14\'-0"', 'at: 2\'-0", run: 9\'-0"'));
    const [guard] = shorter.beyond?.get('O04') ?? [];
    // Two feet from its left are three from its right: the wall is 14 feet long.
    expect([feet(guard!.from), feet(guard!.to)]).toEqual([3, 12]);
    const lower = written(gallery, edge, edge.replace('drop: 10\'-4"', 'drop: 9\'-4"'));
    expect(lower.beyond?.size).toBe(0);
    expect(southWall(lower)).not.toContain('Gallery edge');
  });

  test('is seen in handouts as in the book, whoever sets it', () => {
    for (const slug of ['drywall', 'insulation', 'painting']) {
      const handout = makeHandout(
        look.book,
        look.book.trades.find((trade) => trade.slug === slug)!,
      );
      const room = handout.rooms.find((one) => one.slug === 'great-room')!;
      const seen = handoutDrawnRoom(room, handout);
      expect(seen.beyond).toEqual(drawn('great-room').beyond);
      expect([slug, southWall(seen)]).toEqual([slug, expect.stringContaining('Gallery edge: Railing, still open, 3')]);
    }
  });

  test('is in no other room', () => {
    const others = look.book.rooms.filter(({ slug }) => slug !== 'great-room');
    expect(others.flatMap(({ slug }) => [...(drawn(slug).beyond?.keys() ?? [])])).toEqual([]);
  });
});
