import { describe, expect, test } from 'vitest';
import type { Caution, RoomView } from '../../src/core/caution/index.js';
import { footprint } from '../../src/core/feature/wall-frame.js';
import { flightOf } from '../../src/core/feature/index.js';
import { pointsOf } from '../../src/base/geometry/index.js';
import type { OpeningMeasure } from '../../src/core/model/index.js';
import { category, feature, len, opening, option, room, seenBy, selection, wall } from './house.js';

/** A window 2' by 2' at so far along the north wall. */
function pane(at: string, sill: string, more: Partial<OpeningMeasure> = {}): OpeningMeasure {
  const size = { at: len(at), sill: len(sill), width: len(`2'`), height: len(`2'`) };
  return opening({ mark: 'W1', kind: 'window', to: 'outside', ...size, ...more });
}

describe('glass beside a door from 1\'-0" to 3\'-6"', () => {
  const seen = (window: OpeningMeasure): number =>
    seenBy('glazing-at-door', room({ measure: { openings: [opening(), window] } })).length;

  test.each([
    [`5'-5 15/16"`, `4'-11 15/16"`, 1],
    [`5'-6"`, `4'-11 15/16"`, 1],
    [`5'-6 1/16"`, `4'-11 15/16"`, 0],
    [`5'-6"`, `5'-0"`, 0],
    [`5'-6"`, `5'-0 1/16"`, 0],
  ])('at %s with its bottom at %s: %i', (at, sill, count) => expect(seen(pane(at, sill))).toBe(count));

  test('on the other side of it too, and in no other wall', () => {
    const door = opening({ at: len(`5'`) });
    const measure = { openings: [door, pane(`1'`, `3'`)], walls: [wall('north'), wall('east')] };
    expect(seenBy('glazing-at-door', room({ measure }))[0]?.seen).toContain('is 2\'-0" from door D1');
    const around = { ...measure, openings: [door, pane(`1'`, `3'`, { wall: 'east' })] };
    expect(seenBy('glazing-at-door', room({ measure: around }))).toHaveLength(0);
  });

  test('that is tempered or laminated is passed over; plain and unknown are not', () => {
    const glasses = ['tempered', 'laminated', 'plain'] as const;
    expect(glasses.map((glass) => seen(pane(`4'`, `3'`, { glass })))).toEqual([0, 0, 1]);
    const [caution] = seenBy('glazing-at-door', room({ measure: { openings: [opening(), pane(`4'`, `3'`)] } }));
    expect(caution?.seen).toContain('what its glass is, is not recorded');
  });
});

describe('glass in a door', () => {
  const doors = category(['rough-height', 'glass'], { slug: 'door' });
  const seen = (glass: string | undefined, own: OpeningMeasure['glass']): readonly Caution[] => {
    const leaf = option({ 'rough-height': '2"', ...(glass !== undefined && { glass }) });
    const openings = [opening(own ? { glass: own } : {})];
    return seenBy('glazing-at-door', room({ selections: [selection(['D1'], doors, leaf)], measure: { openings } }));
  };

  test.each([
    [undefined, undefined, 0],
    ['none', undefined, 0],
    ['clear', undefined, 1],
    ['clear safety glass', undefined, 0],
    ['obscure, tempered', undefined, 0],
    ['clear', 'tempered', 0],
    ['clear safety glass', 'plain', 1],
    [undefined, 'plain', 1],
  ] as const)('its product says %s, its record %s: %i', (glass, own, count) => {
    expect(seen(glass, own)).toHaveLength(count);
  });
});

describe('glass beside water', () => {
  // The window is at x 4' to 6' in the wall y = 10'; the tub is 2' deep.
  const seen = (x: string, y: string, use: RoomView['use'] = 'bath'): readonly Caution[] => {
    const [west, south] = [len(x), len(y)];
    const corners = [
      [0, 0],
      [len(`4'`), 0],
      [len(`4'`), len(`2'`)],
      [0, len(`2'`)],
    ] as const;
    const outline = corners.map(([right, up]) => ({ x: len('0"') + west + right, y: south + up })) as never;
    const features = [feature('wet-place', 'tub', {}, { outline })];
    return seenBy('glazing-at-water', room({ use, measure: { openings: [pane(`4'`, `3'`)], features } }));
  };

  test.each([
    [`3'`, `3'-1"`, 1],
    [`3'`, `3'`, 1],
    [`3'`, `2'-11 15/16"`, 0],
    // Three feet to the side and four before the wall: five in all.
    [`9'`, `4'`, 1],
    [`9'-1"`, `4'`, 0],
  ])('a tub at %s, %s: %i', (x, y, count) => expect(seen(x, y)).toHaveLength(count));

  test('is looked at in every room that has a tub, and asked about in a bath that records none', () => {
    expect(seen(`3'`, `6'`, 'bedroom')).toHaveLength(1);
    const bare = (use: RoomView['use']) =>
      seenBy('glazing-at-water', room({ use, measure: { openings: [pane(`4'`, `3'`)] } }));
    expect(bare('bath')).toHaveLength(1);
    expect(bare('powder')).toHaveLength(0);
  });
});

describe('glass beside a stair', () => {
  /** 12 risers of 7" over goings of 10" that go east from x = 2', three feet wide, so far before the wall y = 10'. */
  const seen = (window: OpeningMeasure, away = '6"', going = '10"'): readonly Caution[] => {
    const data = {
      rise: len('84"'),
      risers: 12,
      going: len(going),
      width: len(`3'`),
      go: 'east',
      rails: 0,
      handrails: 1,
    } as const;
    const place = { x: len(`2'`), y: (len(`7'`) - len(away)) as never };
    const space = { corner: { x: len('0"'), y: len('0"') } };
    const { ring } = footprint(space, { ...data, ...place, run: flightOf(data).run });
    const stair = feature('stair', 'stair', { ...data, ...place }, { footprint: pointsOf(ring) });
    return seenBy('glazing-at-stair', room({ measure: { openings: [window], features: [stair] } }));
  };

  // Its right edge is 5' along the flight: the nosings are 7" + 60 × 7/10" = 49" high there, and 49 + 36 = 85.
  test.each([
    ['84 15/16"', 1],
    ['85"', 0],
    ['85 1/16"', 0],
  ])('with its bottom at %s: %i', (sill, count) => expect(seen(pane(`5'`, sill))).toHaveLength(count));

  test.each([
    [`2'-11 15/16"`, 1],
    [`3'`, 0],
  ])('%s away: %i', (away, count) => expect(seen(pane(`5'`, `4'`), away)).toHaveLength(count));

  // Its left edge is 3' along, where the nosings are 32.2" high; its head 2' above its bottom.
  test.each([
    ['8 1/8"', 0],
    ['8 1/4"', 1],
  ])('wholly below the nosings with its bottom at %s: %i', (sill, count) => {
    expect(seen(pane(`5'`, sill))).toHaveLength(count);
  });

  // Before the foot at x = 2': the corner of the flight is 6" before the wall.
  test.each([
    [`0'`, '35"', 1],
    [`0'`, '36"', 0],
  ])('at its foot, at %s with its bottom at %s: %i', (at, sill, count) => {
    expect(seen(pane(at, sill, { width: len(`1'-11"`) }))).toHaveLength(count);
  });

  test('a ladder is none', () => {
    expect(seen(pane(`2'-6"`, `3'`), '6"', '4"')).toHaveLength(0);
  });
});
