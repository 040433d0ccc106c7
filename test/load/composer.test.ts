import { expect, test } from 'vitest';
import { composeBook, makeComposer, measureFiles } from '../../src/disk/load/index.js';
import { smallFiles, type Edits } from '../book/small-house.js';

const study = 'content/rooms/study.md';
const board = 'content/options/ceiling-board/fir-tg-1x6.md';
const day = '2026-04-20';

const den = (width: string): string => `---
name: Den
number: "102"
level: main
use: study
size: 9'-0" x 9'-0"
ceiling: flat 8'-0"
openings:
  - { mark: D02, kind: door, wall: east, at: 3'-0", width: ${width}, height: 6'-8", to: study, hinge: left, swing: den }
---
`;
const seen: readonly [string, string] = [
  'to: outside }\nselections:',
  'to: outside }\n  - { mark: D02, wall: west, at: 3\'-0", recorded-in: den }\nselections:',
];
const laid: readonly [string, string] = [
  'considering: [pine-shiplap-1x8, fir-tg-1x6]',
  'considering: [pine-shiplap-1x8, fir-tg-1x6]\n    chosen: fir-tg-1x6',
];

/** Houses that differ from each other in what one record takes from another. */
const houses: Readonly<Record<string, Edits>> = {
  'as it is': {},
  'another choice': { [study]: [['chosen: pine', 'chosen: oak']] },
  'boards laid out': { [study]: [laid] },
  'the same boards in other lengths': { [study]: [laid], [board]: [[`[8', 10', 12']`, `[14']`]] },
  'a door that another room records': { [study]: [seen], 'content/rooms/den.md': den(`3'-0"`) },
  'that door made wider over there': { [study]: [seen], 'content/rooms/den.md': den(`4'-0"`) },
  'the room over there gone': { [study]: [seen] },
  'an attribute that no category knows any more': {
    'content/categories/ceiling-board.md': [['  stock: { label: Stock lengths, kind: lengths, required: true }\n', '']],
  },
  'dearer terms': { 'content/house.md': [['overage-markup: 15 %', 'overage-markup: 20 %']] },
};

test('what a run keeps of one house never shows in another', () => {
  const composer = makeComposer();
  const broken = new Set<string>();
  for (const [what, edits] of [...Object.entries(houses), ...Object.entries(houses).reverse()]) {
    const files = smallFiles(edits);
    const kept = composer.compose(composer.read(files), day);
    expect(JSON.stringify(kept), what).toBe(JSON.stringify(composeBook(measureFiles(files), day)));
    if (!kept.book) broken.add(what);
  }
  expect([...broken].sort()).toEqual(['an attribute that no category knows any more', 'the room over there gone']);
});

test('a house priced without its Book comes to what its Book says', () => {
  const composer = makeComposer();
  for (const [what, edits] of Object.entries(houses)) {
    const house = composer.read(smallFiles(edits));
    const { book } = composer.compose(house, day);
    const priced = composer.price(house);
    expect(priced === undefined, what).toBe(book === undefined);
    if (!book || !priced) continue;
    expect(priced.money, what).toEqual({
      today: book.money.today,
      sharedPacks: book.money.sharedPacks,
      netChange: book.money.netChange,
      onNet: book.money.onNet,
      allowances: book.money.allowances,
    });
    const told = book.selections.map(({ id, counted, change }) => ({ id, counted, change }));
    expect(
      priced.selections.map(({ id, counted, change }) => ({ id, counted, change })),
      what,
    ).toEqual(told);
  }
});

test('records and measures that two houses share are made once', () => {
  const composer = makeComposer();
  const terms: Edits = { 'content/house.md': [['overage-markup: 15 %', 'overage-markup: 20 %']] };
  const [one, other] = [{}, terms].map((edits) => composer.read(smallFiles(edits)).house);
  expect(other?.records.rooms[0]).toBe(one?.records.rooms[0]);
  expect(other?.records.options.every((option, index) => option === one?.records.options[index])).toBe(true);
  expect(other?.measures.get('study')).toBe(one?.measures.get('study'));
  expect(other?.records.house).not.toBe(one?.records.house);
});
