import { describe, expect, it } from 'vitest';
import { cases } from './cases.js';
import { toldOf } from './small-house.js';

const study = 'content/rooms/study.md';
const foyer = 'content/rooms/foyer.md';
const house = 'content/house.md';
const fir = 'content/options/ceiling-board/fir-tg-1x6.md';

describe('what the schema has against a record', () => {
  cases(study, [
    ['use: study', 'use: studdy', `rooms/study.md:5:6 value-unknown 'use' cannot be 'studdy' | did you mean 'study'?`],
    [
      'level: main',
      'levle: main',
      `rooms/study.md:4:1 key-unknown there is no key 'levle' here | did you mean 'level'?`,
    ],
    ['level: main\n', '', `rooms/study.md:2:1 key-missing the record lacks 'level' | level: level it is on`],
    [
      `"102"`,
      '102',
      `rooms/study.md:3:9 value-type 'number': expected a text, got the number 102 | write it in quotes: "102"`,
    ],
    [
      `width: 3'-0"`,
      'width: 3',
      `rooms/study.md:10:61 value-type 'width': expected a length such as 14'-6", got the number 3 | write 3' for feet, 3" for inches or 3 mm`,
    ],
    [`width: 3'-0"`, `width: 0"`, `rooms/study.md:10:61 length-unreadable '0"' is no size | write more than 0`],
    [
      `kind: door`,
      `kind: cased, glass: plain`,
      `rooms/study.md:10:38 door-fact D01 is neither window nor door, and says 'glass' | leave it out, or write kind: window`,
    ],
    [`at: 3'-0"`, `at: -3'-0"`, `rooms/study.md:10:47 length-unreadable '-3'-0"' is less than nothing`],
    [
      `height: 6'-8"`,
      `hieght: 6'-8"`,
      `rooms/study.md:10:68 key-unknown there is no key 'hieght' here | did you mean 'height'?`,
    ],
    [
      'form: gable',
      'form: gabel',
      `rooms/study.md:8:18 value-unknown 'form' cannot be 'gabel' | did you mean 'gable'?`,
    ],
    ['form: gable, ', '', `rooms/study.md:8:1 key-missing 'ceiling' lacks 'form' | form: form of the ceiling`],
    [
      'pitch: 6/12',
      'pitch: 6',
      `rooms/study.md:8:64 value-type 'pitch': expected a pitch such as 6/12, got the number 6 | did you mean 6/12?`,
    ],
    [
      'waste: 12 %',
      'waste: 12',
      `rooms/study.md:23:12 value-type 'waste': expected a percentage such as 15 %, got the number 12 | did you mean 12 %?`,
    ],
    [
      'kind: built-in',
      'kind: built-on',
      `rooms/study.md:13:13 feature-kind-unknown there is no kind of feature 'built-on' | did you mean 'built-in'?`,
    ],
    [
      `depth: 1'-8"`,
      `dept: 1'-8"`,
      `rooms/study.md:13:91 key-unknown there is no key 'dept' here | did you mean 'depth'?`,
    ],
    [
      `ceiling: { form: gable, ridge: east-west, plate: 8'-0", pitch: 6/12 }`,
      'ceiling: 9',
      `rooms/study.md:8:10 value-type 'ceiling': expected a ceiling such as flat 9'-0" or a group of keys or a list, got the number 9 | write { form: …, … }, where form is one of flat, shed, gable, hip, planes`,
    ],
    [
      `ceiling: { form: gable, ridge: east-west, plate: 8'-0", pitch: 6/12 }`,
      `ceiling: 9'-0"`,
      `rooms/study.md:8:10 ceiling-unreadable '9'-0"' is not a ceiling | did you mean flat 9'-0"?`,
    ],
  ]);
  cases(house, [
    [
      '$9,800',
      '-$9,800',
      `house.md:25:13 money-unreadable '-$9,800' is less than nothing | write an amount of $0 or more`,
    ],
    [
      '$9,800',
      '9800',
      `house.md:25:13 value-type 'amount': expected an amount of money or a rate such as $9,800 or $6.50 / sq ft, got the number 9800 | did you mean $9,800?`,
    ],
    [
      '2026-05-04',
      '2026-02-30',
      `house.md:34:48 day-unreadable '2026-02-30' is no day: February 2026 has 28 days | check the month and the day`,
    ],
    [
      'markup: false',
      'markup: no',
      `house.md:16:18 value-type 'credit-markup': expected true or false, got 'no' | write false`,
    ],
    [
      '  credit-markup: false\n',
      '',
      `house.md:10:1 key-missing 'contract' lacks 'credit-markup' | credit-markup: mark-up that returns with a credit: false for none, true for as much as would have been added, or a rate of its own`,
    ],
    [
      'covers: [material, tax]',
      'covers: material',
      `house.md:26:13 value-type 'covers': expected a list, got 'material' | write a list, such as [material]`,
    ],
    [
      'covers: [material, tax]',
      'covers: []',
      `house.md:26:13 list-short 'covers' needs at least 1 entry | write one, or leave the key out where it may be absent`,
    ],
    [
      'covers: [material, tax]',
      'covers: [tax, tax]',
      `house.md:26:19 entry-twice 'covers' has the same entry twice | keep one of the two`,
    ],
  ]);
  cases(fir, [
    [
      `face: 6 3/4", `,
      '',
      `options/ceiling-board/fir-tg-1x6.md:2:7 (warning) option-draft a draft: it does not tell its face (face coverage) (for the layouts and the take-off) | write attributes: { face: … }`,
    ],
    [
      'grade: clear',
      'grade: clean',
      `options/ceiling-board/fir-tg-1x6.md:14:68 value-unknown 'grade' cannot be 'clean' | did you mean 'clear'?`,
    ],
    [
      'grade: clear',
      'grad: clear',
      `options/ceiling-board/fir-tg-1x6.md:14:61 key-unknown there is no key 'grad' here | did you mean 'grade'?`,
    ],
    [
      'nominal: 1x8',
      'nominal: 18',
      `options/ceiling-board/fir-tg-1x6.md:14:24 value-type 'nominal': expected a text, got the number 18 | write it in quotes: "18"`,
    ],
    [
      `[8', 10']`,
      `[8', 10]`,
      `options/ceiling-board/fir-tg-1x6.md:14:55 value-type 'stock': expected a length such as 14'-6", got the number 10 | write 10' for feet, 10" for inches or 10 mm`,
    ],
    [
      'lead: 6 weeks',
      'lead: 6',
      `options/ceiling-board/fir-tg-1x6.md:11:7 value-type 'lead': expected a time such as 30 days or 6 weeks, got the number 6 | did you mean 6 days?`,
    ],
    [
      '"#b98a5a"',
      'red',
      `options/ceiling-board/fir-tg-1x6.md:17:37 text-form 'red' is not a color | write it in quotes as "#rrggbb", such as "#b98a5a"`,
    ],
    [
      'price: {',
      'prize: {',
      `options/ceiling-board/fir-tg-1x6.md:6:1 key-unknown there is no key 'prize' here | did you mean 'price'?`,
    ],
  ]);
});

describe('what does not fit together in one record', () => {
  cases(study, [
    [
      `size: 14'-0" x 12'-6"\nopen: { east: foyer }\n`,
      '',
      `rooms/study.md:1:1 shape-missing the room has no shape | write size: 24'-0" x 18'-6", or walls, or outline`,
    ],
    [
      ', pitch: 6/12',
      '',
      'rooms/study.md:8:10 ceiling-rise the gable does not say how it rises | write pitch, or ridge-height',
    ],
    [
      ', pitch: 6/12',
      `, ridge-height: 7'`,
      `rooms/study.md:8:71 ceiling-rise the ridge at 7' is not above the plate at 8'-0" | heights are above the floor`,
    ],
    [
      '2026-03-02',
      '2026-03-02\n    ordered: { on: 2026-03-01, option: fir-tg-1x6 }',
      'rooms/study.md:22:20 (warning) date-order ordered on 2026-03-01, before it was chosen on 2026-03-02 | check both days',
    ],
    [
      '    chosen: fir-tg-1x6\n',
      '',
      'rooms/study.md:20:5 date-without-choice chosen on a day, but nothing is chosen | write chosen, or leave the day out',
    ],
    [
      `id: bench`,
      'id: north',
      `rooms/study.md:13:27 feature-duplicate 'north' is the name of a wall here | give the feature another name`,
    ],
    [
      `id: bench`,
      'id: floor',
      `rooms/study.md:13:27 name-reserved 'floor' is the word for a place in every room | give the feature another name`,
    ],
  ]);
  cases(fir, [
    [
      'labor: $4.10 / sq ft',
      'labor: $4.10 / lin ft',
      'options/ceiling-board/fir-tg-1x6.md:6:42 unit-differs labor is for lin ft, material for sq ft | price both for the same unit',
    ],
    [
      '24 sq ft',
      '24 lin ft',
      'options/ceiling-board/fir-tg-1x6.md:7:30 unit-differs the pack holds lin ft, the price is for sq ft | say how many sq ft it holds',
    ],
    [
      '2.1 lb / sq ft',
      '2.1 lb / each',
      'options/ceiling-board/fir-tg-1x6.md:12:9 unit-differs the weight is for each, the price for sq ft | say the weight of one sq ft',
    ],
  ]);
  cases(house, [
    [
      ', days: 40',
      '',
      `house.md:35:5 milestone-when milestone 'drywall' does not say when it is | write date, or after and days`,
    ],
    [
      '2026-07-10',
      '2026-07-01',
      'house.md:31:37 date-order 2026-07-01 is before 2026-07-03 | the first day closed comes first',
    ],
  ]);
});

describe('a walk that does not close', () => {
  const north = `{ name: north, go: east, run: 18'-0" }`;
  cases(foyer, [
    // 18'-0" less 17'-8 1/2" is 3 1/2".
    [
      north,
      `{ name: north, go: east, run: 17'-8 1/2" }`,
      `rooms/foyer.md:7:5 walk-open the walls do not close: 3 1/2" short going east | a run of 18'-0" here, or 3 1/2" less on 'south', closes it`,
    ],
    [
      'go: south',
      'go: west',
      `rooms/foyer.md:8:5 walk-open the walls do not close: 10'-0" short going east and 10'-0" short going south | going south here closes it`,
    ],
    // Just under a sixteenth is what a tape can be read to; a sixteenth is not.
    [north, `{ name: north, go: east, run: 18'-1/32" }`],
    [
      north,
      `{ name: north, go: east, run: 18'-1/16" }`,
      `rooms/foyer.md:9:5 walk-open the walls do not close: 1/16" short going west | a run of 18'-0 1/16" here, or 1/16" less on 'north', closes it`,
    ],
  ]);

  it('names two walls when it misses both ways', () => {
    const told = toldOf(
      [foyer, `east, run: 18'-0"`, `east, run: 17'-0"`],
      [foyer, `south, run: 10'-0"`, `south, run: 11'-0"`],
    );
    expect(told).toEqual([
      `rooms/foyer.md:7:5 walk-open the walls do not close: 1'-0" short going east and 1'-0" short going north | a run of 18'-0" here, or 1'-0" less on 'south', and on 'west' a run of 11'-0", or 1'-0" less on 'east', closes it`,
    ]);
  });
});
