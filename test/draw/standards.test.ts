import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawnRoom, lookUp } from '../../src/core/book/index.js';
import { printPalette, roomViews, type Drawing } from '../../src/draw/index.js';
import { everyDrawing } from './every-drawing.js';
import { keyHouse } from './key-house.js';
import { nodesOf, textsOf } from './reading.js';
import { rooms } from './rooms.js';

const book = keyHouse();
const drawings: readonly Drawing[] = [
  ...Object.values(rooms).flatMap((room) => everyDrawing(room())),
  ...book.rooms.flatMap((room) => {
    const { plan, ceiling, sections, features, walls } = roomViews(drawnRoom(room, lookUp(book)));
    return [plan, ceiling, ...sections, ...features, ...walls].map((view) =>
      view.draw({ id: 'd', palette: printPalette }),
    );
  }),
];

/** How high a capital is, of the size of its type. Source: OS/2 and head tables of the face that drawings are set in. */
function capitalOf(file: string): number {
  const font = readFileSync(join(import.meta.dirname, '../../fonts/print', file));
  const tables = new Map(
    Array.from({ length: font.readUInt16BE(4) }, (_, index) => {
      const at = 12 + 16 * index;
      return [font.toString('latin1', at, at + 4), font.readUInt32BE(at + 8)] as const;
    }),
  );
  return font.readInt16BE(tables.get('OS/2')! + 88) / font.readUInt16BE(tables.get('head')! + 18);
}

describe('all drawings of a room, on paper', () => {
  it('have lines of 0.13, 0.18, 0.35 and 0.50 mm, and no other', () => {
    const widths = new Set(
      drawings.flatMap(({ svg }) =>
        nodesOf(svg).flatMap(({ attributes }) => {
          const width = attributes['stroke-width'];
          return width === undefined ? [] : [((Number(width) / 72) * 25.4).toFixed(2)];
        }),
      ),
    );
    expect([...widths].sort()).toEqual(['0.13', '0.18', '0.35', '0.50']);
  });

  it('have no line without a weight of these', () => {
    const bare = drawings.flatMap(({ svg }) =>
      nodesOf(svg).filter(
        ({ attributes }) =>
          ![undefined, 'none'].includes(attributes['stroke'] as string) && attributes['stroke-width'] === undefined,
      ),
    );
    expect(bare).toEqual([]);
  });

  it.each(['PublicSans_400Regular.ttf', 'PublicSans_600SemiBold.ttf'])(
    'have no capital or figure under 1/16 inch, set in %s',
    (file) => {
      const least = Math.min(...drawings.flatMap(({ svg }) => textsOf(svg).map(({ size }) => size)));
      expect((least * capitalOf(file)) / 72).toBeGreaterThanOrEqual(1 / 16);
    },
  );
});
