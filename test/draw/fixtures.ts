import { featureKinds } from '../../src/core/feature/index.js';
import { measureRoom } from '../../src/core/measure/index.js';
import type {
  CeilingForm,
  CeilingPart,
  FeatureRecord,
  OwnOpening,
  Room,
  RoomMeasure,
  Shape,
  VoidShape,
} from '../../src/core/model/index.js';
import type { Length } from '../../src/base/units/index.js';

/** Feet to nanometres; thirds and other odd parts round to the nanometre. */
export function ft(feet: number): Length {
  return Math.round(feet * 304_800_000) as Length;
}

export interface Sketch {
  readonly slug: string;
  readonly shape: Shape;
  readonly ceiling: CeilingForm | readonly CeilingPart[];
  readonly cut?: number;
  readonly openings?: readonly Partial<OwnOpening>[];
  readonly features?: readonly (Readonly<Record<string, unknown>> & { kind: string; id: string; name: string })[];
  readonly voids?: readonly VoidShape[];
  readonly floor?: Room['floor'];
}

/** Measures a room as the program does. Openings take 3' × 7' doors to the hall where nothing else is said. */
export function measured(sketch: Sketch): RoomMeasure {
  const room: Room = {
    slug: sketch.slug,
    name: sketch.slug,
    number: '101',
    level: 'main',
    use: 'living',
    shape: sketch.shape,
    voids: sketch.voids ?? [],
    ...(sketch.floor && { floor: sketch.floor }),
    ceiling: Array.isArray(sketch.ceiling) ? sketch.ceiling : [part(sketch.ceiling as CeilingForm, sketch.cut)],
    openings: (sketch.openings ?? []).map((opening, index) => ({
      by: 'own',
      mark: `D0${index + 1}`,
      kind: 'door',
      wall: 'south',
      at: ft(1),
      width: ft(3),
      height: ft(7),
      sill: ft(0),
      to: 'hall',
      operation: 'swing',
      path: ['openings', index],
      ...opening,
    })),
    features: (sketch.features ?? []).map(record),
    selections: [],
    body: '',
    origin: {
      file: `content/rooms/${sketch.slug}.md`,
      text: '',
      at: () => ({ line: 1, column: 1 }),
      key: () => ({ line: 1, column: 1 }),
    },
  };
  const { value, problems } = measureRoom(room, { rooms: new Map() });
  if (value === undefined || problems.length > 0) throw new Error(problems.map(({ message }) => message).join('\n'));
  return value;
}

function part(form: CeilingForm, cut?: number): CeilingPart {
  return { name: 'Ceiling', form, path: ['ceiling'], ...(cut === undefined ? {} : { cut: ft(cut) }) };
}

function record(
  raw: Readonly<Record<string, unknown>> & { kind: string; id: string; name: string },
  index: number,
): FeatureRecord {
  const kind = featureKinds.find((candidate) => candidate.kind === raw.kind);
  return { kind: raw.kind, id: raw.id, name: raw.name, data: kind?.read(raw), path: ['features', index] };
}

export function size(eastWest: number, northSouth: number, open: readonly { wall: string; to: string }[] = []): Shape {
  return { by: 'size', eastWest: ft(eastWest), northSouth: ft(northSouth), open };
}
