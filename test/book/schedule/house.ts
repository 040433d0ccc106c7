import type { Schedules } from '../../../src/core/book/index.js';
import { smallBook, type Edits } from '../small-house.js';

/** Two rooms with a door between them, and what a door schedule needs: doors, hardware, casing, board, paint. */
const option = (category: string, slug: string, lines: string, unit: string): Edits => ({
  [`content/options/${category}/${slug}.md`]: `---
name: ${slug}
maker: Maker
model: ${slug}-1
summary: Plain.
price: { material: $1.00 / ${unit}, labor: $1.00 / ${unit} }
waste: 5 %
lead: 2 weeks
${lines}swatch: { pattern: solid, colors: ["#b98a5a"] }
specification: { general: Plain., products: Plain., execution: Plainly. }
care: None.
---
`,
});

const category = (slug: string, by: string, lines: string): Edits => ({
  [`content/categories/${slug}.md`]: `---
name: ${slug}
trade: carpentry
section: "08 14 00"
sequence: 40
needed-at: trim
measure: { by: ${by}, words: As counted., source: "common practice, no source" }
${lines}---
`,
});

const length = (name: string, kind = 'length') => `  ${name}: { label: ${name}, kind: ${kind} }\n`;

const products: readonly Edits[] = [
  category(
    'door',
    'each',
    `layer: fixture\nattributes:\n${['leaf', 'height', 'rough-width', 'rough-height', 'jamb'].map((name) => length(name)).join('')}${length('widths', 'lengths')}${length('core', 'text')}`,
  ),
  option(
    'door',
    'panel',
    `attributes: { leaf: 1 3/8", height: 6'-8", widths: [2'-6"], core: solid, rough-width: 2", rough-height: 2 1/2", jamb: 4 9/16" }\n`,
    'each',
  ),
  category('hardware', 'each', `layer: fixture\nattributes:\n${length('backset')}${length('holds', 'text')}`),
  option('hardware', 'lever', `attributes: { backset: 2 3/8", holds: "one pair of levers, three hinges" }\n`, 'each'),
  category('casing', 'run', 'layer: edge\nschedule: trim\nkey: CS\n'),
  option('casing', 'flat', '', 'lin ft'),
  category('board', 'area', 'layer: substrate\n'),
  option('board', 'half', 'thickness: 1/2"\n', 'sq ft'),
  option('board', 'thick', 'thickness: 5/8"\n', 'sq ft'),
  category('paint', 'area', 'layer: finish\nschedule: place\nkey: P\n'),
  option('paint', 'oat', '', 'sq ft'),
  option('paint', 'snow', '', 'sq ft'),
];

const room = (slug: string, number: string, openings: readonly string[], selections: readonly string[]): Edits => ({
  [`content/rooms/${slug}.md`]: `---
name: ${slug}
number: "${number}"
level: main
use: study
size: 10'-0" x 12'-0"
ceiling: flat 9'-0"
openings:
${openings.map((each) => `  - ${each}\n`).join('')}selections:
${selections.map((each) => `  - ${each}\n`).join('')}---
`,
});

export interface TwoRooms {
  readonly door?: string;
  /** Of the study, beside its board. */
  readonly study?: readonly string[];
  readonly studs?: string;
}

/** The study's door D02 in its south wall leads to the hall. */
export function twoRooms({
  door = `width: 2'-6", height: 6'-8", hinge: left, swing: hall`,
  study = [],
  studs = `studs: { inside: 3 1/2", outside: 5 1/2" }\n`,
}: TwoRooms): Schedules {
  const edits: Edits = Object.assign(
    {},
    ...products,
    room(
      'study',
      '101',
      [`{ mark: D02, kind: door, wall: south, at: 3'-0", to: hall, ${door} }`],
      ['{ at: walls, category: board, chosen: half }', ...study],
    ),
    room(
      'hall',
      '102',
      [`{ mark: D02, recorded-in: study, wall: north, at: 3'-0" }`],
      ['{ at: walls, category: board, chosen: thick }'],
    ),
    { 'content/house.md': [['milestones:\n', `${studs}milestones:\n`]] },
  ) as Edits;
  return smallBook(edits, '2026-04-20', ({ code }) => code === 'allowance-unused').schedules;
}
