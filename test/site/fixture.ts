import { composeHouse, type RecordTexts } from '../small-house/compose-house.js';

/** Text that would break a page which does not escape. It stands where people write. */
export const hostile = `<script>window.hit = 1</script>"'<img src=x onerror="window.hit=1">& {{ 7*7 }}`;

/** As YAML writes a text that holds anything. */
const quoted = JSON.stringify;

interface Product {
  readonly name: string;
  readonly maker?: string;
  readonly summary?: string;
  readonly material: string;
  readonly lead: string;
  readonly attributes: string;
  readonly pattern: string;
  readonly body?: string;
}

function option({ name, maker = 'Coldspring Mill', summary = 'Clear, oiled.', body = '', ...facts }: Product): string {
  return `---
name: ${quoted(name)}
maker: ${quoted(maker)}
model: NG-8
summary: ${quoted(summary)}
price: { material: ${facts.material} / sq ft, labor: $4.10 / sq ft }
pack: { name: bundle, holds: 24 sq ft }
waste: 10 %
freight: $185
quoted: { on: 2026-03-01, by: Supplier's desk }
lead: ${facts.lead}
weight: 2.1 lb / sq ft
attributes: ${facts.attributes}
needs:
  - { what: Strapping at 16 inches across the joists, by: finish-carpentry, before: drywall }
swatch: { pattern: ${facts.pattern}, colors: ["#b98a5a", "#a87848"], repeat: 6 3/4" }
specification: { general: Boards of one mill run., products: "Kiln-dried, *clear*.", execution: Blind nailed. }
care: Wipe with a dry cloth.
---
${body}
`;
}

function category(name: string, sequence: number, schedule: string, more: string): string {
  return `---
name: ${name}
trade: finish-carpentry
section: "06 20 00"
sequence: ${sequence}
needed-at: trim
layer: finish
schedule: ${schedule}
measure: { by: area, words: Net area of the surface., source: "common practice, no source" }
${more}
---
`;
}

/** The records of the house below. */
export const fixtureTexts: RecordTexts = {
  'content/house.md': `---
name: Larch Hollow
number: "2614"
place: Tamarack Bench, Alder County
metric: beside
currency: USD
climate-zone: 6B
people:
  - { role: owner, name: The owners }
  - { role: builder, name: Project manager, contact: site office }
contract:
  sum: $1,486,000
  date: 2026-02-16
  tax: { rate: 6.25 %, on: [material, freight] }
  overage-markup: 15 %
  credit-returns: 100 %
  credit-markup: false
  contingency: $25,000
  owner-furnished-install: contract
  rounding: half-up
levels:
  - { id: main, name: Main level }
  - { id: upper, name: Upper level }
allowances:
  - id: wood-ceilings
    name: Wood ceilings
    amount: $4,100
    covers: [material, freight, tax]
    categories: [ceiling-board]
    note: ${quoted(hostile)}
  - { id: floors, name: Floors, amount: $9.00 / sq ft, covers: [material], categories: [wood-floor] }
calendar:
  weekend: [saturday, sunday]
  holidays: us-federal
  closed: [{ from: 2026-07-03, to: 2026-07-10, why: Summer shutdown }]
  review: 5 days
milestones:
  - { id: framing, name: Framing starts, date: 2026-05-04 }
  - { id: drywall, name: Drywall, after: framing, days: 10 }
  - { id: trim, name: Trim, date: 2026-06-29, note: ${quoted(hostile)} }
cautions:
  - { accept: floor-build-up/great-room/D01, by: Architect, on: 2026-03-10, why: ${quoted(hostile)} }
---
A house on a bench above the creek.
`,
  'content/trades/finish-carpentry.md': `---
name: Finish carpentry
contact: Finish carpenter's foreman
sections: ["06 20 00"]
---
`,
  'content/categories/ceiling-board.md': category(
    'Ceiling board',
    70,
    'ceiling',
    `fixes-early: { milestone: drywall, why: Hung boards need backing }
attributes: { nominal: { label: Nominal size, kind: text, required: true } }`,
  ),
  'content/categories/wood-floor.md': category(
    'Wood floor',
    80,
    'floor',
    'attributes: { build-up: { label: Build-up, kind: length, required: true } }',
  ),
  'content/options/ceiling-board/alder-nickel-gap-1x8.md': option({
    name: 'Alder nickel-gap 1x8',
    summary: 'Clear alder with a 1/8" shadow gap, oiled.',
    material: '$7.40',
    lead: '30 days',
    attributes: '{ nominal: 1x8 }',
    pattern: 'boards',
  }),
  'content/options/ceiling-board/pine-shiplap-1x8.md': option({
    name: 'Pine shiplap 1x8',
    maker: 'Larkspur Lumber',
    material: '$5.10',
    lead: '0 days',
    attributes: '{ nominal: 1x8 }',
    pattern: 'boards',
  }),
  'content/options/wood-floor/white-oak-5.md': option({
    name: 'White oak 5" plank',
    material: '$8.00',
    lead: '33 days',
    attributes: '{ build-up: 3/4" }',
    pattern: 'planks',
  }),
  'content/options/wood-floor/fir-plank.md': option({
    name: 'Fir plank',
    material: '$6.00',
    lead: '10 days',
    attributes: '{ build-up: 1/4" }',
    pattern: 'planks',
  }),
  'content/options/wood-floor/odd.md': option({
    name: `Odd ${hostile}`,
    maker: hostile,
    summary: hostile,
    material: '$9.00',
    lead: '43 days',
    attributes: '{ build-up: 3/4" }',
    pattern: 'planks',
    body: `## ${hostile}\n\n[x](javascript:alert(1)) ![y](https://example.org/y.png)`,
  }),
  'content/rooms/great-room.md': `---
name: Great room
number: "101"
level: main
use: living
size: 24'-0" x 18'-6"
ceiling: flat 12'-0"
selections:
  - at: ceiling
    category: ceiling-board
    standard: pine-shiplap-1x8
    allowance: wood-ceilings
    considering: [pine-shiplap-1x8, alder-nickel-gap-1x8]
    chosen: alder-nickel-gap-1x8
    chosen-on: 2026-03-02
    chosen-by: The owners
    slip: 4F2A-91C0-77BE
    note: ${quoted(`Boards run across the short way. ${hostile}`)}
  - at: floor
    category: wood-floor
    standard: white-oak-5
    considering: [odd]
open: { east: loft }
openings:
  - { mark: D01, kind: door, wall: south, at: 3'-0", width: 3'-0", height: 8'-0", to: study, hinge: left, swing: great-room }
  - { mark: W01, kind: window, wall: west, at: 4'-0", width: 6'-0", height: 5'-0", sill: 2'-6", to: outside }
---
The room the house is about.

- faces the bench
- warm in winter
`,
  'content/rooms/study.md': `---
name: Study
number: "102"
level: main
use: living
size: 12'-0" x 11'-0"
ceiling: flat 9'-0"
openings:
  - { mark: D01, recorded-in: great-room, wall: north, at: 2'-0" }
selections:
  - at: floor
    category: wood-floor
    chosen: fir-plank
    chosen-on: 2026-03-09
    ordered: { on: 2026-03-20, option: fir-plank }
    supply: owner-furnished
  - at: ceiling
    category: ceiling-board
    chosen: none
---

# Notes

${hostile}
`,
  'content/rooms/loft.md': `---
name: Loft
number: "201"
level: upper
use: living
size: 16'-0" x 10'-0"
ceiling: flat 8'-0"
selections:
  - at: floor
    category: wood-floor
    standard: white-oak-5
    allowance: floors
---

# Notes

${hostile}
`,
};

/** A house of three rooms whose people write markup into their records. Ceiling 24 × 18.5 = 444 sq ft, with 10 % waste 488.4: 21
 *  bundles. Alder on the allowance: 504 × 7.40 + 185 freight = 3,914.60, with 6.25 % tax 4,159.26, 59.26 over 4,100. */
export const fixtureBook = composeHouse(fixtureTexts, '2026-04-23', ({ code }) => code === 'decide-late');
