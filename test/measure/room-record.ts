import type {
  Bearing,
  CeilingForm,
  CeilingPart,
  FeatureRecord,
  FloorPart,
  Opening,
  OwnOpening,
  Room,
  Shape,
  VoidShape,
} from '../../src/core/model/index.js';
import { featureKinds } from '../../src/core/feature/index.js';
import type { Origin, Path, Problem } from '../../src/base/problem/index.js';
import { parseLength, type Length } from '../../src/base/units/index.js';

/** A length as a record writes it. */
export function len(text: string): Length {
  const parsed = parseLength(text);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.why}`);
  return parsed.value;
}

export function point(x: string, y: string): { x: Length; y: Length } {
  return { x: len(x), y: len(y) };
}

/** Rectangle from its south-west corner, as voids and ceiling parts are loaded. */
export function box(x: string, y: string, width: string, depth: string): { x: Length; y: Length }[] {
  const [west, south] = [len(x), len(y)];
  const [east, north] = [(west + len(width)) as Length, (south + len(depth)) as Length];
  return [
    { x: west, y: south },
    { x: east, y: south },
    { x: east, y: north },
    { x: west, y: north },
  ];
}

export function size(eastWest: string, northSouth: string, open: Record<string, string> = {}): Shape {
  const edges = Object.entries(open).map(([wall, to]) => ({ wall, to }));
  return { by: 'size', eastWest: len(eastWest), northSouth: len(northSouth), open: edges };
}

/** `north east 24'`: name, way, run. */
export function walk(...walls: string[]): Shape {
  return {
    by: 'walk',
    walls: walls.map((text) => {
      const [name = '', go = '', ...run] = text.split(' ');
      return { name, go: go as Bearing, run: len(run.join(' ')) };
    }),
  };
}

export function outline(...corners: [string, string][]): Shape {
  return { by: 'outline', corners: corners.map(([x, y], i) => ({ at: point(x, y), wall: `w${i + 1}` })) };
}

export function flat(height: string): CeilingForm {
  return { form: 'flat', height: len(height) };
}

export function pitch(text: string): { rise: number; run: number } {
  const [rise = 0, run = 12] = text.split('/').map(Number);
  return { rise, run };
}

type Part = Partial<CeilingPart> & { form: CeilingForm };

export interface RoomText {
  slug?: string;
  shape: Shape;
  ceiling: CeilingForm | Part | Part[];
  voids?: VoidShape[];
  floor?: Omit<FloorPart, 'path'>[];
  openings?: Opening[];
  features?: Record<string, unknown>[];
}

/** A room record; problems found in it tell their path by `pathOf`. */
export function room({
  slug = 'test',
  shape,
  ceiling,
  voids = [],
  floor,
  openings = [],
  features = [],
}: RoomText): Room {
  const parts: Part[] = Array.isArray(ceiling)
    ? ceiling
    : [typeof ceiling.form === 'string' ? { form: ceiling as CeilingForm } : (ceiling as Part)];
  return {
    slug,
    name: 'Test room',
    number: '101',
    level: 'main',
    use: 'living',
    shape,
    voids,
    ...(floor && { floor: floor.map((part, i) => ({ ...part, path: ['floor', i] })) }),
    ceiling: parts.map((part, i) => ({ name: `part ${i + 1}`, path: ['ceiling', i], ...part })),
    openings: openings.map((opening, i) => ({ ...opening, path: ['openings', i] })),
    features: features.map(feature),
    selections: [],
    body: '',
    origin: origin(),
  };
}

export function feature(raw: Record<string, unknown>, index = 0): FeatureRecord {
  const kind = featureKinds.find((candidate) => candidate.kind === raw['kind']);
  if (!kind) throw new Error(`no kind ${String(raw['kind'])}`);
  const record = { kind: kind.kind, id: String(raw['id']), name: String(raw['name']), path: ['features', index] };
  return { ...record, data: kind.read(raw) };
}

export function opening(
  mark: string,
  kind: OwnOpening['kind'],
  wall: string,
  at: string,
  sizes: string,
  more: Partial<OwnOpening> = {},
): OwnOpening {
  const [width = '', height = ''] = sizes.split(' x ');
  return {
    by: 'own',
    mark,
    kind,
    wall,
    at: len(at),
    width: len(width),
    height: len(height),
    sill: 0 as Length,
    to: 'outside',
    operation: 'swing',
    path: [],
    ...more,
  };
}

const paths: Path[] = [];

function origin(): Origin {
  const at = (path: Path) => ({ line: paths.push(path) - 1, column: 1 });
  return { file: 'content/rooms/test.md', text: '', at, key: at };
}

/** The place in the record that a problem points to, as text: `openings.0.width`. */
export function pathOf(problem: Problem | undefined): string {
  return problem ? (paths[problem.at.line] ?? []).join('.') : 'no problem';
}
