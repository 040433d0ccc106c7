import type { BookCategory, BookOption } from '../../src/book/index.js';
import { fromFeet } from '../../src/units/index.js';
import type { Cents } from '../../src/units/index.js';

/** Text that would break a page which does not escape. It stands where people write. */
export const hostile = `<script>window.hit = 1</script>"'<img src=x onerror="window.hit=1">& {{ 7*7 }}`;

function option(category: string, slug: string, name: string, extra: Partial<BookOption> = {}): BookOption {
  return {
    id: `${category}/${slug}`,
    slug,
    category,
    name,
    maker: 'Coldspring Mill',
    model: 'NG-8',
    summary: 'Clear alder with a 1/8" shadow gap, oiled.',
    parts: [
      {
        part: 'main',
        unit: 'sq ft',
        material: { amount: 740, scale: 2 },
        labor: { amount: 41, scale: 1 },
        pack: { name: 'bundle', holds: 24 },
        waste: { amount: 10, scale: 2 },
      },
    ],
    freight: 18500 as Cents,
    quoted: { on: '2026-03-01', by: "Supplier's desk" },
    leadDays: 30,
    weight: { pounds: 2.1, per: 'sq ft' },
    attributes: [
      { name: 'nominal', label: 'Nominal size', attribute: { text: '1x8', value: { kind: 'text', text: '1x8' } } },
    ],
    needs: [{ what: 'Strapping at 16 inches across the joists', by: 'finish-carpentry', before: 'drywall' }],
    swatch: { pattern: 'boards', colors: ['#b98a5a', '#a87848'], repeat: fromFeet(0.5625) },
    specification: {
      general: 'Boards of one mill run.',
      products: 'Kiln-dried alder, *clear*.',
      execution: 'Blind nailed.',
    },
    care: 'Wipe with a dry cloth.',
    body: '',
    source: `content/options/${category}/${slug}.md`,
    ...extra,
  };
}

function category(slug: string, name: string, schedule: BookCategory['schedule']): BookCategory {
  return {
    slug,
    name,
    trade: 'finish-carpentry',
    section: '06 20 00',
    measure: {
      by: 'area',
      openings: { rule: 'none' },
      times: 1,
      words: 'Net area of the surface.',
      source: 'common practice, no source',
    },
    sequence: 70,
    neededAt: 'trim',
    layer: 'finish',
    attributes: [],
    body: '',
    source: `content/categories/${slug}.md`,
    ...(schedule !== undefined && { schedule }),
  };
}

export const boards = option('ceiling-board', 'alder-nickel-gap-1x8', 'Alder nickel-gap 1x8');
export const shiplap = option('ceiling-board', 'pine-shiplap-1x8', 'Pine shiplap 1x8', {
  maker: 'Larkspur Lumber',
  model: 'SL-8',
  leadDays: 0,
});
export const oak = option('wood-floor', 'white-oak-5', 'White oak 5" plank', {
  swatch: { pattern: 'planks', colors: ['#c9a878', '#bb9866'] },
});
export const odd = option('wood-floor', 'odd', `Odd ${hostile}`, {
  maker: hostile,
  summary: hostile,
  body: `## ${hostile}\n\n[x](javascript:alert(1)) ![y](https://example.org/y.png)`,
});

export const options = [boards, shiplap, oak, odd];

export const categories = [
  category('ceiling-board', 'Ceiling board', 'ceiling'),
  category('wood-floor', 'Wood floor', 'floor'),
];
