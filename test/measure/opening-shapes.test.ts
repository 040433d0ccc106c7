import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { measureRoom } from '../../src/core/measure/index.js';
import type { OpeningShape } from '../../src/core/model/index.js';
import { grown, openingArea, outlineOf, shapeWords, sidesOf, springingOf } from '../../src/core/opening/index.js';
import { feet, type Length } from '../../src/base/units/index.js';
import { measured, problemsOf, regionArea, told, wall } from './measured.js';
import { flat, len, opening, pitch, room, size } from './room-record.js';

const round: OpeningShape = { is: 'round' };
const arch = (rise: string): OpeningShape => ({ is: 'arch', rise: len(rise) });
const byRadius = (radius: string): OpeningShape => ({ is: 'arch', radius: len(radius) });
const rake = (low: 'left' | 'right', to: string): OpeningShape => ({ is: 'rake', low, to: len(to) });

/** Wall of 12' by 9' with one window in it. */
const withWindow = (sizes: string, shape: OpeningShape, sill = `2'`, at = `3'`) =>
  measured({
    shape: size(`12'`, `10'`),
    ceiling: flat(`9'`),
    openings: [opening('W1', 'window', 'north', at, sizes, { sill: len(sill), shape })],
  });

const inches = (least: number, most: number) =>
  fc
    .integer({ min: least * 16, max: most * 16 })
    .map((sixteenths) => Math.round((sixteenths * 25_400_000) / 16) as Length);

/** Segment by its rise in the other usual form: r²·acos((r − h)/r) − (r − h)·√(2rh − h²); its arc is 2r·acos((r − h)/r). */
function segment(wide: number, rise: number): { area: number; arc: number } {
  const r = (wide * wide) / (8 * rise) + rise / 2;
  const turn = Math.acos((r - rise) / r);
  return { area: r * r * turn - (r - rise) * Math.sqrt(2 * r * rise - rise * rise), arc: 2 * r * turn };
}

describe('what a shape takes off its wall is the closed form, and so is the area of the outline that is laid around', () => {
  test('a round window: πr²', () => {
    fc.assert(
      fc.property(inches(6, 72), (width) => {
        const measure = measured({
          shape: size(`12'`, `10'`),
          ceiling: flat(`9'`),
          openings: [
            opening('W1', 'window', 'north', `3'`, `1' x 1'`, { width, height: width, sill: len(`1'`), shape: round }),
          ],
        });
        const north = wall(measure, 'north');
        const circle = (Math.PI * feet(width) ** 2) / 4;
        expect(north.net).toBeCloseTo(12 * 9 - circle, 6);
        expect(regionArea(north.regions)).toBeCloseTo(12 * 9 - circle, 6);
        expect(measure.openings[0]?.areaOnWall).toBeCloseTo(circle, 6);
      }),
    );
  });

  test('an arch of any rise: the rectangle under it and a segment', () => {
    fc.assert(
      fc.property(
        inches(12, 72),
        inches(36, 84),
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        (width, height, share) => {
          const rise = Math.max(1, Math.round((width / 2) * share)) as Length;
          const measure = measured({
            shape: size(`12'`, `10'`),
            ceiling: flat(`9'`),
            openings: [
              opening('W1', 'window', 'north', `3'`, `1' x 1'`, {
                width,
                height,
                sill: len(`1'`),
                shape: { is: 'arch', rise },
              }),
            ],
          });
          const area = feet(width) * (feet(height) - feet(rise)) + segment(feet(width), feet(rise)).area;
          expect(measure.openings[0]?.area).toBeCloseTo(area, 6);
          expect(wall(measure, 'north').net).toBeCloseTo(12 * 9 - area, 6);
          expect(regionArea(wall(measure, 'north').regions)).toBeCloseTo(12 * 9 - area, 6);
          expect(sidesOf({ width, height, shape: { is: 'arch', rise } }).head).toBeCloseTo(
            segment(feet(width), feet(rise)).arc,
            6,
          );
        },
      ),
    );
  });

  test('no corner of a curve lies outside of the opening’s width and height, or 1/64" off the curve', () => {
    fc.assert(
      fc.property(inches(12, 72), fc.double({ min: 0.05, max: 1, noNaN: true }), (width, share) => {
        const rise = Math.round((width / 2) * share) as Length;
        const r = feet(width) ** 2 / (8 * feet(rise)) + feet(rise) / 2;
        const height = (rise + len(`3'`)) as Length;
        for (const { x, y } of outlineOf({ width, height, shape: { is: 'arch', rise } })) {
          expect(x).toBeGreaterThanOrEqual(-1e-9);
          expect(x).toBeLessThanOrEqual(feet(width) + 1e-9);
          expect(y).toBeLessThanOrEqual(feet(height) + 1e-9);
          if (y > 3 + 1e-6) {
            const off = Math.hypot(x - feet(width) / 2, y - (feet(height) - r)) - r;
            expect(Math.abs(off)).toBeLessThan(Math.max(1, r / 3) / 64 / 12);
          }
        }
      }),
    );
  });
});

describe('by hand', () => {
  test(`a half-round window of 3'-0" by 5'-0": 3 × 3.5 and half a circle of 1'-6"`, () => {
    const measure = withWindow(`3' x 5'`, arch(`1'-6"`));
    // 10.5 + π·2.25/2 = 14.034
    expect(measure.openings[0]?.area).toBeCloseTo(14.0343, 4);
    expect(wall(measure, 'north').net).toBeCloseTo(108 - 14.0343, 4);
    const sides = sidesOf(measure.openings[0]!);
    expect(sides).toMatchObject({ left: 3.5, right: 3.5, sill: 3 });
    expect(sides.head).toBeCloseTo(Math.PI * 1.5, 9);
  });

  test(`a flat arch over 6'-0", radius 5'-0": it rises 1'-0" of its height`, () => {
    // 5 − √(25 − 9) = 1; angle 2·asin(3/5) = 1.287; arc 6.435; segment 25·(1.287 − 0.96)/2 = 4.0875.
    const form = { width: len(`6'`), height: len(`7'`), shape: byRadius(`5'`) };
    expect(springingOf(form)).toBe(len(`6'`));
    expect(sidesOf(form).head).toBeCloseTo(6.435, 3);
    expect(openingArea(form)).toBeCloseTo(36 + 4.0876, 3);
    expect(openingArea({ ...form, shape: arch(`1'`) })).toBeCloseTo(openingArea(form), 9);
  });

  test(`a lunette: an arch that rises from its sill has no legs`, () => {
    const form = { width: len(`4'`), height: len(`2'`), shape: arch(`2'`) };
    expect(openingArea(form)).toBeCloseTo(2 * Math.PI, 9);
    expect(sidesOf(form)).toMatchObject({ left: 0, right: 0, sill: 4 });
    expect(wall(withWindow(`4' x 2'`, arch(`2'`)), 'north').net).toBeCloseTo(108 - 2 * Math.PI, 6);
  });

  test(`a raked head from 5'-0" to 8'-0" over 4'-0" is 5'-0" long, and 26 sq ft lie under it`, () => {
    const form = { width: len(`4'`), height: len(`8'`), shape: rake('left', `5'`) };
    expect(sidesOf(form)).toEqual({ head: 5, left: 5, right: 8, sill: 4 });
    expect(openingArea(form)).toBe(26);
    expect(shapeWords(form)).toBe(`raked, 5'-0" at the left`);
  });

  test('around an arch by so much, its circle is wider by that and its crown higher', () => {
    const around = grown({ width: len(`6'`), height: len(`7'`), shape: byRadius(`5'`) }, len(`6"`));
    expect(around).toEqual({ width: len(`7'`), height: len(`8'`), shape: byRadius(`5'-6"`) });
    // A head of 3:4 moves 6" square to itself: 7 1/2" up, and 4 1/2" more or less at sides that are 6" further out; 6" at the sill.
    const raked = grown({ width: len(`4'`), height: len(`8'`), shape: rake('left', `5'`) }, len(`6"`));
    expect(raked).toEqual({ width: len(`5'`), height: len(`9'-6"`), shape: rake('left', `5'-9"`) });
  });
});

describe('from the other room', () => {
  test('a raked head falls to the other side, with the same area', () => {
    const own = room({
      slug: 'hall',
      shape: size(`12'`, `10'`),
      ceiling: flat(`9'`),
      openings: [opening('D1', 'door', 'north', `3'`, `3' x 7'`, { to: 'attic', shape: rake('left', `5'`) })],
    });
    const { value } = measureRoom(
      room({
        slug: 'attic',
        shape: size(`12'`, `10'`),
        ceiling: { form: 'shed', low: { x: 1, y: 0 }, plate: len(`4'`), pitch: pitch('12/12') },
        openings: [{ by: 'seen', mark: 'D1', recordedIn: 'hall', wall: 'south', at: len(`6'`), path: [] }],
      }),
      { rooms: new Map([['hall', own]]) },
    );
    const seen = value?.openings[0];
    expect(seen?.shape).toEqual(rake('right', `5'`));
    expect(seen?.area).toBe(18);
    // Seen from inside, the left end of the south wall is in the east, where the ceiling is low: 4' and 12" for each foot.
    expect(wall(value!, 'south').net).toBeCloseTo(12 * 10 - 18, 6);
  });
});

describe('what does not fit', () => {
  const under = (one: ReturnType<typeof opening>) =>
    told(
      problemsOf({
        shape: size(`12'`, `10'`),
        ceiling: { form: 'gable', ridge: { x: 0, y: 1 }, plate: len(`8'`), pitch: pitch('6/12') },
        openings: [one],
      }),
    );

  test('a rake that follows the ceiling passes; the same one turned round does not', () => {
    const fits = opening('W1', 'window', 'north', `1'`, `4' x 8'`, { sill: len(`2'-6"`), shape: rake('left', `6'`) });
    expect(under(fits)).toEqual([]);
    expect(under({ ...fits, shape: rake('right', `6'`) })).toEqual([
      `opening-above-ceiling at openings.0.height: W1, raked, 6'-0" at the right, is 2'-0" over the ceiling at 1'-0" from the left end of wall 'north'`,
    ]);
  });

  test('a round window fits into a peak where the corners of a square one would not', () => {
    // The ceiling is 11' at the middle and falls 6" a foot: a circle of 2' about a centre 1'·√1.25 = 1.118' below touches it.
    const high = opening('W1', 'window', 'north', `5'`, `2' x 2'`, { sill: len(`8'-10 1/2"`), shape: round });
    expect(under(high)).toEqual([]);
    expect(under({ ...high, sill: len(`9'`) })).toEqual([
      expect.stringMatching(
        /^opening-above-ceiling at openings\.0\.height: W1, round, is 1 \d+\/\d+" over the ceiling at /u,
      ),
    ]);
  });

  test('the crown of an arch against a level ceiling', () => {
    const arched = opening('D1', 'door', 'north', `2'`, `3' x 8'`, { shape: arch(`1'`) });
    const inRoom = (height: string) =>
      told(problemsOf({ shape: size(`12'`, `10'`), ceiling: flat(height), openings: [arched] }));
    expect(inRoom(`8'`)).toEqual([]);
    expect(inRoom(`7'-10"`)).toEqual([expect.stringContaining(`D1, arched, rise 1'-0", is 2" over the ceiling at`)]);
  });

  test('two round windows may stand as close as circles do', () => {
    const pair = (at: string, sill: string) =>
      told(
        problemsOf({
          shape: size(`12'`, `10'`),
          ceiling: flat(`9'`),
          openings: [
            opening('W1', 'window', 'north', `2'`, `2' x 2'`, { sill: len(`2'`), shape: round }),
            opening('W2', 'window', 'north', at, `2' x 2'`, { sill: len(sill), shape: round }),
          ],
        }),
      );
    // Centres 1.5' apart each way: 2.12' from each other.
    expect(pair(`3'-6"`, `3'-6"`)).toEqual([]);
    expect(pair(`3'-4"`, `3'-4"`)).toEqual([
      expect.stringContaining('openings-overlap at openings.1.at: W2 overlaps W1'),
    ]);
  });
});
