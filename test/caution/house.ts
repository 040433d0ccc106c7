import {
  findCautions,
  viewHouse,
  viewRoom,
  type Caution,
  type HouseView,
  type RoomView,
  type SelectionView,
} from '../../src/core/caution/index.js';
import type {
  Attribute,
  Category,
  FeatureMeasure,
  FloorVoid,
  OpeningMeasure,
  Option,
  RoomMeasure,
  Surface,
  WallMeasure,
} from '../../src/core/model/index.js';
import { parseLength, type Area, type Cents, type Length, type Volume } from '../../src/base/units/index.js';

/** A length as written in a record. */
export function len(text: string): Length {
  const parsed = parseLength(text);
  if (!parsed.ok) throw new Error(parsed.why);
  return parsed.value;
}

type Written = string | number | boolean | readonly string[];

/** Attributes from what a record would say: lengths by their marks, the rest as it is. */
function attribute(written: Written): Attribute {
  if (typeof written === 'number') return { text: String(written), value: { kind: 'number', number: written } };
  if (typeof written === 'boolean') return { text: String(written), value: { kind: 'yes-no', yes: written } };
  if (typeof written !== 'string')
    return { text: written.join(), value: { kind: 'lengths', lengths: written.map(len) } };
  const parsed = parseLength(written);
  if (parsed.ok) return { text: written, value: { kind: 'length', length: parsed.value } };
  return { text: written, value: { kind: 'text', text: written } };
}

export function option(attributes: Record<string, Written>, more: Partial<Option> = {}): Option {
  return {
    slug: 'option',
    category: 'category',
    name: 'The option',
    maker: '',
    model: '',
    summary: '',
    parts: [],
    freight: 0 as Cents,
    leadDays: 0,
    attributes: Object.fromEntries(Object.entries(attributes).map(([name, text]) => [name, attribute(text)])),
    needs: [],
    swatch: { pattern: 'solid', colors: [] },
    specification: { general: '', products: '', execution: '' },
    care: '',
    body: '',
    origin: { file: '', text: '', at: () => ({ line: 1, column: 1 }), key: () => ({ line: 1, column: 1 }) },
    ...more,
  };
}

/** A category by the attributes that its options may carry. */
export function category(attributes: readonly string[], more: Partial<Category> = {}): Category {
  const { origin } = option({});
  return {
    slug: 'category',
    name: 'Category',
    trade: 'trade',
    section: '',
    measure: { by: 'area', openings: { rule: 'none' }, times: 1, words: '', source: '' },
    sequence: 1,
    neededAt: '',
    fixesEarly: [],
    layer: 'finish',
    attributes: attributes.map((name) => ({ name, label: name, kind: 'text', required: false })),
    body: '',
    origin,
    ...more,
  };
}

export function measuredBy(by: string): Pick<Category, 'measure'> {
  return { measure: { by, openings: { rule: 'none' }, times: 1, words: '', source: '' } };
}

/** A selection with one option that is decided, unless said otherwise. */
export function selection(
  places: readonly string[],
  of: Category,
  counted: Option | undefined,
  more: Partial<SelectionView> = {},
): SelectionView {
  return {
    id: `room/${of.slug}/${places[0]}`,
    room: 'room',
    category: of,
    placeText: places.join(', '),
    places: places.map((id) => ({ id, name: id })),
    state: 'decided',
    ...(counted && { counted }),
    options: counted ? [counted] : [],
    ...more,
  };
}

export function surface(id: string, gross = 100): Surface {
  return { id, name: id, gross: gross as Area, deductions: [], net: gross as Area, regions: [] };
}

/** A level wall of ten feet, nine feet high, along the north side of the room. */
export function wall(id: string, more: Partial<WallMeasure> = {}): WallMeasure {
  const [from, to] = [
    { x: len('0"'), y: len(`10'`) },
    { x: len(`10'`), y: len(`10'`) },
  ];
  const top = [
    { along: len('0"'), height: len(`9'`) },
    { along: len(`10'`), height: len(`9'`) },
  ];
  return { ...surface(id), from, to, run: len(`10'`), top, ...more };
}

/** A hole in the floor with floor along all of its sides, each of ten feet. */
export function hole(name: string, sides: readonly string[]): FloorVoid {
  const corner = { x: len('0"'), y: len('0"') };
  const around = sides.map((side) => ({
    name: side,
    from: corner,
    to: corner,
    run: len(`10'`),
    edges: [{ from: len('0"'), to: len(`10'`) }],
  }));
  return { id: `void-${name.toLowerCase()}`, name, outline: [], isOpenAbove: false, sides: around };
}

export function feature(kind: string, id: string, data: unknown, more: Partial<FeatureMeasure> = {}): FeatureMeasure {
  return { kind, id, name: id, faces: [], runs: [], counts: [], covers: [], facts: [], data, ...more };
}

/** A door of 2'-6" by 6'-8", a foot from the corner of the north wall. */
export function opening(more: Partial<OpeningMeasure> = {}): OpeningMeasure {
  const [at, width, height, sill] = [len(`1'`), len(`2'-6"`), len(`6'-8"`), len('0"')];
  const record = { by: 'seen', mark: 'D1', recordedIn: 'room', wall: 'north', at, path: [] } as const;
  const area = 16 as Area;
  const size = { mark: 'D1', kind: 'door', wall: 'north', at, width, height, sill, to: 'beside', own: true } as const;
  return { ...size, area, areaOnWall: area, record, operation: 'swing', ...more };
}

export function room(
  more: Partial<Omit<RoomView, 'measure' | 'at'>> & { measure?: Partial<RoomMeasure> } = {},
): RoomView {
  const { measure, ...rest } = more;
  const slug = rest.slug ?? 'room';
  const whole: RoomMeasure = {
    room: slug,
    plan: [],
    voids: [],
    perimeter: len(`40'`),
    wallRun: len(`40'`),
    floor: surface('floor'),
    ceiling: { ...surface('ceiling'), planArea: 100 as Area, facets: [] },
    walls: [wall('north')],
    openings: [],
    features: [],
    volume: 900 as Volume,
    lowest: len(`9'`),
    highest: len(`9'`),
    headroom: { fiveFeet: 100 as Area, sevenFeet: 100 as Area },
    ...measure,
  };
  return viewRoom({ name: slug, level: 'main', use: 'living', selections: [], slug, ...rest, measure: whole });
}

export function house(rooms: readonly RoomView[], more: Partial<Omit<HouseView, 'bySlug' | 'rooms'>> = {}): HouseView {
  const categories = [...new Set(rooms.flatMap(({ selections }) => selections.map((one) => one.category)))];
  return viewHouse({
    climateZone: '6B',
    levels: ['main'],
    categories,
    matches: [],
    stands: new Map(),
    outsideWall: len('6"'),
    milestones: new Map(),
    rooms,
    ...more,
  });
}

/** What one rule sees in rooms of a house. */
export function seenBy(
  rule: string,
  rooms: RoomView | readonly RoomView[],
  more: Partial<Omit<HouseView, 'bySlug' | 'rooms'>> = {},
): readonly Caution[] {
  const list = 'slug' in rooms ? [rooms] : rooms;
  return findCautions(house(list, more)).filter((caution) => caution.rule === rule);
}
