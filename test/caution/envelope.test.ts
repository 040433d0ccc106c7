import { describe, expect, test } from 'vitest';
import { findCautions, type Caution, type SelectionView } from '../../src/core/caution/index.js';
import type { RoomMeasure } from '../../src/core/model/index.js';
import { category, house, opening, option, room, seenBy, selection, wall } from './house.js';

const insulation = category(['r-value', 'continuous-r'], { slug: 'insulation', layer: 'insulation' });

function insulated(place: string, attributes: Record<string, number>, climateZone = '6B'): readonly Caution[] {
  const selections = [selection([place], insulation, option(attributes))];
  return seenBy('insulation-by-zone', room({ selections }), { climateZone });
}

describe('insulation against the table of the zone', () => {
  test.each([
    [59, 1],
    [60, 0],
    [61, 0],
  ])('ceiling of R-%d in zone 6: %i', (r, count) => expect(insulated('ceiling', { 'r-value': r })).toHaveLength(count));

  test.each([
    [29, 1],
    [30, 0],
    [31, 0],
  ])('floor of R-%d in zone 6: %i', (r, count) => expect(insulated('floor', { 'r-value': r })).toHaveLength(count));

  test.each([
    [29, 0, 1],
    [30, 0, 0],
    [31, 0, 0],
    [20, 4.9, 1],
    [20, 5, 0],
    [20, 5.1, 0],
    [19.9, 5, 1],
    [13, 9.9, 1],
    [13, 10, 0],
    [12.9, 10, 1],
    [0, 20, 0],
    [0, 19.9, 1],
  ])('wall of R-%d with R-%d outside the framing in zone 6: %i', (r, continuous, count) => {
    expect(insulated('north', { 'r-value': r, 'continuous-r': continuous })).toHaveLength(count);
  });

  test.each([
    ['1A', 30],
    ['2B', 49],
    ['3', 49],
    ['4A', 60],
    ['4C', 60],
    ['8', 60],
  ])('zone %s takes a ceiling of R-%d and not one less', (zone, r) => {
    expect(insulated('ceiling', { 'r-value': r }, zone)).toHaveLength(0);
    expect(insulated('ceiling', { 'r-value': r - 1 }, zone)).toHaveLength(1);
  });

  // Source: IECC 2021, R402.2.2, from memory.
  test('a sloped ceiling from R-30 is told of what may do over a limited area, and no other', () => {
    const says = (r: number, slope: number, climateZone = '6B'): string => {
      const selections = [selection(['ceiling'], insulation, option({ 'r-value': r }))];
      const plain = room({ selections });
      const facets = [{ slope }] as unknown as RoomMeasure['ceiling']['facets'];
      const sloped = { ...plain, measure: { ...plain.measure, ceiling: { ...plain.measure.ceiling, facets } } };
      return seenBy('insulation-by-zone', sloped, { climateZone })[0]?.says ?? '';
    };
    expect(says(30, 0.5)).toContain('R402.2.2 lets R-30 do over at most 500 sq ft or 20 %');
    expect(says(29.9, 0.5)).not.toContain('R402.2.2');
    expect(says(38, 0)).not.toContain('R402.2.2');
    expect(says(29, 0.5, '1A')).not.toContain('R402.2.2');
  });

  test('marine zone 4 asks for more in a floor than the rest of zone 4', () => {
    expect(insulated('floor', { 'r-value': 19 }, '4A')).toHaveLength(0);
    expect(insulated('floor', { 'r-value': 19 }, '4C')).toHaveLength(1);
  });

  test('what is not recorded is asked about, a zone that there is not too', () => {
    expect(insulated('ceiling', {})[0]?.seen).toContain('R-value is not recorded');
    expect(insulated('ceiling', { 'r-value': 90 }, 'nine')[0]?.seen).toContain("no climate zone 'nine'");
  });

  test('a house that names no zone is told so, once, where insulation is selected, and nowhere else', () => {
    const found = (...attributes: Record<string, number>[]): readonly string[] => {
      const selections = attributes.map((one) => selection(['ceiling'], insulation, option(one)));
      const { climateZone, ...unnamed } = house([room({ selections })]);
      expect(climateZone).toBe('6B');
      return findCautions(unnamed)
        .filter(({ rule }) => rule === 'insulation-by-zone')
        .map(({ seen }) => seen);
    };
    expect(found({ 'r-value': 10 }, { 'r-value': 12 })).toEqual([
      'The house names no climate zone (climate-zone in house.md); no insulation of the house was compared with the table.',
    ]);
    expect(found()).toEqual([]);
  });

  test('a wall with a window and no insulation', () => {
    const window = opening({ mark: 'W1', kind: 'window', to: 'outside' });
    const inHouse = { categories: [insulation] };
    expect(seenBy('insulation-by-zone', room({ measure: { openings: [window] } }), inHouse)).toHaveLength(1);
    const porch = room({ use: 'porch', measure: { openings: [window] } });
    expect(seenBy('insulation-by-zone', porch, inHouse)).toHaveLength(0);
  });
});

describe('sound between bedroom and bath', () => {
  const sound = category(['stc'], { slug: 'sound', layer: 'insulation' });

  test.each([
    [44, 1],
    [45, 0],
    [46, 0],
  ])('a wall tested at STC %d: %i', (stc, count) => {
    const selections = [selection(['north'], sound, option({ stc }))];
    expect(seenBy('sound-at-bath', room({ use: 'bath', selections }))).toHaveLength(count);
    expect(seenBy('sound-at-bath', room({ use: 'pantry', selections }))).toHaveLength(0);
  });

  test('an unknown rating is asked about', () => {
    const selections = [selection(['north'], sound, option({}))];
    expect(seenBy('sound-at-bath', room({ use: 'bath', selections }))[0]?.seen).toContain('not recorded');
  });

  test('a shared wall without any, on either side', () => {
    const bath = (selections: Parameters<typeof room>[0] = {}) =>
      room({ slug: 'bath', use: 'bath', measure: { openings: [opening({ to: 'bedroom' })] }, ...selections });
    const bedroom = (selections: Parameters<typeof room>[0] = {}) =>
      room({
        slug: 'bedroom',
        use: 'bedroom',
        measure: { walls: [wall('south')], openings: [opening({ to: 'bath', wall: 'south', own: false })] },
        ...selections,
      });
    expect(seenBy('sound-at-bath', [bath(), bedroom()])).toHaveLength(1);
    const quiet = { selections: [selection(['south'], sound, option({ stc: 50 }))] };
    expect(seenBy('sound-at-bath', [bath(), bedroom(quiet)])).toHaveLength(0);
  });
});

describe('board and finish in a wet room', () => {
  const boards = category(['board-thickness'], { slug: 'board', layer: 'substrate' });
  const tile = category(['wet-floor'], { slug: 'tile' });
  const paint = category(['sheen'], { slug: 'paint' });
  const carpet = category(['kind'], { slug: 'floor', schedule: 'floor' });
  const bath = (...selections: readonly SelectionView[]) => seenBy('wet-room', room({ use: 'bath', selections }));

  test.each([
    ['light', 1],
    ['moisture', 0],
    ['backer', 0],
  ])('%s board: %i', (type, count) => {
    const selections = [selection(['north'], boards, option({ type }))];
    expect(seenBy('wet-room', room({ use: 'bath', selections }))).toHaveLength(count);
    expect(seenBy('wet-room', room({ use: 'powder', selections }))).toHaveLength(0);
  });

  test('moisture board under tile', () => {
    const under = selection(['north'], boards, option({ type: 'moisture' }));
    const over = selection(['north'], tile, option({ substrate: 'cement backer', 'wet-floor': false }));
    expect(bath(under, over).map(({ seen }) => seen)).toEqual(['Tile and The option are both selected at north.']);
  });

  test.each([
    ['cement backer', 0],
    ['gypsum board', 1],
    [undefined, 1],
  ])('wall tile set on %s: %i', (substrate, count) => {
    const attributes = { 'wet-floor': false, ...(substrate !== undefined && { substrate }) };
    expect(bath(selection(['north'], tile, option(attributes)))).toHaveLength(count);
  });

  test.each([
    [true, 0],
    [false, 1],
    [undefined, 1],
  ])('floor tile rated for wet floors: %s', (rated, count) => {
    expect(bath(selection(['floor'], tile, option(rated === undefined ? {} : { 'wet-floor': rated })))).toHaveLength(
      count,
    );
  });

  test.each([
    ['matte', 1],
    ['eggshell', 0],
    ['satin', 0],
  ])('%s paint: %i', (sheen, count) => {
    expect(bath(selection(['north'], paint, option({ sheen })))).toHaveLength(count);
  });

  test('carpet', () => {
    expect(bath(selection(['floor'], carpet, option({ kind: 'carpet' })))).toHaveLength(1);
    expect(bath(selection(['floor'], carpet, option({ kind: 'engineered' })))).toHaveLength(0);
  });
});
