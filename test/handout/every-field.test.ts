import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Book } from '../../src/core/book/index.js';
import type { Source } from '../../src/core/model/index.js';
import { printProblems } from '../../src/base/problem/index.js';
import { handoutProblems, makeHandout } from '../../src/handout/index.js';
import { makeHandoutSheets } from '../../src/print/handout/handout-sheets.js';
import { handoutFolders } from '../../src/site/index.js';
import { demoOf } from '../demo-house.js';
import { recordOf, recordsIn, textFields, textKeys, withValues, type TextField } from './planted-house.js';

const keys = textKeys();

/** What names something else in the house, by the same letters. Planted only in the room below, at both ends. */
const namesOther: Readonly<Record<string, string>> = {
  'room.walls.name': 'openings and selections name the wall',
  'room.outline.wall': 'a wall',
  'room.jogs': 'a wall',
  'room.voids.name': 'an edge names the hole',
  'room.voids.outline.side': 'an edge names the side',
  'opening.wall': 'a wall',
  'chimney-breast.wall': 'a wall',
  'drop-edge.wall': 'a wall',
  'drop-edge.void': 'a hole of the floor',
  'drop-edge.side': 'a side of that hole',
  'niche.wall': 'a wall',
  'built-in.wall': 'a wall',
  'soffit.wall': 'a wall',
  'selection.at': 'places of the room',
  'selection.except': 'places of the room',
  'selection.except.wall': 'a wall',
  'category.attributes.<name>.choices': 'options name the choice',
  'category.measure.supplies.when.<name>': 'a choice',
};

/** What can be nothing but the id of something, so that no sum stands there without an error. */
const ids: Readonly<Record<string, string>> = {
  'house.match.places': 'room/place of a selection',
  'house.cautions.accept': 'id of a caution',
};

const number = (key: string): number => 100 + keys.indexOf(key);
const sum = (key: string): string => `$91,${number(key)}.47`;

/** A wall, a hole and a side with sums in their names, wherever something else names them. */
const wall = `North for ${sum('room.walls.name')}`;
const hatch = `Hatch for ${sum('room.voids.name')}`;
const foot = `Foot for ${sum('room.voids.outline.side')}`;

/** Rooms with all that no room of the demo has. */
const more: readonly Source[] = [
  {
    path: 'content/rooms/planted.md',
    text: `---
name: Planted room
number: "299"
level: main
use: study
walls:
  - { name: "${wall}", go: east, run: 24'-0" }
  - { name: east, go: south, run: 14'-0" }
  - { name: south, go: west, run: 24'-0" }
  - { name: west, go: north, run: 14'-0" }
ceiling: flat 9'-0"
jogs: ["${wall}"]
chosen-by: Project manager
chosen-on: 2026-03-02
voids:
  - { name: "${hatch}", outline: [{ x: 4'-0", y: 4'-0", side: "${foot}" }, { x: 6'-0", y: 4'-0" }, { x: 6'-0", y: 8'-0" }, { x: 4'-0", y: 8'-0" }] }
floor:
  - { name: Dais, over: { x: 0", y: 0", width: 24'-0", depth: 3'-0" }, height: 7" }
openings:
  - { mark: W90, kind: window, wall: "${wall}", at: 20'-0", width: 2'-0", height: 2'-0", sill: 3'-0", to: outside }
features:
  - { kind: soffit, id: duct, name: Soffit, wall: "${wall}", at: 0", length: 2'-0", depth: 2'-0", drop: 1'-0" }
  - { kind: skylight, id: sky, name: Skylight, x: 8'-0", y: 2'-0", width: 2'-0", length: 2'-0", depth: 1'-0" }
  - { kind: drop-edge, id: hatch, name: Hatch edge, void: "${hatch}", side: "${foot}", drop: 9'-0" }
  - { kind: niche, id: niche, name: Niche, wall: "${wall}", at: 12'-0", width: 2'-0", height: 1'-0", depth: 3 1/2", sill: 4'-0" }
  - { kind: built-in, id: case, name: Case, wall: "${wall}", at: 15'-0", width: 4'-0", depth: 1'-0", height: 3'-0" }
  - { kind: chimney-breast, id: breast, name: Breast, wall: "${wall}", at: 4'-0", width: 6'-0", depth: 2'-0", bears-on: concrete }
  - { kind: drop-edge, id: edge, name: Edge, wall: "${wall}", at: 22'-0", run: 1'-0", drop: 9'-0" }
selections:
  - at: ["${wall}", east]
    category: gypsum-board
    standard: half-inch-light
    chosen: half-inch-light
    ordered: { on: 2026-03-04, option: half-inch-light }
    received: { on: 2026-03-09, count: 3 each, lot: K-118 }
    installed: { on: 2026-03-10, by: Drywall hanger }
  - at: walls
    except: ["${wall}"]
    category: paint
    standard: eggshell-oat
    chosen: eggshell-oat
  - at: base
    category: base-trim
    standard: flat-poplar-5-1-2
    chosen: flat-poplar-5-1-2
    except: [{ wall: "${wall}", from: 0", to: 2'-0" }]
---
`,
  },
  {
    path: 'content/rooms/planted-corners.md',
    text: `---
name: Room by its corners
number: "298"
level: main
use: study
outline: [{ x: 0", y: 9'-0", wall: "${wall}" }, { x: 10'-0", y: 9'-0", wall: east }, { x: 10'-0", y: 0", wall: south }, { x: 0", y: 0", wall: west }]
ceiling: flat 9'-0"
selections:
  - { at: "${wall}", category: gypsum-board, standard: half-inch-light, chosen: half-inch-light, chosen-on: 2026-03-02 }
---
`,
  },
  {
    path: 'content/price-lists/mill.md',
    text: `---
name: Mill
category: floor
sheet: "2026"
columns: { name: Product, number: Item, price: Net, unit: Unit, pack: Per box, pack-name: Packing, lead: Weeks, maker: Mill, attributes: { species: Wood } }
decimals: point
currency: USD
file-name: name
fixed: { pack-name: box, maker: Mill }
leave-out: [Samples]
---
`,
  },
];

const parts = ['general', 'products', 'execution', 'submittals', 'mock-up', 'tolerance', 'delivery', 'warranty'];
const told = Object.fromEntries(parts.map((part) => [part, 'As told.']));
const choice = `Ripped for ${sum('category.attributes.<name>.choices')}`;

/** Keys that the demo's records do not have. */
const added: readonly (readonly [string, readonly (string | number)[], unknown])[] = [
  ['content/house.md', ['contract', 'tax', 'authority'], 'State'],
  ['content/house.md', ['finish-sets', 0, 'chosen-by'], 'The owners'],
  ['content/categories/floor.md', ['private'], 'Kept.'],
  ['content/categories/floor.md', ['options', 'specification'], told],
  ['content/categories/floor.md', ['families', 'wood', 'specification'], told],
  ['content/categories/floor.md', ['attributes', 'sawn'], { label: 'Sawn', kind: 'text', choices: ['plain', choice] }],
  ['content/categories/floor.md', ['measure', 'supplies', 1, 'when'], { sawn: [choice] }],
  ['content/options/floor/white-oak-engineered-7.md', ['attributes', 'sawn'], choice],
  ['content/options/floor/white-oak-engineered-7.md', ['specification'], told],
  [
    'content/options/floor/white-oak-engineered-7.md',
    ['photo'],
    { file: 'oak.jpg', shows: 'Oak', width: 9, height: 9 },
  ],
  ['content/trades/masonry.md', ['private'], 'Kept.'],
  ['content/alternatives/plain-house.md', ['private'], 'Kept.'],
];

const demo = [...recordsIn(join(import.meta.dirname, '..', '..')), ...more].map((source) =>
  withValues(
    source,
    added.flatMap(([path, at, value]) => (path === source.path ? [[at, value] as const] : [])),
  ),
);

const choices = new Set(
  demo
    .filter((source) => recordOf(source) === 'category')
    .flatMap(textFields)
    .flatMap(({ key, text }) => (key === 'category.attributes.<name>.choices' ? [text] : [])),
);

const isFree = ({ key, text }: TextField): boolean =>
  !(key in namesOther) && !(key in ids) && !(key.endsWith('attributes.<name>') && choices.has(text));

interface Planted {
  readonly book: Book;
  readonly planted: readonly Source[];
}

/** The Book of the demo with something put behind every text that is free. */
function plant(phrase: (text: string, key: string) => string): {
  readonly book: Book;
  readonly planted: readonly Source[];
} {
  const planted = demo.map((source) => {
    const body = `${recordOf(source)}.(prose)`;
    return withValues(
      source,
      textFields(source)
        .filter(isFree)
        .map(({ key, path, text }) => [path, phrase(text, key)] as const),
      `\n\n${phrase('Beneath.', body)}\n\n<!-- trades -->\n${phrase('For trades.', body)}\n<!-- /trades -->\n`,
    );
  });
  const { book, problems } = demoOf(planted, '2026-04-23');
  if (!book) throw new Error(printProblems(problems, { color: false, outcome: '' }));
  return { book, planted };
}

/** The data of all handouts of a Book. */
const dataOf = (book: Book): string => JSON.stringify(book.trades.map((trade) => makeHandout(book, trade)));

/** All that handouts of a Book say: data of all trades; pages, names of files and what is printed of two of them. */
async function saidOf(book: Book): Promise<string> {
  const handouts = book.trades.map((trade) => makeHandout(book, trade));
  const shown = handouts.filter(({ cover }) => shownTrades.includes(cover.trade.slug));
  const files = [...(await handoutFolders(shown))].filter(([path]) => !path.includes('/assets/'));
  return [
    JSON.stringify(handouts),
    ...files.flatMap(([path, content]) => [path, String(content)]),
    JSON.stringify(shown.map(makeHandoutSheets)),
  ].join('\n');
}

const shownTrades = ['finish-carpentry', 'drywall'];

/** The keys of what is found, by their numbers. */
const keysFound = (text: string, form: RegExp): readonly string[] =>
  [...new Set([...text.matchAll(form)].map((found) => keys[Number(found[1] ?? found[2]) - 100] ?? ''))].toSorted();

/** As it was written, as an address has it, and in an id that is made of a name. */
const sums = /91(?:,|%2C|&#44;)?(\d{3})\.47|for-91-?(\d{3})-47/giu;
const secrets = /zqx(\d{3})z/giu;
const words = /wqy(\d{3})z/giu;

/** The keys whose lines `check` names, all of them or those of errors. */
function keysTold({ book, planted }: Planted, form: RegExp, isError = false): readonly string[] {
  const lines = new Map(planted.map(({ path, text }) => [path, text.split('\n')]));
  const told = handoutProblems(book).filter(({ severity }) => !isError || severity === 'error');
  return keysFound(told.map(({ file, at }) => lines.get(file)?.[at.line - 1]).join('\n'), form);
}

/** What handouts carry, and `check` does not tell of: it stands in a caution, in words that the program made around it. */
const untold = ['house.match.name', 'house.match.why'];

describe('whatever text of a record', () => {
  const money = plant((text, key) => `${text} for ${sum(key)}`);
  const marked = plant((text, key) => {
    const its = number(key);
    return `${text} Wqy${its}z <!-- builder -->Zqx${its}z<!-- /builder -->`;
  });
  let said: { readonly money: string; readonly marked: string };
  beforeAll(async () => {
    // Pages and print are made of that data alone: whether they say more is asked once.
    said = { money: await saidOf(money.book), marked: dataOf(marked.book) };
  });

  test('is planted: a key without a text would be passed over', () => {
    const planted = new Set(
      money.planted.flatMap(textFields).flatMap(({ key, text }) => (text.match(sums) ? [key] : [])),
    );
    const reached = keysFound(money.planted.map(({ text }) => text).join('\n'), sums);
    const missed = keys.filter((key) => !planted.has(key) && !reached.includes(key) && !(key in ids));
    expect(missed, 'put them into the house above').toEqual([]);
    expect(keys.length).toBeGreaterThan(140);
  });

  test('speaks of money: no handout shows it', () => {
    const refused = keysTold(money, sums, true);
    expect(keysFound(said.money, sums).filter((key) => !refused.includes(key))).toEqual([]);
    // An id is made of the name of a part; with such a name nothing is made.
    expect(keysFound(said.money, sums)).toEqual(['ceiling.name', 'floor.name', 'room.voids.name']);
  });

  test('is for the builder: no handout shows it', () => {
    const refused = keysTold(marked, secrets, true);
    expect(keysFound(said.marked, secrets).filter((key) => !refused.includes(key))).toEqual([]);
  });

  test('is carried: check tells of it where it speaks of money', () => {
    const carried = keysFound(said.marked, words);
    const told = keysTold(money, sums);
    expect(carried.filter((key) => !told.includes(key))).toEqual(untold);
    // Nothing of these, whatever it says.
    const never =
      /private|alternative|price-list|allowance|care$|quoted|withdrawn|chosen-by|released|milestone\.note|photo|people\.name/u;
    expect(carried.filter((key) => never.test(key))).toEqual([]);
    expect(carried.length).toBeGreaterThan(60);
  });
});
