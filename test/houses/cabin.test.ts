import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Book, BookSelection } from '../../src/core/book/index.js';
import { bookmatch } from '../cli/command-line.js';
import { loadBook } from '../../src/disk/load/index.js';
import { inLocale, locale, unitSize, usualLocale } from '../../src/base/units/index.js';

/** A hut of 6 m by 6 m. Its ridge runs from the south-west corner to the north-east one; the plates, at 2.20 m, lie at the other two
 *  corners, and the roof rises 30° from them. A loft of 3 m by 3 m lies in the south-west, its ceiling below at 2.30 m. */
const cabin = join(import.meta.dirname, 'cabin');

let book: Book;

beforeAll(async () => {
  const { book: made, problems } = await loadBook(cabin, '2026-04-01');
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  if (!made) throw new Error('no book');
  book = made;
});

const metric = { units: 'metric', currency: 'EUR' } as const;
const [squareMetre, metre] = inLocale(metric, () => [unitSize('sq ft'), unitSize('lin ft')]);

const tan30 = Math.tan(Math.PI / 6);
const cos30 = Math.cos(Math.PI / 6);
/** The ridge is half a diagonal from the plates' corners: 2.20 + 3·√2 · tan 30° = 4.649 m. */
const ridge = 2.2 + 3 * Math.SQRT2 * tan30;
/** Along a wall the roof falls by tan 30° / √2 for each metre away from the ridge's corner. */
const below = (distance: number): number => ridge - (distance * tan30) / Math.SQRT2;

const measureOf = (slug: string) => {
  const room = book.rooms.find((each) => each.slug === slug);
  if (!room) throw new Error(slug);
  return room.measure;
};
/** The selection of a category in a room; of insulation, that at a place. */
const selection = (room: string, category: string, at = ''): BookSelection => {
  const found = book.selections
    .filter((each) => each.room === room && each.category === category)
    .find(({ takeoff }) => at === '' || takeoff.some(({ places }) => places.some(({ place }) => place === at)));
  if (!found) throw new Error(`${room} ${category} ${at}`);
  return found;
};
const netOf = ({ takeoff }: BookSelection, part = 0): number => takeoff[part]?.net ?? NaN;

/** The skylight is 600 mm by 900 mm. Its shaft is 300 mm deep, and its plumb foot opens the ceiling further by 300 mm · tan 30°. */
const long = 0.9 + 0.3 * tan30;
const hole = 0.6 * long;

describe('walls and ceilings, on the back of an envelope', () => {
  test('the north and east walls climb from the plate to the ridge: 6 m at their mean height', () => {
    const mean = (2.2 + ridge) / 2;
    for (const id of ['north', 'east'])
      expect(measureOf('main').walls.find((wall) => wall.id === id)?.gross).toBeCloseTo(6 * mean * squareMetre, 6);
  });

  test('the south and west walls: 3 m below the loft, and 3 m from where the roof comes out beside it down to the plate', () => {
    const area = 3 * 2.3 + 3 * ((below(3) + below(6)) / 2);
    expect(below(6)).toBeCloseTo(2.2, 12);
    for (const id of ['south', 'west'])
      expect(measureOf('main').walls.find((wall) => wall.id === id)?.gross).toBeCloseTo(area * squareMetre, 6);
  });

  test('the ceiling: 27 m² of plan on a slope of 30°, and 9 m² flat below the loft, less the skylight', () => {
    expect(measureOf('main').ceiling.gross).toBeCloseTo((27 / cos30 + 9) * squareMetre, 6);
    expect(measureOf('main').ceiling.net).toBeCloseTo((27 / cos30 + 9 - hole) * squareMetre, 6);
    // What lies on one plane is one surface, though the loft cuts into it.
    expect(measureOf('main').ceiling.facets).toHaveLength(3);
  });

  test('the loft: 0.92 m at its low corners, 2.15 m along the ridge, which is 1.5·√2 from them', () => {
    const slope = (2.15 - 0.92) / (1.5 * Math.SQRT2);
    expect(measureOf('loft').ceiling.net).toBeCloseTo(9 * Math.hypot(1, slope) * squareMetre, 6);
  });
});

describe('laid out', () => {
  const level = (index: number) => book.laid.groups[0]?.levels[index];
  const wall = 0.1524;

  test('the loft stands in the south-west corner, joined by the well, and all around it is known', () => {
    expect(book.laid.groups).toHaveLength(1);
    expect(level(1)?.rooms).toEqual([{ room: 'loft', at: { x: 0, y: 0 } }]);
    expect(measureOf('loft').around).toMatchObject({ under: [{ room: 'main' }], overNothing: 0 });
    expect(measureOf('loft').around).not.toHaveProperty('unsure');
  });

  test('the rest of the main room is open up to the roof beside it, also where the skylight is', () => {
    const [well, ...others] = level(1)?.wells ?? [];
    expect(others).toEqual([]);
    expect(well).toMatchObject({ room: 'main', outline: { holes: [] } });
    // 36 m² less the loft's 9; and what is left of the house's outline, 6 m and a wall of 6" at either side.
    expect(level(1)?.net).toBeCloseTo(9 * squareMetre, 3);
    expect(level(1)?.gross).toBeCloseTo(((6 + 2 * wall) ** 2 - 27) * squareMetre, 3);
  });

  test('the ladder arrives in the gap that the loft’s east edge leaves, 800 mm from its north end', () => {
    const ladder = measureOf('main').features.find(({ id }) => id === 'ladder')?.footprint ?? [];
    const metres = (values: readonly number[]) => values.map((value) => value / 1e9);
    expect(Math.min(...metres(ladder.map(({ x }) => x)))).toBe(3);
    expect(Math.min(...metres(ladder.map(({ y }) => y)))).toBeGreaterThan(3 - 0.8);
    expect(Math.max(...metres(ladder.map(({ y }) => y)))).toBeLessThan(3);
  });
});

describe('what is bought', () => {
  test('insulation in the walls: every opening comes off', () => {
    const gross = 2 * 6 * ((2.2 + ridge) / 2) + 2 * (3 * 2.3 + 3 * ((below(3) + 2.2) / 2));
    // The round window is 600 mm across.
    const openings = 0.9 * 2.05 + 1.2 * 1.2 + 1.5 * 1.8 + Math.PI * 0.3 ** 2;
    const net = gross - openings;
    expect(netOf(selection('main', 'insulation', 'north'))).toBeCloseTo(net * squareMetre, 6);
    // 5 % waste, in packs of 2.80 m².
    const order = book.orders.find(({ option }) => option === 'insulation/wood-fibre-160');
    expect(order?.packs).toBe(Math.ceil((net * 1.05) / 2.8));
    expect(order?.packs).toBe(25);
  });

  test('insulation above: the slopes and the flat without the skylight, and the four sides of its shaft', () => {
    // Head 0.6 × 0.3, foot 0.6 × 0.3/cos 30°, two trapezoids of 0.9 m and what is below it, 0.3 m high.
    const shaft = 0.6 * 0.3 + (0.6 * 0.3) / cos30 + 2 * ((0.9 + long) / 2) * 0.3;
    expect(netOf(selection('main', 'insulation', 'ceiling'))).toBeCloseTo(
      (27 / cos30 + 9 - hole + shaft) * squareMetre,
      6,
    );
  });

  test('the insulation schedule names the shaft', () => {
    const shaft = 0.6 * 0.3 + (0.6 * 0.3) / cos30 + 2 * ((0.9 + long) / 2) * 0.3;
    const rows = book.schedules.insulation.map(({ where, area }) => [where, area / squareMetre] as const);
    expect(rows.map(([where]) => where)).toEqual(['ceilings', 'skylight shafts', 'walls']);
    expect(rows[1]?.[1]).toBeCloseTo(shaft, 6);
  });

  test('lime wash: two coats; an opening of 2.70 m² comes off, the smaller ones are brushed around', () => {
    const gross = 2 * 6 * ((2.2 + ridge) / 2) + 2 * (3 * 2.3 + 3 * ((below(3) + 2.2) / 2));
    const litres = ((gross - 2.7) * 2 * 1.05) / 7;
    const [takeoff] = selection('main', 'wall-coat').takeoff;
    expect(takeoff?.net).toBeCloseTo((gross - 2.7) * squareMetre, 6);
    expect((takeoff?.counts?.[0]?.amount ?? 0) * 3.785411784).toBeCloseTo(litres, 6);
  });

  test('base: 24 m of wall less the door', () => {
    expect(netOf(selection('main', 'base-trim'))).toBeCloseTo((24 - 0.9) * metre, 6);
  });

  test('railing: 3.00 m and 2.20 m, a post at each end and one between, as 1.50 m is the most', () => {
    expect(netOf(selection('loft', 'railing'))).toBeCloseTo(5.2 * metre, 6);
    expect(netOf(selection('loft', 'railing'), 1)).toBe(6);
  });
});

describe('what it costs, in euros and to the cent', () => {
  // Floor: 36 m² less the ladder's 9 goings of 180 mm by 700 mm.
  const net = 36 - 9 * 0.18 * 0.7;

  test('ash: 20 bundles of 1.92 m² at €71.20, laying by what is covered, 20 % tax on both', () => {
    const bundles = Math.ceil((net * 1.06) / 1.92);
    expect(bundles).toBe(20);
    const [material, labor] = [bundles * 1.92 * 71.2, net * 28].map((euros) => Math.round(euros * 100));
    const tax = Math.round(((material ?? 0) + (labor ?? 0)) * 0.2);
    expect(selection('main', 'floor').cost).toMatchObject({ material, labor, tax });
    expect(material).toBe(273_408);
  });

  test('the allowance: €52.00 for each of 43.87 m² of floor, and what goes over it with 10 %', () => {
    const amount = Math.round((net + 9) * 5200);
    const ledger = book.money.allowances.find(({ id }) => id === 'floors');
    expect(ledger?.amount).toBe(amount);
    expect(ledger?.basis).toBe('43.866 m² × €52.00');
    const larch = 5 * 2.1 * 46.5;
    const covered = 273_408 + Math.round((273_408 + net * 2800) * 0.2) + larch * 100 + (larch * 100 + 9 * 2800) * 0.2;
    expect(ledger?.committed).toBe(Math.round(covered));
    expect(ledger?.change).toBe(Math.round((ledger?.overage ?? 0) * 1.1));
  });
});

describe('built from end to end', () => {
  const out = mkdtempSync(join(tmpdir(), 'bookmatch-cabin-'));
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  /** What people read: pages without their marks, tables, and the printed sheets. Records stay as they are written. */
  const texts = (): readonly (readonly [path: string, text: string])[] =>
    (readdirSync(out, { recursive: true, encoding: 'utf8' }) as string[])
      .filter((path) => /\.(html|csv|pdf)$/.test(path) && !path.startsWith('book/records'))
      .map((path) => [path, textOf(join(out, path))] as const);

  test('no feet, inches, pounds or dollars anywhere', { timeout: 240_000 }, async () => {
    const { code, said } = await bookmatch(['build', '--house', cabin, '--out', out, '--on', '2026-04-01']);
    expect(said).not.toContain('error');
    expect(code).toBe(0);
    const usual =
      /\b(?:sq|lin|cu|board) ft\b|\bsquare feet\b|\binch|\d'-\d|\d'(?![\p{L}\d])|\d ?\d?\/?\d?"(?=[ .;)])|\b(?:lbs?|gal)\b|\$\d|°F|\bBtu\b/u;
    const found = texts().flatMap(([path, text]) => (usual.exec(text) ? [`${path}: ${around(text, usual)}`] : []));
    expect(found).toEqual([]);
    expect(texts().length).toBeGreaterThan(60);
  });

  test('the sheets are A4, and a handout has neither euros nor the word', () => {
    expect(execFileSync('pdfinfo', [join(out, 'book.pdf')], { encoding: 'utf8' })).toMatch(/Page size:.*\(A4\)/);
    const handouts = texts().filter(([path]) => path.startsWith('handout/'));
    expect(handouts.length).toBeGreaterThan(10);
    expect(handouts.filter(([, text]) => /€|\bEUR\b|\beuros?\b/i.test(text)).map(([path]) => path)).toEqual([]);
  });

  test('areas in square metres, money in euros, days as the house writes them', () => {
    const [, start = ''] = texts().find(([path]) => path === 'book/index.html') ?? [];
    expect(start).toContain('€');
    const room = texts()
      .filter(([path]) => path.startsWith('book/rooms/main'))
      .map(([, text]) => text)
      .join(' ');
    for (const words of ['36 m²', '44.19 m² needed', 'ridge 4.649 m', '30°', '20 March 2026', '20.7 L'])
      expect(room).toContain(words);
    // A scale is that of paper.
    expect(room).not.toContain('Scale 1:');
    expect(texts().some(([path, text]) => path.endsWith('book.pdf') && /\b1:50\b/.test(text))).toBe(true);
  });
});

function textOf(path: string): string {
  if (path.endsWith('.pdf'))
    return execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  const text = readFileSync(path, 'utf8');
  if (path.endsWith('.csv')) return text.replaceAll('"', '');
  return text
    .replace(/<(script|style)[^>]*>.*?<\/\1>/gsu, ' ')
    .replace(/<[^>]+>/gu, ' ')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replace(/\s+/gu, ' ');
}

function around(text: string, pattern: RegExp): string {
  const at = pattern.exec(text)?.index ?? 0;
  return text.slice(Math.max(0, at - 40), at + 40).replace(/\s+/gu, ' ');
}

test('the locale is the house’s while its Book is made, and what it was before afterwards', () => {
  expect(locale()).toEqual(usualLocale);
  expect(book.house).toMatchObject({ units: 'metric', currency: 'EUR', language: 'en-GB' });
});
