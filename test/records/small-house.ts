import { readRecords } from '../../src/core/records/index.js';
import type { Outcome, Problem } from '../../src/base/problem/index.js';
import type { Records, Source } from '../../src/core/model/index.js';

/** A house of two rooms, three categories and three trades that has nothing wrong with it. */
export const smallHouse: Readonly<Record<string, string>> = {
  'content/house.md': `---
name: Larch Hollow
number: "2614"
place: Tamarack Bench
metric: beside
currency: USD
climate-zone: 6B
people:
  - { role: owner, name: The owners }
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
allowances:
  - id: wood-ceilings
    name: Wood ceilings
    amount: $9,800
    covers: [material, tax]
    categories: [ceiling-board]
calendar:
  weekend: [saturday, sunday]
  holidays: us-federal
  closed: [ { from: 2026-07-03, to: 2026-07-10, why: Summer shutdown } ]
  review: 5 days
milestones:
  - { id: framing, name: Framing starts, date: 2026-05-04 }
  - { id: drywall, name: Drywall, after: framing, days: 40 }
  - { id: trim, name: Trim, after: drywall, days: 20 }
---
The house.
`,
  'content/rooms/study.md': `---
name: Study
number: "102"
level: main
use: study
size: 14'-0" x 12'-6"
open: { east: foyer }
ceiling: { form: gable, ridge: east-west, plate: 8'-0", pitch: 6/12 }
openings:
  - { mark: D01, kind: door, wall: south, at: 3'-0", width: 3'-0", height: 6'-8", to: foyer, hinge: left, swing: study }
  - { mark: W01, kind: window, wall: north, at: 4'-0", width: 6'-0", height: 5'-0", sill: 2'-6", to: outside }
features:
  - { kind: built-in, id: bench, name: Window seat, wall: north, at: 4'-0", width: 6'-0", depth: 1'-8", height: 1'-6" }
selections:
  - at: ceiling
    category: ceiling-board
    standard: pine-shiplap-1x8
    allowance: wood-ceilings
    considering: [fir-tg-1x6]
    chosen: fir-tg-1x6
    chosen-on: 2026-03-02
    chosen-by: The owners
    waste: 12 %
  - at: [D01]
    category: interior-door
    standard: flush-door
---
`,
  'content/rooms/foyer.md': `---
name: Foyer
number: "101"
level: main
use: entry
walls:
  - { name: north, go: east, run: 18'-0" }
  - { name: east, go: south, run: 10'-0" }
  - { name: south, go: west, run: 18'-0" }
  - { name: west, go: north, run: 10'-0", open-to: study }
ceiling: flat 9'-0"
openings:
  - { mark: D01, recorded-in: study, wall: north, at: 2'-0" }
voids:
  - { name: Open to below, x: 1'-0", y: 2'-0", width: 4'-0", depth: 3'-0" }
---
`,
  'content/categories/ceiling-board.md': `---
name: Ceiling board
trade: finish-carpentry
section: "06 20 00"
sequence: 70
needed-at: trim
fixes-early: { milestone: drywall, why: Hung boards need backing }
layer: finish
schedule: ceiling
measure: { by: area, openings: over 32 sq ft, words: Net area, source: "common practice, no source" }
attributes:
  nominal: { label: Nominal size, kind: text, required: true }
  face: { label: Face coverage, kind: length, required: true }
  stock: { label: Stock lengths, kind: lengths }
  grade: { label: Grade, kind: text, choices: [clear, knotty] }
---
`,
  'content/categories/interior-door.md': `---
name: Interior door
trade: finish-carpentry
section: "08 14 00"
sequence: 60
needed-at: trim
layer: fixture
measure: { by: each, words: Each leaf, source: "common practice, no source" }
---
`,
  'content/trades/finish-carpentry.md': `---
name: Finish carpentry
contact: Foreman
sections: ["06 20 00", "08 14 00"]
needs-to-know: [Which way boards run]
scope-in: [Ceiling boards]
scope-out: [Painting]
---
`,
  'content/trades/framing.md': `---
name: Framing
contact: Lead framer
sections: ["06 10 00"]
---
`,
  'content/options/ceiling-board/pine-shiplap-1x8.md': board('Pine shiplap 1x8', '$4.20', 'knotty'),
  'content/options/ceiling-board/fir-tg-1x6.md': board('Fir tongue and groove 1x6', '$7.40', 'clear'),
  'content/options/interior-door/flush-door.md': `---
name: Flush door
maker: Coldspring Mill
model: FD-1
summary: A plain door.
price: { material: $385 / each, labor: $120 / each }
lead: 30 days
swatch: { pattern: slab-door, colors: ["#ffffff"] }
specification: { general: General., products: Products., execution: Execution. }
care: Wipe.
---
`,
};

function board(name: string, material: string, grade: string): string {
  return `---
name: ${name}
maker: Coldspring Mill
model: CB-8
summary: A board.
price: { material: ${material} / sq ft, labor: $4.10 / sq ft }
pack: { name: bundle, holds: 24 sq ft }
waste: 10 %
freight: $185
quoted: { on: 2026-03-01, by: Supplier's desk }
lead: 6 weeks
weight: 2.1 lb / sq ft
thickness: 3/4"
attributes: { nominal: 1x8, face: 6 3/4", stock: [8', 10'], grade: ${grade} }
needs:
  - { what: Strapping, by: framing, before: drywall }
swatch: { pattern: boards, colors: ["#b98a5a", "#a87848"], repeat: 6 3/4" }
specification: { general: General., products: Products., execution: Execution. }
care: Wipe.
---
`;
}

export type Edit = readonly [file: string, from: string, to: string];

/** The small house with some text of its files replaced. An edit that replaces nothing is a mistake in the test. */
export function edited(...edits: readonly Edit[]): Source[] {
  const files = { ...smallHouse };
  for (const [file, from, to] of edits) {
    const before = files[file] ?? '';
    if (!before.includes(from)) throw new Error(`${file} does not hold: ${from}`);
    files[file] = before.replace(from, () => to);
  }
  return sources(files);
}

/** The small house with files added or replaced. */
export function withFiles(more: Readonly<Record<string, string>>): Source[] {
  return sources({ ...smallHouse, ...more });
}

function sources(files: Readonly<Record<string, string>>): Source[] {
  return Object.entries(files).map(([path, text]) => ({ path, text }));
}

/** `study.md:13:9 option-unknown message | fix`, a line for each problem. */
export function told(outcome: Outcome<Records>): readonly string[] {
  return outcome.problems.map(tell);
}

export function toldOf(...edits: readonly Edit[]): readonly string[] {
  return told(readRecords(edited(...edits)));
}

function tell({ file, at, code, message, fix, severity }: Problem): string {
  const name = file.split('/').slice(1).join('/');
  return `${name}:${at.line}:${at.column} ${severity === 'warning' ? '(warning) ' : ''}${code} ${message}${fix === undefined ? '' : ` | ${fix}`}`;
}
