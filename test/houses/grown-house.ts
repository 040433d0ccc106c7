import { join } from 'node:path';
import { readHouseFolder } from '../../src/disk/store/index.js';

/** Rooms of the demo that hang together by doors: one apartment of a grown house. */
const rooms = ['primary-hall', 'primary-bedroom', 'primary-bath', 'primary-closet'];

/** Of each of these products, known by its name in the demo, every apartment has one of its own. */
const ownOptions = [
  'paint/matte-tallow',
  'paint/eggshell-juniper',
  'tile/plain-wall-3x9',
  'tile/handmade-look-4x4',
  'tile/porcelain-plain-12x12',
];

/** Selections of each apartment, those that the house's closets have in common among them. */
export const selectionsOfApartment = 53;

/**
 * Records (path → text) of a house of so many apartments, which grows in all that a house has: rooms, selections, options, milestones, open choices, accepted
 * cautions, and what an alternative chooses. What apartments have in common (boards, floors, doors, the allowances) is bought together, so that orders
 * and joint decisions grow too. Made of the demo's records, so that each convention measures and each rule looks.
 */
export async function grownHouse(apartments: number): Promise<ReadonlyMap<string, string>> {
  const { files } = await readHouseFolder(join(import.meta.dirname, '..', '..'));
  const demo = new Map(files.map(({ path, text }) => [path, text]));
  const textOf = (path: string): string => {
    const text = demo.get(path);
    if (text === undefined) throw new Error(`the demo has no ${path}`);
    return text;
  };
  const all = Array.from({ length: apartments }, (_, index) => index + 1);
  const own = all.flatMap((apartment): readonly (readonly [string, string])[] => [
    ...rooms.map(
      (slug) => [`content/rooms/${slug}-${apartment}.md`, room(textOf(`content/rooms/${slug}.md`), apartment)] as const,
    ),
    ...ownOptions.map(
      (id) => [`content/options/${id}-${apartment}.md`, option(textOf(`content/options/${id}.md`), apartment)] as const,
    ),
  ]);
  const common = [...demo].filter(([path]) => /^content\/(?:categories|trades|options)\//.test(path));
  const whole: readonly (readonly [string, string])[] = [
    ['content/house.md', house(textOf('content/house.md'), all)],
    ['content/alternatives/plainer.md', alternative],
  ];
  return new Map([...common, ...whole, ...own]);
}

/** Each has a milestone to itself, and its pocket door accepted. */
function house(demo: string, all: readonly number[]): string {
  const milestones = all.map((n) => `  - { id: walk-${n}, name: Walk through ${n}, after: trim, days: ${n % 9} }\n`);
  const cautions = all.map(
    (n) =>
      `  - { accept: jamb-depth/primary-bedroom-${n}/D06-${n}, by: Project manager, on: 2026-03-26, why: Made to fit. }\n`,
  );
  return edit(demo, [
    [/^studs:/m, `${milestones.join('')}studs:`],
    [/^cautions:\n[^]*?^(?=finish-sets:)/m, `cautions:\n${cautions.join('')}`],
    [/^match:\n[^]*?^(?=private:)/m, ''],
    [/^picture: .*\n/m, ''],
    [/^ {2}- \{ id: (?:upper), .*\n/m, ''],
  ]);
}

function room(demo: string, apartment: number): string {
  const ids = ownOptions.map((id) => id.split('/')[1]);
  return edit(demo, [
    [
      / recorded-in: entry, wall: east, at: [^}]*(?= })/,
      ` kind: door, wall: east, at: 3'-1 1/2", width: 3'-0", height: 8'-0", to: outside, hinge: left, swing: primary-hall`,
    ],
    [/^number: "(\d+)"/m, `number: "${apartment}-$1"`],
    [/^name: (.*)$/m, `name: $1 ${apartment}`],
    [/\b([DW]\d\d)\b/g, `$1-${apartment}`],
    [new RegExp(`\\b(${[...rooms, ...ids].join('|')})\\b`, 'g'), `$1-${apartment}`],
    // What walls and tile get is open in each.
    [/(?<=category: (?:paint|tile)\n(?: {4}.*\n)* {4}considering: .*\n) {4}chosen: .*\n(?: {4}chosen-.*\n)*/g, ''],
  ]);
}

function option(demo: string, apartment: number): string {
  return edit(demo, [[/^((?:name|model): .*)$/gm, `$1 ${apartment}`]]);
}

/** One for the whole house, which chooses something in every room. */
const alternative = `---
name: Plainer
by: Project manager
on: 2026-04-16
choices: { primary-bedroom-1/paint/walls: matte-tallow-1 }
throughout: { casing: flat-poplar-3-1-2, base-trim: flat-poplar-5-1-2 }
---

As the contract has it.
`;

function edit(text: string, edits: readonly (readonly [RegExp, string])[]): string {
  return edits.reduce((done, [from, to]) => done.replace(from, to), text);
}
