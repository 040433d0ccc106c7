import type { Book } from '../../src/core/book/index.js';
import { composeHouse, type RecordTexts } from '../small-house/compose-house.js';

/** A small house of three rooms: one open choice on an allowance, one upgrade of $1,240.50, one credit of $310, two cautions. */
export function makeFixture(): Book {
  return composeHouse(quailRidge, '2026-03-09');
}

function trade(name: string): string {
  return `---
name: ${name}
contact: Foreman
sections: ["09 64 29"]
---
`;
}

function category(name: string, trade: string, sequence: number, schedule: string, by: string, more = ''): string {
  return `---
name: ${name}
trade: ${trade}
section: "09 64 29"
sequence: ${sequence}
needed-at: trim
fixes-early: { milestone: backing, why: Hung boards need backing }
layer: ${by === 'each' ? 'fixture' : 'finish'}
schedule: ${schedule}
measure: { by: ${by}, words: Net area., source: "common practice, no source" }
${more}---
`;
}

function option(name: string, color: string, bought: string): string {
  return `---
name: ${name}
maker: Invented Mill
model: M-1
summary: Invented for these sheets.
${bought}
lead: 6 weeks
swatch: { pattern: planks, colors: ["${color}"] }
specification: { general: General., products: Products., execution: Execution. }
care: Wipe it.
---
`;
}

/** Floors, in dollars. Great room 24 × 18.5 = 444 sq ft, pantry 8 × 6 = 48 sq ft. Oak for 444 is 20 cartons, 476 × 11.50 =
 *  5,474.00; for 48 it is 3 cartons, 71.4 × 11.50 = 821.10. Maple is 9.40 a sq ft and 59.90 an order: 4,233.50 for 444, 511.10
 *  for 48. So oak for maple is +1,240.50 in the great room, and maple for oak −310.00 in the pantry. Ceilings: fir 444 × 12.50 +
 *  230 = 5,780, pine 444 × 10 + 155 = 4,595, against an allowance of 4,800. */
const quailRidge: RecordTexts = {
  'content/house.md': `---
name: Quail Ridge
number: "2601"
place: North Fork, Alder County
metric: beside
currency: USD
climate-zone: 6B
people:
  - { role: owner, name: The owners }
  - { role: builder, name: Project manager, contact: site office }
  - { role: architect, name: Designer of record }
contract:
  sum: $980,000
  date: 2026-02-16
  tax: { rate: 0 %, on: [material] }
  overage-markup: 0 %
  credit-returns: 100 %
  credit-markup: false
  contingency: $25,000
  owner-furnished-install: contract
  rounding: half-up
levels:
  - { id: main, name: Main level }
  - { id: upper, name: Upper level }
allowances:
  - { id: boards, name: Wood ceilings, amount: "$4,800", covers: [material, freight, tax], categories: [ceiling-board] }
calendar: { weekend: [saturday, sunday], holidays: none, closed: [], review: 5 days }
milestones:
  - { id: backing, name: Backing, date: 2026-04-27 }
  - { id: drywall, name: Drywall, date: 2026-06-15 }
  - { id: trim, name: Trim, date: 2026-08-03 }
cautions:
  - accept: floor-build-up/great-room/D01
    by: Architect
    on: 2026-03-02
    why: A strip of oak is planned.
---
A small house.
`,
  'content/trades/flooring.md': trade('Flooring'),
  'content/trades/finish-carpentry.md': trade('Finish carpentry'),
  'content/categories/floor.md': category(
    'Floor',
    'flooring',
    50,
    'floor',
    'area',
    'attributes: { build-up: { label: Build-up, kind: length, required: true } }\n',
  ),
  'content/categories/ceiling-board.md': category('Ceiling board', 'finish-carpentry', 40, 'ceiling', 'area'),
  'content/categories/door.md': category('Interior door', 'finish-carpentry', 60, 'place', 'each'),
  'content/options/floor/white-oak.md': option(
    'White oak plank',
    '#c8a878',
    `price: { material: $11.50 / sq ft, labor: $4.00 / sq ft }
pack: { name: carton, holds: 23.8 sq ft }
waste: 5 %
thickness: 3/4"
attributes: { build-up: 3/4" }`,
  ),
  'content/options/floor/maple.md': option(
    'Maple strip',
    '#d9c39a',
    `price: { material: $9.40 / sq ft, labor: $4.00 / sq ft }
freight: $59.90
thickness: 5/16"
attributes: { build-up: 5/16" }`,
  ),
  'content/options/ceiling-board/fir-tg.md': option(
    'Fir tongue and groove',
    '#b5814c',
    `price: { material: $12.50 / sq ft, labor: $0.00 / sq ft }
freight: $230`,
  ),
  'content/options/ceiling-board/pine-gap.md': option(
    'Pine nickel gap',
    '#d6b27c',
    `price: { material: $10.00 / sq ft, labor: $0.00 / sq ft }
freight: $155`,
  ),
  'content/options/door/flat-panel.md': option(
    'Flat panel door',
    '#eceae4',
    'price: { material: $400 / each, labor: $120 / each }',
  ),
  'content/rooms/great-room.md': `---
name: Great room
number: "101"
level: main
use: living
size: 24'-0" x 18'-6"
ceiling: flat 9'-0"
openings:
  - { mark: D01, kind: door, wall: south, at: 3'-0", width: 3'-0", height: 7'-0", to: pantry, hinge: left, swing: pantry }
  - { mark: W01, kind: window, wall: west, at: 4'-0", width: 6'-0", height: 5'-0", sill: 2'-6", to: outside }
selections:
  - at: floor
    category: floor
    standard: maple
    chosen: white-oak
    chosen-on: 2026-02-20
    note: Boards run north to south.
  - at: ceiling
    category: ceiling-board
    allowance: boards
    considering: [fir-tg, pine-gap]
  - at: D01
    category: door
    standard: flat-panel
    chosen: flat-panel
---
The room that the house **turns around**.

- Boards run *north to south*
- See [the maker](https://example.com/oak)
`,
  'content/rooms/pantry.md': `---
name: Pantry
number: "102"
level: main
use: pantry
size: 8'-0" x 6'-0"
ceiling: flat 8'-0"
openings:
  - { mark: D01, recorded-in: great-room, wall: north, at: 2'-0" }
selections:
  - at: floor
    category: floor
    standard: white-oak
    chosen: maple
---
`,
  'content/rooms/loft.md': `---
name: Loft
number: "201"
level: upper
use: gallery
size: 12'-0" x 10'-0"
ceiling: flat 8'-0"
---
`,
};
