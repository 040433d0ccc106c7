import { expect } from 'vitest';
import { boardFeet, nominalInches } from '../../../src/core/feature/timber/board-feet.js';
import { measured } from '../../measure/measured.js';
import { flat, len, size } from '../../measure/room-record.js';
import { published } from '../published.js';

const cases = [
  {
    pieces: 1,
    thick: 1,
    wide: 10,
    long: 10,
    feet: 100 / 12,
    source: 'NAVEDTRA 14044 ch. 2 fig. 2-12, http://constructionmanuals.tpub.com/14044/css/Designs-62.htm',
  },
  // The text also prints 19.26, from 6.42 × 3: a factor rounded on the way.
  {
    pieces: 1,
    thick: 1,
    wide: 7,
    long: 33,
    feet: 19.25,
    source: 'NAVEDTRA 14044 ch. 2 fig. 2-12, http://constructionmanuals.tpub.com/14044/css/Designs-62.htm',
  },
  {
    pieces: 8,
    thick: 1,
    wide: 4,
    long: 14,
    feet: 37 + 1 / 3,
    source: 'Army EN5155 p. 1-28, http://armyengineer.tpub.com/EN5155/EN51550039.htm',
  },
  {
    pieces: 1,
    thick: 6,
    wide: 8,
    long: 16,
    feet: 64,
    source:
      'Griffith, Carpentry (1916) sec. 77, https://chestofbooks.com/home-improvement/woodworking/Ira-S-Griffith/Carpentry/77-Estimating-Lumber-Quantities.html',
  },
  { pieces: 1, thick: 4, wide: 6, long: 10, feet: 20, source: 'elmwoodreclaimedtimber.com, workshop math' },
];
for (const { pieces, thick, wide, long, feet, source } of cases) {
  published(
    {
      what: `${pieces} of ${thick}x${wide}, ${long} ft: ${Math.round(feet * 100) / 100} board feet`,
      source,
      mark: 'S',
    },
    () => {
      expect(pieces * boardFeet(thick, wide, long)).toBeCloseTo(feet, 10);
    },
  );
}

published(
  {
    what: 'stock under 1 in. counts as 1 in.',
    source: 'Griffith, Carpentry (1916) sec. 77; PS 20 definition',
    mark: 'S',
  },
  () => {
    expect(boardFeet(0.75, 12, 10)).toBe(10);
  },
);

const boards: [string, number][] = [
  [`1 1/2"`, 2],
  [`3 1/2"`, 4],
  [`5 1/2"`, 6],
  [`7 1/4"`, 8],
  [`9 1/4"`, 10],
  [`11 1/4"`, 12],
];
for (const [dressed, nominal] of boards) {
  published(
    { what: `dressed ${dressed} is nominal ${nominal}`, source: 'WWPA coverage estimator, rows Boards', mark: 'S' },
    () => {
      expect(nominalInches(len(dressed))).toBe(nominal);
    },
  );
}

published(
  {
    what: '3/4 x 5-1/2 is a 1x6, 3-1/2 square a 4x4',
    source: 'SPIB on PS 20 sizes, https://blog.spib.org/category/lumber-size-categories/',
    mark: 'S',
  },
  () => {
    expect([len(`3/4"`), len(`5 1/2"`), len(`3 1/2"`)].map(nominalInches)).toEqual([1, 6, 4]);
  },
);

published({ what: 'timbers: 5-1/2 is a 6, 9-1/2 a 10', source: 'PS 20 Table 3', mark: 'M' }, () => {
  expect([len(`5 1/2"`), len(`9 1/2"`)].map(nominalInches)).toEqual([6, 10]);
});

published(
  {
    what: 'a 6x8 of 16 ft as a feature of a room: 64 board feet',
    source: 'Griffith, Carpentry (1916) sec. 77',
    mark: 'S',
  },
  () => {
    const beam = {
      kind: 'timber',
      id: 'beam',
      name: 'Beam',
      count: 1,
      length: `16'`,
      width: `5 1/2"`,
      depth: `7 1/2"`,
    };
    const { features } = measured({ shape: size(`20'`, `16'`), ceiling: flat(`9'`), features: [beam] });
    expect(features[0]?.facts).toContainEqual({ label: 'Board feet', text: '64 bd ft' });
  },
);

published(
  {
    what: '1 m³ of actual volume is 423.776 board feet',
    source: 'NIST SP 811 App. B: 1 ft³ = 0.028316846592 m³, times 12',
    mark: 'C',
  },
  () => {
    const { volume } = measured({ shape: size('1 m', '1 m'), ceiling: flat('1 m') });
    expect(boardFeet(12, 12, 1) * volume).toBeCloseTo(423.776, 3);
  },
);
