import { expect } from 'vitest';
import { stoneFlats, withWaste } from '../../../src/core/takeoff/arithmetic/index.js';
import { loadHouse } from '../../../src/disk/load/index.js';
import { weigh } from '../../../src/core/book/weigh.js';
import type { Option } from '../../../src/core/model/index.js';
import { resolvePlaces, takeOff, type Takeoff } from '../../../src/core/takeoff/index.js';
import { fromFeet, type Area } from '../../../src/base/units/index.js';
import { published } from '../published.js';

published({ what: '40 ft of corners stand for 20 sq ft of flats', source: 'https://nevilstone.com', mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.5)).toBeCloseTo(180, 9);
});

const other = 'https://luxurystoneproducts.com/helpfultools';
published({ what: 'at another maker a foot of corner stands for 0.75 sq ft', source: other, mark: 'S' }, () => {
  expect(stoneFlats(200 as Area, fromFeet(40), 0.75)).toBeCloseTo(170, 9);
});

published(
  { what: 'four walls of 50 by 10 ft: 2,000 sq ft, with 10 % 2,200', source: 'https://quarrymill.com', mark: 'S' },
  () => {
    expect(withWaste(stoneFlats((4 * 50 * 10) as Area, fromFeet(0), 0), 0.1)).toBeCloseTo(2200, 9);
  },
);

/** The demo house's breast in cast ledge, by hand from its measure: the area that is covered, with corners of 0.75 sq ft a foot within it.
 *  Lath and mortar go under all of it: 80 lb for 9 sq ft and 10 % waste. */
published(
  {
    what: 'mortar and weight of a breast by what is covered: 27 bags, where the flats alone would take 23',
    source: 'worked by hand from the records of the demo house',
    mark: 'C',
  },
  async () => {
    const { takeoffs, option } = await breastIn('cast-ledge');
    const [flats, corners] = takeoffs;
    const area = flats?.places.reduce((sum, { gross, adjustments }) => {
      const off = adjustments.filter(({ what }) => what !== 'Corner pieces');
      return off.reduce((rest, { amount }) => rest + amount, sum + gross);
    }, 0);
    expect(flats?.covered).toBeCloseTo(area ?? 0, 9);
    expect(flats?.net).toBeCloseTo((area ?? 0) - (corners?.net ?? 0) * 0.75, 9);
    const bags = (covered: number) => Math.ceil((covered * 80 * 1.1) / 9 / 80);
    expect([bags(flats?.covered ?? 0), bags(flats?.net ?? 0)]).toEqual([27, 23]);
    const mortar = flats?.supplies?.find(({ what }) => what === 'Scratch and setting mortar');
    expect(Math.ceil((mortar?.required ?? 0) / 80)).toBe(27);
    // Setting mortar 4.5, lath and scratch coat 5.
    expect(weigh(option, takeoffs)).toBeCloseTo((area ?? 0) * ((option.weight?.pounds ?? 0) + 9.5), 6);
  },
);

async function breastIn(slug: string): Promise<{ takeoffs: readonly Takeoff[]; option: Option }> {
  const { house } = await loadHouse('.');
  const room = house?.records.rooms.find((one) => one.slug === 'great-room');
  const measure = house?.measures.get('great-room');
  const selection = room?.selections.find(({ category }) => category === 'stone-facing');
  const category = house?.records.categories.find((one) => one.slug === 'stone-facing');
  const option = house?.records.options.find((one) => one.slug === slug);
  if (!measure || !selection || !category || !option) throw new Error('the demo house has a breast with stone');
  const { places } = resolvePlaces(selection, measure);
  return { takeoffs: takeOff({ selection, category, measure }, places, option).takeoffs, option };
}
