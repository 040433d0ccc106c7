import { smallBook, type Edits } from '../book/small-house.js';
import type { Scope } from '../../src/core/scope/index.js';

/** A category that is measured by area, with one option of its own name. */
export function areaCategory(slug: string, layer: string, more = '', option = ''): Edits {
  return {
    [`content/categories/${slug}.md`]: `---
name: ${slug.charAt(0).toUpperCase()}${slug.slice(1)}
trade: carpentry
section: "09 29 00"
sequence: 40
needed-at: trim
layer: ${layer}
measure: { by: area, words: Area., source: "common practice, no source" }
${more}---
`,
    [`content/options/${slug}/${slug}.md`]: `---
name: Plain ${slug}
maker: Invented Mill
model: M-1
summary: Plain.
price: { material: $1.00 / sq ft, labor: $1.00 / sq ft }
waste: 5 %
lead: 2 weeks
swatch: { pattern: solid, colors: ["#b98a5a"] }
specification: { general: Plain., products: Plain., execution: Plainly. }
care: None.
${option}---
`,
  };
}

/** The study with these selections and no others, one a line: `{ at: walls, category: board, chosen: board }`. */
export function study(...selections: readonly string[]): Edits {
  return {
    'content/rooms/study.md': `---
name: Study
number: "101"
level: main
use: study
size: 10'-0" x 12'-0"
ceiling: flat 9'-0"
openings:
  - { mark: W01, kind: window, wall: north, at: 2'-0", width: 6'-0", height: 5'-0", sill: 2'-6", to: outside }
selections:
${selections.map((each) => `  - ${each}\n`).join('')}---
`,
  };
}

export const board = areaCategory('board', 'substrate');
export const paint = areaCategory('paint', 'finish', 'needs-beneath: [[board, ceiling-board]]\n');

/** Scope of the small house with these edits. Nothing draws on its allowance then, which is no matter here. */
export function scopeOf(...edits: readonly Edits[]): Scope {
  const all: Edits = Object.assign({}, ...edits) as Edits;
  return smallBook(all, '2026-04-20', ({ code }) => code === 'allowance-unused').scope;
}
