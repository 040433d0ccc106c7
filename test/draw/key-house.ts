import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { Book } from '../../src/core/book/index.js';
import { composeHouse } from '../small-house/compose-house.js';

const small = join(import.meta.dirname, '../cases/small-house');

/** Records of the small house but its room, true north 20 degrees to the east of the walls' north. */
function records(): Record<string, string> {
  const files = readdirSync(join(small, 'content'), { recursive: true, withFileTypes: true });
  const texts = files
    .filter((file) => file.isFile() && !file.parentPath.endsWith('rooms'))
    .map((file) => join(file.parentPath, file.name))
    .map((path) => [relative(small, path), readFileSync(path, 'utf8')] as const);
  return Object.fromEntries(
    texts.map(([path, text]) => [path, text.replace('levels:\n', 'north: 20\nlevels:\n')] as const),
  );
}

const study = `---
name: Study
number: "101"
level: main
use: study
walls:
  - { name: north, go: east, run: 14'-0", arc: { bows: out, rise: 2'-0" } }
  - { name: east, go: south, run: 12'-0" }
  - { name: south, go: west, run: 10'-0" }
  - { name: corner, go: north-west, run: 5'-7 7/8" }
  - { name: west, go: north, run: 8'-0" }
ceiling: flat 9'-0"
openings:
  - { mark: W1, kind: window, wall: north, at: 5'-0", width: 4'-0", height: 5'-0", sill: 2'-0", to: outside }
  - { mark: W2, kind: window, wall: corner, at: 1'-6", width: 2'-6", height: 4'-0", sill: 3'-0", to: outside }
  - { mark: W3, kind: window, wall: west, at: 2'-0", width: 3'-0", height: 1'-6", sill: 6'-0", to: outside }
  - { mark: D1, kind: door, wall: east, at: 2'-0", width: 2'-8", height: 6'-8", to: hall, hinge: left, swing: study }
---
`;

const hall = `---
name: Long hall
number: "102"
level: main
use: hall
size: 5'-0" x 16'-0"
ceiling: flat 9'-0"
openings:
  - { mark: D1, recorded-in: study, wall: west, at: 11'-0" }
  - { mark: D2, kind: door, wall: south, at: 1'-0", width: 3'-0", height: 6'-8", to: outside, hinge: right, swing: outside }
  - { mark: O1, kind: cased, wall: east, at: 6'-0", width: 4'-0", height: 7'-0", to: parlor }
  - { mark: D3, kind: door, wall: east, at: 1'-0", width: 2'-6", height: 6'-8", to: parlor, operation: pocket, slides: right }
features:
  - { kind: half-wall, id: ledge, name: Ledge, x: 1'-0", y: 13'-0", go: east, run: 2'-0", height: 3'-0", thickness: 4 1/2" }
---
`;

const parlor = `---
name: Parlor
number: "103"
level: main
use: living
size: 12'-0" x 16'-0"
ceiling: flat 9'-0"
openings:
  - { mark: O1, recorded-in: hall, wall: west, at: 6'-0" }
  - { mark: D3, recorded-in: hall, wall: west, at: 12'-6" }
  - { mark: D4, kind: door, wall: east, at: 4'-0", width: 6'-0", height: 6'-8", to: outside, operation: double, swing: parlor }
---
`;

const shed = `---
name: Shed
number: "901"
level: main
use: utility
size: 8'-0" x 6'-0"
ceiling: flat 8'-0"
openings:
  - { mark: D9, kind: door, wall: west, at: 1'-0", width: 3'-0", height: 6'-8", to: outside, hinge: left, swing: shed }
---
`;

/** A study with a bowed wall and a cut corner, a hall, a parlor, and a shed that nothing joins to them; with `more`, features of the parlor. */
export function keyHouse(more = ''): Book {
  const rooms = {
    study,
    hall,
    parlor: more === '' ? parlor : parlor.replace(/---\n$/u, `features:\n${more}---\n`),
    shed,
  };
  const texts = {
    ...records(),
    ...Object.fromEntries(Object.entries(rooms).map(([slug, text]) => [`content/rooms/${slug}.md`, text])),
  };
  return composeHouse(texts, '2026-03-09', ({ severity }) => severity !== 'error');
}
