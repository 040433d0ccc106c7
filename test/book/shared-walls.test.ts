import { describe, expect, test } from 'vitest';
import { fromOtherSide, otherSideWords } from '../../src/table/index.js';
import { lookUp, type Book } from '../../src/core/book/index.js';
import { smallBook, type Edits } from './small-house.js';

/** A bath of 8' × 6' and a bedroom of 12' × 10' north of it, both 8' high, with 8' of wall between them. */
const room = (name: string, number: string, use: string, size: string, rest: string) =>
  `---\nname: ${name}\nnumber: "${number}"\nlevel: main\nuse: ${use}\nsize: ${size}\nceiling: flat 8'-0"\n${rest}---\n`;

const quiet = (at: string, chosen = 'batt') =>
  `selections:\n  - { at: ${at}, category: sound, standard: batt, chosen: ${chosen}, chosen-on: 2026-03-02 }\n`;

const house = ({ bath, bed, once = true }: { bath: string; bed: string; once?: boolean }): Edits => ({
  'content/categories/sound.md': `---
name: Sound insulation
trade: carpentry
section: "07 21 16"
sequence: 20
needed-at: trim
layer: insulation
measure:
  by: area
  openings: all
${once ? '  between-rooms: once\n' : ''}  words: One face of the wall.
  source: common practice, no source
attributes:
  stc: { label: STC, kind: number, required: true }
---
`,
  'content/options/sound/batt.md': `---
name: Sound batt
maker: Invented Mill
model: S-1
summary: A batt.
price: { material: $1.00 / sq ft, labor: $1.00 / sq ft }
waste: 0 %
lead: 1 week
attributes: { stc: 50 }
swatch: { pattern: batt, colors: ["#e6d59a"] }
specification: { general: Batts., products: Batts., execution: Fill it. }
care: Nothing.
---
`,
  'content/rooms/bath.md': room('Bath', '102', 'bath', `8'-0" x 6'-0"`, `beside: { north: bed }\n${bath}`),
  'content/rooms/bed.md': room('Bedroom', '103', 'bedroom', `12'-0" x 10'-0"`, `beside: { south: bath }\n${bed}`),
});

const take = (book: Book, slug: string) =>
  book.selections.find(({ room: at, category }) => at === slug && category === 'sound')?.takeoff[0];

const ordered = (book: Book) => book.orders.find(({ option }) => option === 'sound/batt')?.net;

describe('a wall between two rooms', () => {
  test('is what inside-walls means: those that the record or a door gives another room', () => {
    const door = `openings:\n  - { mark: D09, kind: door, wall: west, at: 1'-0", width: 2'-6", height: 7'-0", to: study }\n`;
    const seen = [['openings:', `openings:\n  - { mark: D09, recorded-in: bath, wall: east, at: 1'-0" }`]] as const;
    const book = smallBook({
      ...house({ bath: `${door}${quiet('inside-walls')}`, bed: '' }),
      'content/rooms/study.md': seen,
    });
    const [selection] = book.selections.filter(({ room: at }) => at === 'bath');
    expect(selection?.places.map(({ id }) => id)).toEqual(['north', 'west']);
    expect(selection?.placeText).toBe('Inside walls');
  });

  test('is counted once where both rooms ask for it, in the first, and its other side says so', () => {
    // The bath's wall 8' × 8' = 64. The bedroom's 12' × 8' = 96, of which 64 is counted from the bath.
    const book = smallBook(house({ bath: quiet('north'), bed: quiet('south') }));
    expect(take(book, 'bath')?.net).toBe(64);
    expect(take(book, 'bed')?.net).toBe(32);
    expect(take(book, 'bed')?.places[0]?.adjustments).toEqual([
      { what: 'Counted from the Bath side', amount: -64, why: 'a wall between two rooms is counted once' },
    ]);
    expect(ordered(book)).toBe(96);
  });

  test('is counted from each side where its category says nothing, and where the other decided on none', () => {
    expect(ordered(smallBook(house({ bath: quiet('north'), bed: quiet('south'), once: false })))).toBe(160);
    expect(ordered(smallBook(house({ bath: quiet('north', 'none'), bed: quiet('south') })))).toBe(96);
  });

  test('takes off no more than there is', () => {
    // The bath asks for its whole wall, 64; the bedroom's closet side is left 0 of a wall that is shorter.
    const edits = house({ bath: quiet('north'), bed: quiet('south') });
    const book = smallBook({
      ...edits,
      'content/rooms/bed.md': room(
        'Bedroom',
        '103',
        'bedroom',
        `6'-0" x 10'-0"`,
        `beside: { south: bath }\n${quiet('south')}`,
      ),
    });
    expect(take(book, 'bed')?.net).toBe(0);
    expect(ordered(book)).toBe(64);
  });

  test('is told in the room that does not ask for it', () => {
    const book = smallBook(house({ bath: quiet('north'), bed: '' }));
    const bed = book.rooms.find(({ slug }) => slug === 'bed');
    if (!bed) throw new Error('there is a bedroom');
    expect(otherSideWords(fromOtherSide(bed, lookUp(book)))).toBe('South wall from the Bath side, Sound batt');
    const [row] = book.schedules.sound;
    expect(row?.beside).toEqual(['bed']);
  });

  test('of a bath and a bedroom, without insulation, is a caution', () => {
    const of = (edits: Edits) => smallBook(edits).cautions.filter(({ rule }) => rule === 'sound-at-bath');
    expect(of(house({ bath: '', bed: '' })).map(({ id }) => id)).toEqual(['sound-at-bath/bath/north']);
    expect(of(house({ bath: '', bed: quiet('south') }))).toEqual([]);
  });
});
