import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { lookUp } from '../../src/core/book/index.js';
import { rowsOf, plainWords, nothing } from '../../src/sheet/index.js';
import { backing, placesOf, tradeTables } from '../../src/table/index.js';
import { readRecords } from '../../src/core/records/index.js';
import { tradeDigests } from '../../src/signoff/index.js';
import { smallBook, smallFiles } from '../book/small-house.js';

const carpentry = 'content/trades/carpentry.md';

interface TradeSchema {
  readonly properties: { readonly schedules: { readonly items: { readonly enum: readonly string[] } } };
}

test('a trade may ask for the tables that there are for trades, and for no other', () => {
  const schema = JSON.parse(readFileSync('schemas/trade.schema.json', 'utf8')) as TradeSchema;
  expect(schema.properties.schedules.items.enum).toEqual(Object.keys(tradeTables));
});

test('a schedule that is not known is a problem that names one near it', () => {
  const files = smallFiles({ [carpentry]: [['name: Carpentry\n', 'name: Carpentry\nschedules: [dors]\n']] });
  expect(readRecords(files).problems).toMatchObject([{ file: carpentry, fix: "did you mean 'doors'?" }]);
});

test('which schedules a handout has is no part of what a trade agreed to', () => {
  const asking = smallBook({ [carpentry]: [['name: Carpentry\n', 'name: Carpentry\nschedules: [doors]\n']] });
  expect(asking.trades[0]?.schedules).toEqual(['doors']);
  expect(tradeDigests(asking)).toEqual(tradeDigests(smallBook()));
});

test('backing: what products of one trade need of another, and where', () => {
  const book = smallBook({
    'content/trades/framing.md':
      '---\nname: Framing\ncontact: Framer\nsections: ["06 10 00"]\ncarries:\n  - { id: strips, what: Strips }\n---\n',
    'content/options/floor/pine.md': [
      ['---\n', '---\nneeds:\n  - { id: strips, what: Nailing strips, by: framing, before: trim }\n'],
    ],
  });
  const rows = rowsOf(backing.lay(lookUp(book)));
  const said = rows.map(({ cells }) =>
    ['what', 'products', 'places', 'before'].map((key) => plainWords(cells[key] ?? nothing)),
  );
  expect(said).toMatchObject([['Nailing strips', /Pine/, '101 Floor', 'Trim']].map((row) => row.map(matching)));
  expect(rowsOf(backing.layFor(lookUp(book), 'carpentry', (text) => text))).toEqual([]);
});

function matching(said: string | RegExp): unknown {
  return typeof said === 'string' ? said : expect.stringMatching(said);
}

test.each([
  ['Chimney breast and Chimney breast, Hearth riser', 'Chimney breast and Hearth riser'],
  [
    'Shower north and shower east walls, Shower niche, Back and Shower niche, Sides, head and sill',
    'Shower north and shower east walls, Shower niche, Back and Sides, head and sill',
  ],
  ['North, east, south and west walls and Ceiling', 'North, east, south and west walls and Ceiling'],
  ['Doors D05 to D07', 'Doors D05 to D07'],
])('a thing is named once: %s', (placeText, said) => {
  expect(placesOf({ placeText })).toBe(said);
});
