import { expect, test } from 'vitest';
import type { Convention } from '../../src/core/model/index.js';
import { countsWords, poolCounts, resolvePlaces, takeOff } from '../../src/core/takeoff/index.js';
import { fromFeet, fromInches } from '../../src/base/units/index.js';
import { category, option, room, selection } from './room.js';

const waste10 = [{ waste: { amount: 10, scale: 2 } }];

function ceiling(rule: Partial<Convention>, attributes: Parameters<typeof option>[1]) {
  const at = selection('ceiling');
  const chosen = option(waste10, attributes);
  const { takeoffs } = takeOff(
    { selection: at, category: category('area', rule), measure: room },
    resolvePlaces(at, room).places,
    chosen,
  );
  return { takeoffs, house: poolCounts(category('area', rule).measure, chosen, [...takeoffs, ...takeoffs]) };
}

const length = (inches: number) => ({ text: '', value: { kind: 'length', length: fromInches(inches) } }) as const;
const numeric = (number: number) => ({ text: String(number), value: { kind: 'number', number } }) as const;

test("paint by the option's own coats: 224 sq ft × 3 coats and 10 % at 350 sq ft are 2.112 gallons; the house buys 5", () => {
  const { takeoffs, house } = ceiling(
    { counted: 'gallons', timesBy: 'coats' },
    { coverage: numeric(350), coats: numeric(3) },
  );
  expect(takeoffs[0]?.factors).toEqual([{ times: 3, why: 'coats of One' }]);
  expect(takeoffs[0]?.required).toBeCloseTo(739.2, 9);
  expect(takeoffs[0]?.counts?.[0]?.amount).toBeCloseTo(2.112, 9);
  expect(house.map(({ unit, whole }) => [unit, whole])).toEqual([['gal', 5]]);
});

test('boards 1x8 with a face of 6 3/4": 12 / 6.75 lin ft and 8 / 6.75 board ft for a square foot', () => {
  const { takeoffs, house } = ceiling(
    { counted: 'boards' },
    { face: length(6.75), nominal: { text: '1x8', value: { kind: 'text', text: '1x8' } } },
  );
  const [lineal, boardFeet] = takeoffs[0]?.counts ?? [];
  expect(lineal?.amount).toBeCloseTo((246.4 * 12) / 6.75, 9);
  expect(boardFeet?.amount).toBeCloseTo((246.4 * 8) / 6.75, 9);
  expect(countsWords(house)).toBe('876.1 lin ft, 584.1 board ft');
});

test('sheets 4 by 8 or 4 by 12: 448 sq ft are 14 or 10, and 10 % makes 16 or 11', () => {
  const stock = { text: '', value: { kind: 'lengths', lengths: [fromFeet(8), fromFeet(12)] } } as const;
  const { house } = ceiling({ counted: 'sheets' }, { face: length(48), stock });
  expect(countsWords(house)).toBe(`16 sheets 4'-0" × 8'-0" or 11 sheets 4'-0" × 12'-0"`);
});

test('without the attribute there is nothing to count by', () => {
  expect(ceiling({ counted: 'gallons' }, {}).takeoffs[0]?.counts).toBeUndefined();
});
