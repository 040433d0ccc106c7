import { fromFeet, type Area, type Length, type Volume } from '../../src/base/units/index.js';
import type { Category, Convention, Option, OptionPart, RoomMeasure, Selection } from '../../src/core/model/index.js';

/** A room of 14 × 16 ft, 9 ft high, measured by hand: a door D01 3 × 7 in the south wall, a window W01 6 × 6 in the
 *  north wall, a chimney breast on the east wall and a stair. */

const region = (width: number, height: number) => ({
  outline: [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ].map(([x = 0, y = 0]) => ({ x: fromFeet(x), y: fromFeet(y) })),
  holes: [],
});

const opening = (
  mark: string,
  kind: 'door' | 'window',
  wall: string,
  width: number,
  height: number,
  sill: number,
  { own = true, at = 2 } = {},
) => ({
  mark,
  kind,
  wall,
  at: fromFeet(at),
  width: fromFeet(width),
  height: fromFeet(height),
  sill: fromFeet(sill),
  to: 'outside',
  own,
  area: (width * height) as Area,
  areaOnWall: (width * height) as Area,
  record: { by: 'seen', mark, recordedIn: 'hall', wall, at: fromFeet(at), path: [] } as const,
  operation: 'swing' as const,
});

const wall = (id: string, run: number, deductions: RoomMeasure['floor']['deductions'] = []) => {
  const gross = run * 9;
  const taken = deductions.reduce((sum, deduction) => sum + deduction.area, 0);
  return {
    id,
    name: id,
    gross: gross as Area,
    deductions,
    net: (gross - taken) as Area,
    regions: [region(run, 9)],
    from: { x: 0 as Length, y: 0 as Length },
    to: { x: fromFeet(run), y: 0 as Length },
    run: fromFeet(run),
    top: [],
  };
};

const hidden = { by: 'chimney-breast', pieces: [] };

export const room: RoomMeasure = {
  room: 'study',
  plan: region(14, 16).outline,
  voids: [],
  perimeter: fromFeet(60),
  wallRun: fromFeet(60),
  floor: {
    id: 'floor',
    name: 'Floor',
    gross: 224 as Area,
    deductions: [],
    net: 224 as Area,
    regions: [region(14, 16)],
  },
  ceiling: {
    id: 'ceiling',
    name: 'Ceiling',
    gross: 224 as Area,
    deductions: [],
    net: 224 as Area,
    regions: [region(14, 16)],
    planArea: 224 as Area,
    facets: [],
  },
  walls: [
    wall('north', 14, [{ what: 'Window W01', of: 'W01', kind: 'opening', area: 36 as Area }]),
    wall('east', 16, [{ what: 'Chimney breast', of: 'breast', kind: 'feature', area: 54 as Area, hidden }]),
    wall('south', 14, [{ what: 'Door D01', of: 'D01', kind: 'opening', area: 21 as Area }]),
    { ...wall('west', 16), openTo: 'hall' },
  ],
  openings: [
    opening('W01', 'window', 'north', 6, 6, 2),
    opening('D01', 'door', 'south', 3, 7, 0),
    opening('D02', 'door', 'south', 2.5, 7, 0, { own: false, at: 8 }),
  ],
  features: [
    {
      kind: 'chimney-breast',
      id: 'breast',
      name: 'Chimney breast',
      faces: [
        {
          id: 'breast/front',
          name: 'front',
          gross: 54 as Area,
          deductions: [{ what: 'Firebox', of: 'breast', kind: 'opening', area: 10.5 as Area }],
          net: 43.5 as Area,
          regions: [],
        },
        { id: 'breast/left', name: 'left side', gross: 18 as Area, deductions: [], net: 18 as Area, regions: [] },
        { id: 'breast/right', name: 'right side', gross: 18 as Area, deductions: [], net: 18 as Area, regions: [] },
        { id: 'breast/hearth', name: 'hearth', gross: 10 as Area, deductions: [], net: 10 as Area, regions: [] },
      ],
      runs: [
        { id: 'breast/corners', name: 'outside corners', length: fromFeet(18), pieces: [fromFeet(9), fromFeet(9)] },
      ],
      counts: [],
      covers: [{ wall: 'east', from: fromFeet(5), to: fromFeet(11), height: fromFeet(9) }],
      facts: [],
    },
    {
      kind: 'stair',
      id: 'stair',
      name: 'Stair',
      faces: [],
      runs: [{ id: 'stair/rail', name: 'rail', length: fromFeet(15.5), pieces: [fromFeet(15.5)] }],
      counts: [
        { id: 'stair/treads', name: 'treads', count: 16 },
        { id: 'stair/risers', name: 'risers', count: 17 },
      ],
      covers: [],
      facts: [],
    },
  ],
  volume: 2016 as Volume,
  lowest: fromFeet(9),
  highest: fromFeet(9),
  headroom: { fiveFeet: 224 as Area, sevenFeet: 224 as Area },
};

const origin = {
  file: 'content/rooms/study.md',
  text: '',
  at: () => ({ line: 1, column: 1 }),
  key: () => ({ line: 1, column: 1 }),
};

export function category(by: string, rule: Partial<Convention> = {}): Category {
  return {
    slug: 'finish',
    name: 'Finish',
    trade: 'trade',
    section: '09 00 00',
    measure: {
      by,
      openings: { rule: 'all' },
      times: 1,
      words: 'Net area.',
      source: 'common practice, no source',
      ...rule,
    },
    sequence: 1,
    neededAt: 'trim',
    fixesEarly: [],
    layer: 'finish',
    attributes: [],
    body: '',
    origin,
  };
}

export function option(parts: readonly Partial<OptionPart>[], attributes: Option['attributes'] = {}): Option {
  const none = { amount: 0, scale: 2 };
  return {
    slug: 'one',
    category: 'finish',
    name: 'One',
    maker: '',
    model: '',
    summary: '',
    parts: parts.map((part) => ({ part: 'main', unit: 'sq ft', material: none, labor: none, waste: none, ...part })),
    freight: 0 as Option['freight'],
    leadDays: 0,
    attributes,
    needs: [],
    swatch: { pattern: 'solid', colors: [] },
    specification: { general: '', products: '', execution: '' },
    care: '',
    body: '',
    origin,
  };
}

export function selection(...at: string[]): Selection {
  return { at, category: 'finish', considering: [], facts: [], supply: 'contractor', path: ['selections', 0] };
}
