import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { stringify } from 'csv-stringify/sync';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Option, PriceList, Records, Source } from '../../../src/core/model/index.js';
import { readRecords } from '../../../src/core/records/index.js';
import { readHouseFolder } from '../../../src/disk/store/index.js';
import {
  differ,
  findColumns,
  gridOfText,
  orderedOptions,
  readProducts,
  writeList,
  type ListDifference,
} from '../../../src/draft/index.js';
import { inLocale, printDecimal, printRate, type Locale } from '../../../src/base/units/index.js';

const small = join(import.meta.dirname, '../../cases/small-house');
const cabin = join(import.meta.dirname, '../../houses/cabin');

interface Kept {
  readonly files: readonly Source[];
  readonly locale: Locale;
}

let [feet, metres]: Kept[] = [];
beforeAll(async () => {
  feet = { files: (await readHouseFolder(small)).files, locale: { units: 'customary', currency: 'USD' } };
  metres = { files: (await readHouseFolder(cabin)).files, locale: { units: 'metric', currency: 'EUR' } };
});

/** A house with the record of a price list and records changed. */
function houseWith({ files }: Kept, list: string, change: (file: Source) => string = ({ text }) => text): Records {
  const path = 'content/price-lists/mill.md';
  const { value, problems } = readRecords([
    ...files.map((file) => ({ path: file.path, text: change(file) })),
    { path, text: `---\n${list}\n---\n` },
  ]);
  if (!value) throw new Error(JSON.stringify(problems, null, 2));
  return value;
}

interface Taken {
  readonly difference: ListDifference;
  readonly written: readonly Source[];
}

function takeIn(records: Records, csv: string, on = '2026-04-20'): Taken {
  const [list] = records.priceLists as [PriceList];
  const category = records.categories.find(({ slug }) => slug === list.category);
  const grid = gridOfText(csv);
  const columns = grid.ok ? findColumns(grid.value, list) : grid;
  if (!category || !grid.ok || !columns.ok) throw new Error(JSON.stringify([grid, columns]));
  const products = readProducts(grid.value, columns.value, list, category);
  expect(products.problems).toEqual([]);
  const options = records.options.filter((option) => option.category === category.slug);
  const ordered = new Set(orderedOptions(records, category.slug).keys());
  const difference = differ(products, { list, category, root: 'content', options, ordered, on });
  const quoted = { on, by: list.name };
  return {
    difference,
    written: writeList(difference, { list, sources: records.sources, root: 'content', quoted, withdraw: true }),
  };
}

/** The list that a supplier of these options would send. */
function listOf(options: readonly Option[], { separator, comma }: { separator: string; comma: boolean }): string {
  const figure = (text: string): string => (comma ? text.replace('.', ',') : text);
  const rows = options.map(({ model, name, parts: [part], leadDays }) => {
    const rate = part ? printRate({ rate: part.material, unit: part.unit }) : '';
    const [, amount = '', unit = ''] = /([\d.,]+) \/ (.*)$/u.exec(rate) ?? [];
    const holds = part?.pack ? part.pack.holds * (unit === 'm²' ? 0.3048 ** 2 : 1) : '';
    return [
      model,
      name,
      figure(amount.replaceAll(',', '')),
      unit,
      figure(String(holds === '' ? '' : Number(holds.toFixed(6)))),
      leadDays,
    ];
  });
  return stringify([['No.', 'Product', 'Price', 'Unit', 'Pack', 'Days'], ...rows], { delimiter: separator });
}

const recordOf = (category: string, currency: string, decimals: string): string =>
  `name: Mill sales desk
category: ${category}
columns: { number: No., name: Product, price: Price, unit: Unit, pack: Pack, lead: Days }
decimals: ${decimals}
currency: ${currency}
lead-in: days
file-name: number
fixed: { pack-name: carton }`;

describe('a list written from options and taken in again', () => {
  const formats = fc.record({ separator: fc.constantFrom(',', ';', '\t'), comma: fc.boolean() });
  const cents = fc.integer({ min: 1, max: 9_999_999 });

  test('changes nothing in a house of feet', () => {
    fc.assert(
      fc.property(formats, cents, cents, fc.integer({ min: 1, max: 900 }), (format, oak, pine, weeks) => {
        const records = houseWith(
          feet!,
          recordOf('floor', 'USD', format.comma ? 'comma' : 'point'),
          ({ path, text }) =>
            path.includes('options/floor/')
              ? text
                  .replace('$10.00', `$${(oak / 100).toFixed(2)}`)
                  .replace('$4.00', `$${(pine / 100).toFixed(2)}`)
                  .replace('lead: 4 weeks', `lead: ${weeks} weeks\nquoted: { on: 2026-04-20, by: Mill sales desk }`)
              : text,
        );
        const options = records.options.filter(({ category }) => category === 'floor');
        const { difference, written } = takeIn(records, listOf(options, format));
        expect(difference).toMatchObject({ added: [], changed: [], gone: [], problems: [] });
        expect(difference.confirmed).toHaveLength(2);
        for (const { path, text } of written) expect(text).toBe(textOf(records, path));
      }),
      { numRuns: 60 },
    );
  });

  test('changes nothing in a house of metres and euros', () => {
    const { locale } = metres!;
    inLocale(locale, () => {
      fc.assert(
        fc.property(formats, cents, (format, price) => {
          const records = houseWith(
            metres!,
            recordOf('floor', 'EUR', format.comma ? 'comma' : 'point'),
            ({ path, text }) =>
              path.includes('options/floor/')
                ? text
                    .replace('€71,20', `€${(price / 100).toFixed(2)}`)
                    .replace('lead: ', 'quoted: { on: 2026-04-20, by: Mill sales desk }\nlead: ')
                : text,
          );
          const options = records.options.filter(({ category }) => category === 'floor');
          const { difference, written } = takeIn(records, listOf(options, format));
          expect(difference).toMatchObject({ added: [], changed: [], gone: [], problems: [] });
          for (const { path, text } of written) expect(text).toBe(textOf(records, path));
        }),
        { numRuns: 40 },
      );
    });
  });
});

function textOf({ sources }: Records, path: string): string | undefined {
  return sources.find((source) => source.path === path)?.text;
}

describe('what a list changes in a record', () => {
  const list = recordOf('floor', 'USD', 'point');
  const remarked = ({ path, text }: Source): string =>
    path.endsWith('oak.md')
      ? text
          .replace('price: {', '# Asked twice.\nprice: {  ')
          .replace(
            'waste: 5 %',
            'waste:   5 %   # as laid\nquoted: { on: 2026-01-05, by: Another desk, until: 2026-02-05 }',
          )
          .replaceAll('\n', '\r\n')
      : text;

  test('is that and no other byte, remarks and line ends included', () => {
    const records = houseWith(feet!, list, remarked);
    const { written } = takeIn(records, 'No.,Product,Price,Unit,Pack,Days\nOak-1,Oak,11.25,sf,22,20\n');
    const before = textOf(records, 'content/options/floor/oak.md')?.split('\r\n') ?? [];
    const [oak] = written.filter(({ path }) => path.endsWith('oak.md'));
    const after = oak?.text.split('\r\n') ?? [];
    expect(after.filter((line) => !before.includes(line))).toEqual([
      'price: {   material: $11.25 / sq ft, labor: $5.00 / sq ft }',
      'pack: { name: carton, holds: 22 sq ft }',
      // A last day that was another's goes with it.
      'quoted:',
      '  on: 2026-04-20',
      '  by: Mill sales desk',
    ]);
    expect(after).toHaveLength(before.length + 2);
  });

  test('is a reason beside what is gone, which stays', () => {
    const quoted = ({ path, text }: Source): string =>
      path.includes('options/floor/')
        ? text.replace('lead:', 'quoted: { on: 2026-01-05, by: Mill sales desk }\nlead:')
        : text;
    const records = houseWith(feet!, list, quoted);
    const { difference, written } = takeIn(records, 'No.,Product,Price,Unit,Pack,Days\nOak-1,Oak,10,sf,20,20\n');
    expect(difference.gone.map(({ slug }) => slug)).toEqual(['pine']);
    expect(written.find(({ path }) => path.endsWith('pine.md'))?.text).toContain(
      'withdrawn:\n  on: 2026-04-20\n  why: No longer in the price list of Mill sales desk of 20 April 2026.\n',
    );
    // What another supplier quoted is not gone.
    const others = houseWith(feet!, list, (file) => quoted(file).replace('by: Mill sales desk', 'by: Another desk'));
    expect(takeIn(others, 'No.,Product,Price,Unit,Pack,Days\nOak-1,Oak,10,sf,20,20\n').difference.gone).toEqual([]);
  });

  test('stands in no record that holds the price of an order, until its last invoice is in', () => {
    const ordered = ({ path, text }: Source): string =>
      path.endsWith('study.md')
        ? text.replace('    chosen: pine', '    chosen: pine\n    ordered: { on: 2026-04-01, option: pine }')
        : text;
    const csv = 'No.,Product,Price,Unit,Pack,Days\nPine-1,Pine strip,4.40,sf,20,30\n';
    const { difference, written } = takeIn(houseWith(feet!, list, ordered), csv);
    expect(difference.ordered.map(({ option }) => option.slug)).toEqual(['pine']);
    expect(written).toEqual([]);
  });

  test('is told of a record that it cannot be written into', () => {
    const later = ({ path, text }: Source): string =>
      path.endsWith('oak.md') ? text.replace('lead:', 'quoted: { on: 2026-05-04, by: Mill sales desk }\nlead:') : text;
    const { difference } = takeIn(
      houseWith(feet!, list, later),
      'No.,Product,Price,Unit,Pack,Days\nOak-1,Oak,10,ea,20,20\n',
    );
    expect(difference.problems.map(({ what }) => what)).toEqual([
      'its price is for each, that of content/options/floor/oak.md for sq ft',
      "content/options/floor/oak.md has a price of 2026-05-04, which is later than the list's day 2026-04-20",
    ]);
  });
});

test('the sizes of the small house are what these tests take them for', () => {
  const oak = readFileSync(join(small, 'content/options/floor/oak.md'), 'utf8');
  expect(oak).toContain('price: { material: $10.00 / sq ft, labor: $5.00 / sq ft }');
  expect(printDecimal({ amount: 1000, scale: 2 })).toBe('10');
});
