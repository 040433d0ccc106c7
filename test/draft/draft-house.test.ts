import fc from 'fast-check';
import { beforeAll, expect, it, test } from 'vitest';
import type { Source } from '../../src/core/model/index.js';
import { composeBook, measureFiles } from '../../src/disk/load/index.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { draftHouse, readAnswers, readName, readRoomLine, readRooms, roomsOfLines } from '../../src/draft/index.js';
import { inLocale } from '../../src/base/units/index.js';

let demo: readonly Source[] = [];
beforeAll(async () => {
  demo = (await readHouseFolder('.')).files;
});

const usual = {
  name: 'A',
  place: 'B',
  units: 'feet',
  currency: 'USD',
  zone: '',
  sum: '',
  owner: 'C',
  builder: 'D',
  ceiling: "9'",
  start: '2026-06-01',
};

function drafted(typed: typeof usual, lines: readonly string[]): readonly Source[] {
  const house = readAnswers(typed);
  if (!house.ok) throw new Error(JSON.stringify(house.refused));
  const { rooms, refused } = readRooms(lines, house.answers.locale);
  expect(refused).toEqual([]);
  return draftHouse(
    house.answers,
    { rooms: roomsOfLines(rooms, house.answers.ceiling), levels: [] },
    demo,
    '2026-03-02',
  );
}

function problemsOf(files: readonly Source[]): ReturnType<typeof composeBook>['problems'] {
  return composeBook(measureFiles(files.filter(({ path }) => path.startsWith('content/'))), '2026-03-02').problems;
}

const aName = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 24 }).filter((text) => readName(text).ok);
const feet = fc
  .integer({ min: 1, max: 499 })
  .map((inches) => `${Math.floor(inches / 12)}'-${inches % 12}"`)
  .filter((text) => text !== `0'-0"`);
const metres = fc.integer({ min: 1, max: 9999 }).map((mm) => `${mm} mm`);

test('whatever is answered, the house has no errors', { timeout: 240_000 }, () => {
  const house = fc.record({
    names: fc.uniqueArray(aName, {
      minLength: 5,
      maxLength: 9,
      selector: (name) => name.trim().replace(/\s+/gu, ' ').toLowerCase(),
    }),
    metric: fc.boolean(),
    currency: fc.constantFrom(...Intl.supportedValuesOf('currency')),
    zone: fc.constantFrom('', 'unknown', '5A', '8'),
    sum: fc.nat(90_000_000).map(String),
    start: fc
      .integer({ min: 0, max: 20_000 })
      .map((day) => new Date(Date.UTC(2000, 0, 1 + day)).toISOString().slice(0, 10)),
    feet: fc.array(feet, { minLength: 10, maxLength: 10 }),
    metres: fc.array(metres, { minLength: 10, maxLength: 10 }),
  });
  fc.assert(
    fc.property(house, ({ names, metric, currency, zone, sum, start, ...sizes }) => {
      const [name = '', place = '', owner = '', builder = '', ...rooms] = names;
      const sides = metric ? sizes.metres : sizes.feet;
      const lines = rooms.map((room, index) => `${room} ${sides[index * 2]} x ${sides[index * 2 + 1]}`);
      const typed = {
        name,
        place,
        // A name of a person has a letter at least.
        owner: `A ${owner}`,
        builder: `B ${builder}`,
        zone,
        sum,
        start,
        currency,
        units: metric ? 'metres' : 'feet',
        ceiling: metric ? '2.5 m' : "9'",
      };
      const files = drafted(typed, lines);
      expect(problemsOf(files).filter(({ severity }) => severity === 'error')).toEqual([]);
      const kept = inLocale({ units: metric ? 'metric' : 'customary', currency }, () => readName(name));
      const record = files.find(({ path }) => path === 'content/house.md')?.text ?? '';
      expect(measureFiles([...files.filter(({ path }) => path.startsWith('content/'))]).house?.records.house.name).toBe(
        kept.ok && kept.value,
      );
      expect(record).toContain(`currency: ${currency}`);
    }),
    { numRuns: 25 },
  );
});

it('takes conventions over, and nothing of the demo house', () => {
  const files = drafted(usual, ["Kitchen 14' x 12'", "Bath 8' x 6'"]);
  const all = files.map(({ text }) => text).join('\n');
  expect(all).not.toMatch(/Larch Hollow|great room|primary bath|Zone 6B|2614|Alder|2x6 studs/iu);
  expect(files.some(({ path }) => path.startsWith('content/options/'))).toBe(false);
});

it('says nothing in feet, pounds or dollars in a metric house', () => {
  const files = drafted({ ...usual, units: 'metres', currency: 'EUR', ceiling: '2.5 m' }, ['Kitchen 4.2 x 3.6 m']);
  const records = files.filter(({ path }) => /content\/(?:house|rooms|categories)/u.test(path));
  // The name of a fact is the schema's, whatever it is counted in.
  for (const { path, text } of records.map((one) => ({ ...one, text: one.text.replace('r-per-inch:', '') })))
    expect(`${path}: ${/.*(?:sq ft|\bft\b|\bfeet\b|\binch|\blb\b|\bgal\b|\$).*/iu.exec(text)?.[0] ?? ''}`).toBe(
      `${path}: `,
    );
});

it('tells what is to be filled in, and what is missing once', () => {
  const codes = problemsOf(drafted(usual, ["Kitchen 14' x 12'", "Bath 8' x 6'", "Den 9' x 9'"])).map(
    ({ code }) => code,
  );
  expect(codes.filter((code) => code === 'amount-zero')).toHaveLength(6);
  expect(codes.filter((code) => code === 'option-missing')).toHaveLength(7);
  expect(codes.filter((code) => code === 'room-apart')).toHaveLength(1);
});

it.each([
  [`Kitchen 14' x 12'`, 'Kitchen', `14' x 12'`, 'kitchen'],
  [`Bath 2 8' x 10'`, 'Bath 2', `8' x 10'`, 'bath'],
  [`Bedroom 2, 12'-6 1/2" x 11 ft`, 'Bedroom 2', `12'-6 1/2" x 11 ft`, 'bedroom'],
  ['Den 14 x 12 ft as study', 'Den', '14 ft x 12 ft', 'study'],
  ['Salon 4.2 x 3.6 m', 'Salon', '4.2 m x 3.6 m', undefined],
  ['台所 3 m x 4 m', '台所', '3 m x 4 m', undefined],
])('reads %s', (line, name, size, use) => {
  expect(readRoomLine(line)).toEqual({ ok: true, value: { name, size, ...(use !== undefined && { use }) } });
});
