import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { byCause, printProblems, type Problem } from '../../src/base/problem/index.js';
import { recordReader } from '../../src/core/records/index.js';

/** The demo house broken in one place at a time, as people break records: each slip is told in words for people, where it is, and once. */

const root = join(import.meta.dirname, '../..');
const demo: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(join(root, 'content'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.md'))
    .map((path) => [`content/${path}`, readFileSync(join(root, 'content', path), 'utf8')]),
);

const read = recordReader();
const told = (files: Readonly<Record<string, string>>): readonly Problem[] =>
  read(Object.entries(files).map(([path, text]) => ({ path, text }))).problems;
const nameOf = ({ file, code, message }: Problem): string => `${file} ${code} ${message}`;
/** Notices and warnings that the demo has as it is. */
const usual = new Set(told(demo).map(nameOf));

/** A text in place of another in one record; `undefined` takes the record away. */
type Slip = readonly [path: string, from: string | RegExp, to: string] | readonly [path: string, gone: undefined];

function problemsOf(...slips: readonly Slip[]): readonly Problem[] {
  const files: Record<string, string> = { ...demo };
  for (const slip of slips) {
    const [path, from, to = ''] = slip;
    const before = files[path] ?? '';
    if (from === undefined) {
      delete files[path];
      continue;
    }
    const after = before.replace(from, () => to);
    if (after === before) throw new Error(`${path} has no ${String(from)}`);
    files[path] = after;
  }
  return told(files).filter((problem) => !usual.has(nameOf(problem)));
}

const house = 'content/house.md';
const study = 'content/rooms/study.md';
const stair = 'content/rooms/stair-hall.md';
const oak = 'content/options/floor/white-oak-solid-5.md';
const ledge = 'content/options/stone-facing/cast-ledge.md';
const floor = 'content/categories/floor.md';
const trim = 'content/trades/finish-carpentry.md';
const name = /^name: /mu;
const broken = 'name: "';

/** What is broken, the slips, where the first problem is, with its code, and how many causes are told. */
type Broken = readonly [what: string, slips: readonly Slip[], first: string, causes?: number];

const houses: readonly Broken[] = [
  ['a room that does not parse, named by others', [[stair, name, broken]], `${stair} yaml-broken "Stair hall`],
  [
    'an option that does not parse, chosen in many rooms',
    [[oak, name, broken]],
    `${oak} yaml-broken "White oak, solid, 5`,
  ],
  ['a category that does not parse', [[floor, name, broken]], `${floor} yaml-broken "Floor`],
  [
    'a category of every room that does not parse',
    [['content/categories/paint.md', name, broken]],
    `content/categories/paint.md yaml-broken "Paint`,
  ],
  ['a trade that does not parse', [[trim, name, broken]], `${trim} yaml-broken "Finish carpentry`],
  ['a house record that does not parse', [[house, name, broken]], `${house} yaml-broken "Larch Hollow`],
  ['no house record', [[house, undefined]], `${house} house-missing`],
  ['an option that is gone', [[oak, undefined]], `content/house.md option-unknown white-oak-solid-5`],
  ['a trade that is gone', [[trim, undefined]], `content/categories/base-trim.md trade-unknown finish-carpentry`, 2],
  ['a misspelt required key', [[study, 'level: main', 'levle: main']], `${study} key-unknown levle: main`],
  ['a required key by another word', [[study, 'level: main', 'storey: main']], `${study} key-unknown storey: main`],
  ['misspelt openings', [[stair, 'openings:', 'openigns:']], `${stair} key-unknown openigns:`],
  ['misspelt selections', [[stair, 'selections:', 'selectons:']], `${stair} key-unknown selectons:`],
  ['misspelt features', [[stair, 'features:', 'featrues:']], `${stair} key-unknown featrues:`],
  ['misspelt levels', [[house, 'levels:', 'levles:']], `${house} key-unknown levles:`],
  ['misspelt allowances', [[house, 'allowances:', 'allowence:']], `${house} key-unknown allowence:`],
  ['misspelt milestones', [[house, 'milestones:', 'milestons:']], `${house} key-unknown milestons:`],
  ['misspelt attributes of a category', [[floor, 'attributes:', 'atributes:']], `${floor} key-unknown atributes:`],
  ['misspelt families of a category', [[floor, 'families:', 'familys:']], `${floor} key-unknown familys:`],
  [
    'a level of another id',
    [[house, '{ id: main,', '{ id: ground,']],
    `content/rooms/coat-closet.md level-unknown main`,
  ],
  ['a level without an id', [[house, '{ id: main, ', '{ ']], `${house} key-missing { name: Main level,`],
  [
    'levels that are words',
    [[house, /levels:\n(?: {2}.*\n)+/u, 'levels: [main, upper]\n']],
    `${house} value-type main, upper]`,
  ],
  [
    'a milestone of another id',
    [[house, 'id: drywall,', 'id: boards,']],
    `content/categories/ceiling-board.md milestone-unknown drywall`,
    1,
  ],
  ['another currency', [[house, 'currency: USD', 'currency: EUR']], `${house} money-unreadable $1,486,000`],
  [
    'a room of another case',
    [
      ['content/rooms/kitchen.md', undefined],
      ['content/rooms/Kitchen.md', '', demo['content/rooms/kitchen.md'] ?? ''],
    ],
    'content/rooms/Kitchen.md slug-form',
  ],
  [
    'an option that is a text file',
    [
      [oak, undefined],
      [oak.replace('.md', '.txt'), '', demo[oak] ?? ''],
    ],
    `${oak.replace('.md', '.txt')} file-unknown`,
  ],
  [
    'a conflict of a merge',
    [[study, 'level: main', '<<<<<<< HEAD\nlevel: main\n=======\nlevel: upper\n>>>>>>> site']],
    `${study} merge-conflict <<<<<<< HEAD`,
  ],
  [
    'half of a conflict',
    [[study, 'level: main', 'level: main\n=======\nlevel: upper']],
    `${study} merge-conflict =======`,
  ],
  ['tabs throughout', [[study, /^ {4}/gmu, '\t']], `${study} yaml-tab 	category: insulation`],
  ['a no-break space after a colon', [[study, 'level: main', 'level:\u00a0main']], `${study} yaml-space  main`],
  [
    'typographic quotes',
    [[oak, '["#caa97d", "#bd9b6e"]', '[“#caa97d”, “#bd9b6e”]']],
    `${oak} yaml-quote “#caa97d”, “#bd9b6e”],`,
  ],
  ['a comma before decimals', [[oak, '$7.90', '$7,90']], `${oak} yaml-comma $7,90 / sq ft, labor:`],
  ['a comma between thousands', [[oak, '$7.90', '$1,790']], `${oak} yaml-comma $1,790 / sq ft, labor:`],
  ['a remark for a note', [[study, 'note: Calls', 'note: #1 Calls']], `${study} yaml-remark note: #1 Calls are made`],
  [
    'a colon in a text',
    [[study, 'note: Calls are', 'note: Calls: are']],
    `${study} yaml-broken Calls: are made in here.`,
  ],
  [
    'an apostrophe between single quotes',
    [[study, 'note: Calls are made in here.', `note: 'It's for calls.'`]],
    `${study} yaml-broken s for calls.'`,
  ],
  ['a key twice', [[study, 'level: main', 'level: main\nlevel: main']], `${study} key-duplicate level: main`],
  [
    'no end of the front matter',
    [[study, '---\n\nA working', '\nA working']],
    `${study} front-matter-open     chosen-by: The`,
  ],
  [
    'a day of another order',
    [[study, 'chosen-on: 2026-03-27', 'chosen-on: 3/27/2026']],
    `${study} day-unreadable 3/27/2026`,
  ],
  [
    'a printed name for an option',
    [[study, 'standard: white-oak-solid-5', 'standard: White oak, solid, 5 inch']],
    `${study} text-form White oak, solid, 5 inch`,
  ],
  [
    'a printed name for a room',
    [[study, 'recorded-in: stair-hall', 'recorded-in: Stair hall']],
    `${study} text-form Stair hall, wall: east,`,
  ],
  ['a place in capitals', [[study, '- at: floor', '- at: Floor']], `${study} place-unknown Floor`],
  [
    'places that are no list',
    [[study, '- at: [walls, ceiling]', '- at: walls, ceiling']],
    `${study} place-unknown walls, ceiling`,
  ],
  ['a price that is no group', [[oak, /^price: .*/mu, 'price: $7.90 / sq ft']], `${oak} value-type $7.90 / sq ft`],
  [
    'a price where parts replace it',
    [[ledge, /parts:\n(?: {2}.*\n)+/u, 'price: $24 / sq ft\n']],
    `${ledge} parts-unsuited price: $24 / sq ft`,
  ],
  [
    'parts where there is one price',
    [[oak, /^price: .*/mu, 'parts: $7.90 / sq ft']],
    `${oak} parts-unsuited parts: $7.90 / sq ft`,
  ],
  [
    'a part for another unit',
    [[ledge, 'material: $8.40 / sq ft', 'material: $8.40 / lin ft']],
    `${ledge} unit-unsuited $8.40 / lin ft, labor:`,
  ],
  [
    'walls that are lengths',
    [[study, /walls:\n(?: {2}- .*\n)+/u, `walls: [14', 12', 14', 12']\n`]],
    `${study} value-type 14', 12', 14', 12']`,
  ],
  [
    'attributes that are a text',
    [[oak, /attributes:\n(?: {2}.*\n)+/u, 'attributes: solid oak\n']],
    `${oak} value-type solid oak`,
  ],
  ['yes for true', [[house, /credit-markup: .*/u, 'credit-markup: yes']], `${house} value-type yes`],
];

/** Words of schemas and of the program, which say nothing to whoever keeps a record. */
const jargon =
  /must (?:match|be|have|NOT)|oneOf|anyOf|additionalProp|propertyNames|instancePath|schema|undefined|\[object|NaN|null|regex|pattern '|TypeError|\bat .*\.ts:/u;

describe.each(houses.map(([what, slips, first, causes = 1]) => ({ what, slips, first, causes })))(
  '$what',
  ({ slips, first, causes }) => {
    const problems = problemsOf(...slips);
    const printed = printProblems(problems, { color: false });

    it('is told where it is', () => {
      const [one] = problems;
      const text = one?.excerpt?.slice(one.at.column - 1) ?? '';
      expect(`${one?.file} ${one?.code} ${text}`).toContain(first);
    });

    it('is told once', () => {
      expect(byCause(problems).map(([one]) => one && nameOf(one))).toHaveLength(causes);
    });

    it('is told in words for people, with what to do', () => {
      expect(printed).not.toMatch(jargon);
      expect(problems.filter(({ fix }) => fix === undefined).map(nameOf)).toEqual([]);
      expect(printed.split('\n').filter((line) => line.length > 400)).toEqual([]);
    });
  },
);

it('is told with all others at once', () => {
  const apart = houses.filter(([, slips]) => slips.length === 1 && slips[0]?.[0] !== house);
  const files = [...new Set(apart.map(([, slips]) => slips[0]?.[0]))];
  const together = files.flatMap((file) => apart.find(([, slips]) => slips[0]?.[0] === file)?.[1] ?? []);
  const codes = problemsOf(...together).map(({ file }) => file);
  expect(together.length).toBeGreaterThan(5);
  for (const [path] of together.filter(([, from]) => from !== undefined)) expect(codes).toContain(path);
});
