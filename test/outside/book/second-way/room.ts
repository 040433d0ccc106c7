import { feetOf, groupOf, groupsOf, listOf, pitchOf, recordsIn, sum, text, type Fields } from './paper.js';

/** A room of the demo as its record draws it, in feet from the south-west corner of its bounding box. */
export interface Drawn {
  readonly slug: string;
  readonly record: Fields;
  readonly sides: readonly Side[];
  readonly width: number;
  readonly depth: number;
  readonly openings: readonly Opening[];
  readonly features: readonly Fields[];
  /** Parts of the ceiling; a room with one has it all over. */
  readonly ceiling: readonly CeilingPart[];
}

/** Walked clockwise, so from the left end as one faces it from within. */
export interface Side {
  readonly name: string;
  readonly from: Spot;
  readonly to: Spot;
  readonly run: number;
  readonly openTo?: string;
  readonly beside: readonly string[];
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Opening {
  readonly mark: string;
  readonly kind: string;
  readonly wall: string;
  readonly at: number;
  readonly width: number;
  readonly height: number;
  readonly sill: number;
  readonly to: string;
  /** Of the room that records it. */
  readonly own: boolean;
  readonly operation: string;
}

export interface CeilingPart {
  readonly name: string;
  readonly over: { readonly x: number; readonly y: number; readonly width: number; readonly depth: number };
  readonly openFrom?: number;
  height(spot: Spot): number;
}

export function drawnRooms(): ReadonlyMap<string, Drawn> {
  const records = recordsIn('rooms');
  return new Map([...records].map(([slug, record]) => [slug, draw(slug, record, records)]));
}

function draw(slug: string, record: Fields, records: ReadonlyMap<string, Fields>): Drawn {
  const loose = sidesOf(record);
  const xs = loose.map(({ from }) => from.x);
  const ys = loose.map(({ from }) => from.y);
  const [west, south] = [Math.min(...xs), Math.min(...ys)];
  const moved = ({ x, y }: Spot): Spot => ({ x: x - west, y: y - south });
  const sides = loose.map((side) => ({ ...side, from: moved(side.from), to: moved(side.to) }));
  const [width, depth] = [Math.max(...xs) - west, Math.max(...ys) - south];
  const whole = { x: 0, y: 0, width, depth };
  const ceilings = Array.isArray(record['ceiling']) ? groupsOf(record['ceiling']) : [record['ceiling']];
  return {
    slug,
    record,
    sides,
    width,
    depth,
    openings: groupsOf(record['openings']).map((opening) => openingOf(slug, opening, records)),
    features: groupsOf(record['features']),
    ceiling: ceilings.map((part) => ceilingPart(part, whole)),
  };
}

type LooseSide = Omit<Side, 'run'> & { readonly run: number };

const ways: Readonly<Record<string, Spot>> = {
  north: { x: 0, y: 1 },
  east: { x: 1, y: 0 },
  south: { x: 0, y: -1 },
  west: { x: -1, y: 0 },
};

function sidesOf(record: Fields): readonly LooseSide[] {
  if (record['outline'] !== undefined) {
    const corners = groupsOf(record['outline']);
    const spots = corners.map(({ x, y }) => ({ x: feetOf(x), y: feetOf(y) }));
    return corners.map((corner, index) => {
      const [from, to] = [spots[index] as Spot, spots[(index + 1) % spots.length] as Spot];
      return {
        name: text(corner['wall']),
        from,
        to,
        run: Math.hypot(to.x - from.x, to.y - from.y),
        ...sideWords(corner),
      };
    });
  }
  let at: Spot = { x: 0, y: 0 };
  return walksOf(record).map((walk) => {
    const way = ways[text(walk['go'])] as Spot;
    const run = typeof walk['run'] === 'number' ? walk['run'] : feetOf(walk['run']);
    const from = at;
    at = { x: from.x + way.x * run, y: from.y + way.y * run };
    return { name: text(walk['name']), from, to: at, run, ...sideWords(walk) };
  });
}

function sideWords(side: Fields): Pick<Side, 'openTo' | 'beside'> {
  const open = side['open-to'];
  return { ...(open !== undefined && { openTo: text(open) }), beside: listOf(side['beside']).map(text) };
}

/** A box is four walls, from its north-west corner. */
function walksOf(record: Fields): readonly Fields[] {
  if (record['walls'] !== undefined) return groupsOf(record['walls']);
  const [wide = 0, deep = 0] = text(record['size']).split(' x ').map(feetOf);
  const [open, beside] = [groupOf(record['open']), groupOf(record['beside'])];
  return [
    { name: 'north', go: 'east', run: wide },
    { name: 'east', go: 'south', run: deep },
    { name: 'south', go: 'west', run: wide },
    { name: 'west', go: 'north', run: deep },
  ].map((wall) => ({ ...wall, 'open-to': open[wall.name], beside: beside[wall.name] }));
}

function openingOf(slug: string, here: Fields, records: ReadonlyMap<string, Fields>): Opening {
  const elsewhere = here['recorded-in'];
  const mark = text(here['mark']);
  const there = groupsOf(records.get(text(elsewhere ?? slug))?.['openings']).find((one) => one['mark'] === mark);
  if (!there) throw new Error(`${slug}: ${mark} is recorded nowhere`);
  return {
    mark,
    kind: text(there['kind']),
    wall: text(here['wall']),
    at: feetOf(here['at']),
    width: feetOf(there['width']),
    height: feetOf(there['height']),
    sill: there['sill'] === undefined ? 0 : feetOf(there['sill']),
    to: text(elsewhere ?? there['to']),
    own: elsewhere === undefined,
    operation: text(there['operation'] ?? 'swing'),
  };
}

/** The least of what its form puts over a spot: the height at the eave and the way from there, up the pitch. */
function ceilingPart(record: unknown, whole: CeilingPart['over']): CeilingPart {
  if (typeof record === 'string') {
    const height = feetOf(record.replace('flat ', ''));
    return { name: 'all', over: whole, height: () => height };
  }
  const part = groupOf(record);
  const over = part['over'] === undefined ? whole : boxOf(groupOf(part['over']));
  const above = groupOf(part['open-above'])['height'];
  const most = part['cut'] === undefined ? Infinity : feetOf(part['cut']);
  return {
    name: text(part['name'] ?? 'all'),
    over,
    ...(above !== undefined && { openFrom: feetOf(above) }),
    height: (spot) => Math.min(most, formHeight(part, over, spot)),
  };
}

function formHeight(part: Fields, { x, y, width, depth }: CeilingPart['over'], spot: Spot): number {
  if (part['form'] === 'flat') return feetOf(part['height']);
  const out = { west: spot.x - x, east: x + width - spot.x, south: spot.y - y, north: y + depth - spot.y };
  const rising = (from: number): number => feetOf(part['plate']) + from * pitchOf(part['pitch']);
  if (part['form'] === 'shed') return rising(out[part['low'] as keyof typeof out]);
  if (part['form'] !== 'gable') throw new Error(`no formula for ${text(part['form'])}`);
  return rising(part['ridge'] === 'north-south' ? Math.min(out.west, out.east) : Math.min(out.south, out.north));
}

export function boxOf(record: Fields): CeilingPart['over'] {
  return {
    x: feetOf(record['x']),
    y: feetOf(record['y']),
    width: feetOf(record['width']),
    depth: feetOf(record['depth']),
  };
}

export function sideOf({ sides, slug }: Drawn, name: unknown): Side {
  const side = sides.find((one) => one.name === name);
  if (!side) throw new Error(`${slug} has no wall ${text(name)}`);
  return side;
}

/** Twice the area of a triangle from the origin to each side, added up; clockwise makes it negative. */
export function shoelace({ sides }: Pick<Drawn, 'sides'>): number {
  return -sum(sides.map(({ from, to }) => from.x * to.y - to.x * from.y)) / 2;
}
