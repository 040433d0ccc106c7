import { describe, expect, test } from 'vitest';
import type { Caution, SelectionView } from '../../src/core/caution/index.js';
import { category, feature, len, option, room, seenBy, selection } from './house.js';

const unitOf = category(['fuel', 'frame-width'], { slug: 'fireplace', layer: 'fixture', trade: 'masonry' });
const wood = { fuel: 'wood', 'opening-width': '36"', 'opening-height': '24"', 'frame-width': '42"' };

interface Breast {
  readonly hearth?: { readonly width: string; readonly depth: string };
  readonly mantel?: { readonly height: string; readonly projection: string; readonly isCombustible?: boolean };
}

/** A breast seven feet wide with an opening of 36" by 24", a foot above the floor. */
function breast(
  rule: string,
  { hearth, mantel }: Breast,
  selections: readonly SelectionView[] = [],
): readonly Caution[] {
  const data = {
    wall: 'north',
    at: len('0"'),
    width: len(`7'`),
    depth: len(`2'`),
    firebox: { width: len('36"'), height: len('24"'), sill: len('12"') },
    ...(hearth && {
      hearth: { width: len(hearth.width), depth: len(hearth.depth), thickness: len('2"'), height: len('2"') },
    }),
    ...(mantel && { mantel: { ...mantel, height: len(mantel.height), projection: len(mantel.projection) } }),
  };
  return seenBy(rule, room({ selections, measure: { features: [feature('chimney-breast', 'breast', data)] } }));
}

const unit = (attributes: Record<string, string> = wood): SelectionView =>
  selection(['breast'], unitOf, option(attributes));
const hearth = (width: string, depth: string): Breast => ({ hearth: { width, depth } });

describe('hearth extension', () => {
  // 36" by 24" is exactly 6 sq ft and takes the larger size: 20" to the front, 12" to each side of 36" = 60".
  test.each([
    ['60"', '19 15/16"', 1],
    ['60"', '20"', 0],
    ['60"', '20 1/16"', 0],
    ['59 7/8"', '20"', 1],
    ['60 1/8"', '20"', 0],
  ])('opening of 6 sq ft, hearth %s by %s: %i', (width, depth, count) => {
    expect(breast('hearth-extension', hearth(width, depth), [unit()])).toHaveLength(count);
  });

  // 36" by 23" is 5.75 sq ft: 16" to the front, 8" to each side = 52".
  test.each([
    ['52"', '15 15/16"', 1],
    ['52"', '16"', 0],
    ['51 7/8"', '16"', 1],
    ['52"', '16 1/16"', 0],
  ])('opening under 6 sq ft, hearth %s by %s: %i', (width, depth, count) => {
    const small = { ...wood, 'opening-height': '23"' };
    expect(breast('hearth-extension', hearth(width, depth), [unit(small)])).toHaveLength(count);
  });

  test('gas follows its own sheet; an unknown fuel is asked about', () => {
    expect(breast('hearth-extension', {}, [unit({ ...wood, fuel: 'gas' })])).toHaveLength(0);
    expect(breast('hearth-extension', hearth('60"', '20"'))[0]?.seen).toContain('what it burns is not recorded');
  });

  test('a wood fire without a hearth', () => {
    expect(breast('hearth-extension', {}, [unit()])[0]?.seen).toContain('no hearth is recorded');
  });
});

describe('what can burn near a firebox', () => {
  const shelf = (height: string, projection: string, isCombustible?: boolean): Breast => ({
    mantel: { height, projection, ...(isCombustible !== undefined && { isCombustible }) },
  });

  // The opening ends 36" above the floor.
  test.each([
    ['41 15/16"', '1/2"', 1],
    ['42"', '1/2"', 0],
    ['42 1/16"', '1/2"', 0],
  ])('a thin mantel %s above the floor: %i', (height, projection, count) => {
    expect(breast('combustible-near-fire', shelf(height, projection, true), [unit()])).toHaveLength(count);
  });

  // 8" above the opening it may stand out 1".
  test.each([
    ['15/16"', 0],
    ['1"', 0],
    ['1 1/16"', 1],
  ])('8" above the opening and standing out %s: %i', (projection, count) => {
    expect(breast('combustible-near-fire', shelf('44"', projection, true), [unit()])).toHaveLength(count);
  });

  test.each([
    ['47 15/16"', 1],
    ['48"', 0],
    ['48 1/16"', 0],
  ])('a deep shelf %s above the floor: %i', (height, count) => {
    expect(breast('combustible-near-fire', shelf(height, '8"', true), [unit()])).toHaveLength(count);
  });

  test("the unit's own clearance comes first", () => {
    const listed = unit({ ...wood, 'mantel-clearance': '14"' });
    expect(breast('combustible-near-fire', shelf('49 15/16"', '8"', true), [listed])).toHaveLength(1);
    expect(breast('combustible-near-fire', shelf('50"', '8"', true), [listed])).toHaveLength(0);
  });

  test('stone may stand there; what is not recorded is asked about', () => {
    expect(breast('combustible-near-fire', shelf('37"', '8"', false), [unit()])).toHaveLength(0);
    expect(breast('combustible-near-fire', shelf('60"', '8"'), [unit()])[0]?.seen).toContain('not recorded');
  });

  test.each([
    [true, 1],
    [false, 0],
    [undefined, 1],
  ])('facing around the opening that burns: %s', (burns, count) => {
    const facing = category(['is-combustible'], { slug: 'facing' });
    const over = selection(['breast'], facing, option(burns === undefined ? {} : { 'is-combustible': burns }));
    expect(breast('combustible-near-fire', {}, [unit(), over])).toHaveLength(count);
  });
});

describe('what is framed against the unit', () => {
  test.each([
    ['83 15/16"', 0],
    ['84"', 0],
    ['84 1/16"', 1],
  ])('framing %s wide in a breast of 84": %i', (frame, count) => {
    expect(breast('rough-opening', {}, [unit({ ...wood, 'frame-width': frame })])).toHaveLength(count);
  });

  test('a unit that opens otherwise than drawn', () => {
    expect(breast('rough-opening', {}, [unit({ ...wood, 'opening-width': '42"' })])).toHaveLength(1);
  });
});

describe('foam plastic', () => {
  const foam = category(['needs-cover'], { slug: 'insulation', layer: 'insulation' });
  const boards = category(['board-thickness'], { slug: 'board', layer: 'substrate' });
  const under = (board: string | undefined, cover: boolean | undefined = true) =>
    seenBy(
      'thermal-barrier',
      room({
        selections: [
          selection(['north'], foam, option(cover === undefined ? {} : { 'needs-cover': cover })),
          ...(board === undefined ? [] : [selection(['north'], boards, option({ 'board-thickness': board }))]),
        ],
      }),
    );

  test.each([
    ['7/16"', 1],
    ['1/2"', 0],
    ['9/16"', 0],
  ])('under %s of board: %i', (board, count) => expect(under(board)).toHaveLength(count));

  test('bare, or with a board deliberately left out', () => {
    expect(under(undefined)).toHaveLength(1);
    expect(under(undefined, false)).toHaveLength(0);
  });

  test('what is not recorded is asked about', () => {
    const [caution] = seenBy('thermal-barrier', room({ selections: [selection(['north'], foam, option({}))] }));
    expect(caution?.seen).toContain('not recorded');
  });
});
