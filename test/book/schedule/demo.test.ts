import { describe, expect, test } from 'vitest';
import { lookUp } from '../../../src/core/book/index.js';
import { scheduleColumns } from '../../../src/core/model/index.js';
import { dataFile, dataTables } from '../../../src/table/index.js';
import { tableCsv } from '../../../src/write/index.js';
import { feet, fromFeet } from '../../../src/base/units/index.js';
import { demoBook } from '../../demo-house.js';

const book = await demoBook('2026-04-20');
const { finish, doors, openings, railings, timbers, stone, insulation, sound, hardware } = book.schedules;

describe('laws of the schedules, on the demo house', () => {
  test('a key is one option and an option one key, in the legend and in every cell', () => {
    const byKey = new Map(finish.legend.map(({ key, option }) => [key, option]));
    expect(byKey.size).toBe(finish.legend.length);
    expect(new Set(byKey.values()).size).toBe(finish.legend.length);
    const shown = finish.rows.flatMap(({ cells }) =>
      scheduleColumns.flatMap((column) => cells[column].flatMap(({ finishes }) => finishes)),
    );
    for (const { key, option } of shown) expect(key === undefined ? undefined : byKey.get(key)).toBe(option);
    expect(new Set(shown.flatMap(({ key }) => key ?? []))).toEqual(new Set(byKey.keys()));
  });

  test('every room is a row, and every opening of the house one row of one schedule', () => {
    expect(finish.rows.map(({ room }) => room)).toEqual(book.rooms.map(({ slug }) => slug));
    const own = book.rooms.flatMap(({ measure }) =>
      measure.openings.filter((each) => each.own).map(({ mark }) => mark),
    );
    expect([...doors, ...openings].map(({ mark }) => mark).sort()).toEqual(own.sort());
  });

  test('a door and its hardware set name each other', () => {
    const named = doors.flatMap(({ mark, hardware: own }) => (own?.set === undefined ? [] : [`${own.set} ${mark}`]));
    const naming = hardware.flatMap(({ set, doors: own }) => own.map(({ mark }) => `${set} ${mark}`));
    expect(named.sort()).toEqual(naming.sort());
  });

  test('insulation adds up to what is taken off', () => {
    const scheduled = insulation.reduce((sum, { area }) => sum + area, 0);
    const taken = book.selections.filter(({ category }) => category === 'insulation').flatMap(({ takeoff }) => takeoff);
    expect(scheduled).toBeCloseTo(
      taken.reduce((sum, { net }) => sum + net, 0),
      6,
    );
  });
});

describe('paint by room, surface and sheen', () => {
  const of = (room: string, surface: string) =>
    book.schedules.paint.filter((row) => row.room === room && row.surface === surface);

  // Three chords of 24 ft, 38" around: 228. The kitchen's beams under its ceiling on three sides: 54 ft × 24 1/2" = 110.25.
  test('timber on the sides that are seen', () => {
    expect(of('great-room', 'Exposed timber')[0]?.area).toBeCloseTo(228, 6);
    const [beams] = of('kitchen', 'Exposed timber');
    if (beams) expect(beams.area).toBeCloseTo(110.25, 6);
  });

  // D10: 2 × 2.5 × 8 = 40, and 1 3/8" around 21 ft, 2.40625; one pane of paint in the room that records it.
  test('a door once, both faces and its edges', () => {
    expect(of('kitchen', 'Interior door').map(({ area, sheen, coats }) => [area, sheen, coats])).toEqual([
      [expect.closeTo(42.40625, 6), 'satin', 2],
    ]);
    expect(of('pantry', 'Interior door')).toEqual([]);
  });

  // 10'-4" of rise by 3'-6": 36.17.
  test('parts of a stair: the oak risers that are chosen are clear as the treads are', () => {
    expect(of('stair-hall', 'Risers').map(({ area, paint }) => [area, paint])).toEqual([
      [expect.closeTo((124 / 12) * 3.5, 6), 'paint/clear-matte-oil-varnish'],
    ]);
    expect(of('stair-hall', 'Treads').map(({ paint }) => paint)).toEqual(['paint/clear-matte-oil-varnish']);
  });

  test('walls and ceilings are those that are taken off', () => {
    const taken = book.selections
      .filter(({ category, state }) => category === 'paint' && state !== 'open')
      .flatMap(({ takeoff }) => takeoff);
    const rows = book.schedules.paint.filter(
      ({ surface, standing }) => standing === 'chosen' && (surface === 'Walls' || surface === 'Ceiling'),
    );
    const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
    expect(sum(rows.map(({ area }) => area))).toBeCloseTo(sum(taken.map(({ net }) => net)), 6);
  });
});

describe('figures worked by hand', () => {
  // The dark bronze lever is on twelve doors: a pair (D02), six that pass (D03, D04, D07, D08, D15, D17), five that lock (D05, D13,
  // D16, D18, D19).
  test('hardware sets are one product in one function', () => {
    const lever = hardware.filter(({ option }) => option === 'door-hardware/dark-bronze-lever');
    expect(lever.map(({ function: locks, leaves, doors: own }) => [locks, leaves, own.length])).toEqual([
      ['passage', 'single', 6],
      ['privacy', 'single', 5],
      ['passage', 'pair', 1],
    ]);
    expect(lever[2]?.more.map(({ what, count }) => [what, count])).toEqual([
      ['Dummy trim for the second leaf', 1],
      ['Flush bolt', 2],
    ]);
  });

  // Doors of the joiner that swing: eight leaves of 8'-0" (D03, D04, D05, D07, D08, D10, D13, D15) with four each, a pair of them (D02)
  // with eight, four of 6'-8" (D16 to D19) with three each: 32 + 8 + 12 = 52. D03, D13 and D15 are open on the doors' allowance, which stands for them: 40 are counted today.
  test('hinges are bought once, with the doors', () => {
    expect(book.supplies.filter(({ what }) => what.startsWith('Hinges')).map(({ required }) => required)).toEqual([40]);
    const scheduled = doors
      .filter(({ hinges }) => hinges?.with === 'door')
      .reduce((sum, { hinges }) => sum + (hinges?.count ?? 0), 0);
    expect(scheduled).toBe(52);
    expect(hardware.map(({ holds }) => holds).join(' ')).not.toContain('hinges');
  });

  // Posts no more than 4 ft apart, and at both ends: 14 ft in 4 spaces, 12 ft in 3, 3'-6" in 1; the stair is 17.05 ft
  // along the slope, in 5. The corner of the well and the top of the stair are one post each: the side of the well has both.
  test('posts of the railing that stands for now', () => {
    expect(railings.rows.map(({ place, posts }) => [place, posts])).toEqual([
      ['stair', 5],
      ['edge', 5],
      ['well-edge', 4],
      ['foot-edge', 1],
    ]);
    expect(railings.rows.map(({ kind }) => kind)).toEqual(['rake', 'level', 'level', 'level']);
    expect(railings.posts).toBe(15);
  });

  // 24'-0" and 5 1/2" at each end: 24'-11", at 21 lb a foot 523.25 lb, the heaviest; 14'-11" and 7'-2" at 17 lb.
  test('timbers: the pieces as they are ordered, with one weight everywhere', () => {
    expect(timbers.map(({ place, count, pounds }) => [place, count, pounds])).toEqual([
      ['chords', 3, expect.closeTo(523.25, 6)],
      ['rafters', 6, expect.closeTo(253.5833, 4)],
      ['king-posts', 3, expect.closeTo(121.8333, 4)],
    ]);
    for (const id of new Set(timbers.map(({ timber }) => timber.selection))) {
      const own = timbers.filter(({ timber }) => timber.selection === id);
      const pounds = own.reduce((sum, { count, pounds: each = 0 }) => sum + count * each, 0);
      expect(book.selections.find((selection) => selection.id === id)?.pounds).toBeCloseTo(pounds, 6);
    }
    const facts = book.rooms.flatMap(({ measure }) => measure.features.flatMap((feature) => feature.facts));
    expect(facts.filter(({ label }) => label === 'Weight')).toEqual([]);
    // Six of 14'-11" from 16 ft; three of 7'-2" and two saw cuts, 21'-6 1/4", from one of 24 ft.
    expect(book.orders.find(({ option }) => option === 'exposed-timber/fir-8x10-free-of-heart')?.stock).toEqual([
      { length: fromFeet(16), count: 6 },
      { length: fromFeet(24), count: 1 },
    ]);
  });

  // 10'-4" in 17 risers over 10 1/2" goings
  test('rake of the stair', () => {
    expect(railings.rows[0]?.slope).toBeCloseTo(124 / 17 / 10.5, 6);
  });

  // The breast is 7 ft wide and 2 ft deep under the ridge of a gable: 14 + 12 × 8/12 = 22 ft at the middle and 2 ft 4 in
  // less at its sides. Its raised hearth, 7 ft by 1'-8" and 14 in high under a slab of 2 in, hides the foot of the front and of both
  // corners and has a riser of 12 in with corners of its own. Stone of 3/4 sq ft to a foot of corner is taken off.
  test('stone of the breast', () => {
    const corner = 22 - (3.5 * 8) / 12;
    const front = 7 * corner + (7 * (22 - corner)) / 2 - 3.5 * 3;
    const sides = 2 * 2 * corner;
    const riser = (7 + 2 * (20 / 12)) * 1;
    const faces = front - 7 * (14 / 12) + sides + riser;
    const corners = 2 * (corner - 14 / 12) + 2 * 1;
    expect(stone[0]?.corners).toBeCloseTo(corners, 6);
    expect(stone[0]?.flats).toBeCloseTo(faces - corners * 0.75, 6);
    // 10 lb / sq ft on faces, corners counted by what they cover, with 4.5 of setting mortar and 5 of lath and scratch coat
    expect(stone[0]?.pounds).toBeCloseTo(faces * 19.5, 0);
    expect(stone[0]?.poundsPerSqFt).toBeCloseTo(19.5, 9);
  });

  // Studs of 3 1/2" and the board on both sides: 1/2", or 5/8" where it is dense, in study, bunk room, upper hall and on the mudroom's west wall; 1/2"
  // more for the channel between bedroom and bath. Batts of 5 1/2" above a lower neighbour, as over coat closet and primary hall, are not at the door.
  test('walls at doors', () => {
    const walls = doors.flatMap(({ mark, jamb: { wall, reaches } }) =>
      wall === undefined ? [] : [[mark, feet(wall) * 12, reaches] as const],
    );
    expect(walls.filter(([, wall]) => wall !== 4.5)).toEqual([
      ['D02', 4.625, false],
      ['D06', 5, false],
      ['D13', 4.625, false],
      ['D16', 4.625, false],
      ['D17', 4.75, false],
      ['D18', 4.625, false],
      ['D19', 4.625, false],
    ]);
    expect(walls.filter(([, wall]) => wall === 4.5).map(([mark]) => mark)).toEqual([
      'D03',
      'D04',
      'D05',
      'D07',
      'D08',
      'D10',
      'D15',
    ]);
  });

  test('the wall between shower and pillow is rated with its channel', () => {
    expect(sound.find(({ room }) => room === 'primary-bath')).toMatchObject({ stc: 50, openings: ['D06'] });
  });
});

test('each schedule is a CSV file with a row for each of its rows', () => {
  const files = new Map(
    [...dataTables(lookUp(book))]
      .map(([name, table]) => [dataFile(name), tableCsv(table)] as const)
      .filter(([file]) => file.startsWith('schedule-')),
  );
  expect([...files.keys()]).toEqual([
    'schedule-finish.csv',
    'schedule-finish-keys.csv',
    'schedule-finish-remarks.csv',
    'schedule-doors.csv',
    'schedule-openings.csv',
    'schedule-hardware.csv',
    'schedule-railings.csv',
    'schedule-timbers.csv',
    'schedule-stone.csv',
    'schedule-insulation.csv',
    'schedule-sound-walls.csv',
    'schedule-paint.csv',
    'schedule-backing.csv',
  ]);
  const lines = (name: string) => files.get(name)?.trimEnd().split('\r\n').length;
  expect(lines('schedule-doors.csv')).toBe(doors.length + 1);
  expect(lines('schedule-finish.csv')).toBe(book.rooms.length + 1);
  const money = /\$|price|allowance|cents/i;
  for (const text of files.values()) expect(text).not.toMatch(money);
});
