import { limits } from './limits.js';
import { FileRefused, PartRefused } from './refused.js';
import { isList, isRef, isTyped, wordOf, type Entity, type StepFile, type Value } from './step/value.js';
import { east, north, unit, up, world, crossed, dot, less, times, within, type Frame, type Xyz } from './xyz.js';

/** A model's entities, and its figures in feet. What is not there or has another form throws PartRefused. */
export interface Model {
  readonly schema: string;
  /** All of these types, in the order of the file. */
  all(...types: readonly string[]): readonly Entity[];
  /** What a value refers to. */
  at(value: Value): Entity;
  /** The same, where it may be left out. */
  perhaps(value: Value): Entity | undefined;
  /** What a list refers to. */
  each(value: Value): readonly Entity[];
  /** Feet. */
  length(value: Value): number;
  point(value: Value): Xyz;
  /** A place from a list of two or three figures. */
  place(figures: Value): Xyz;
  direction(value: Value): Xyz;
  /** An axis placement; the model's own where it is left out. */
  axes(value: Value): Frame;
  /** Where an object stands in the model, by the placements that it stands in. */
  standing(value: Value): Frame;
  /** Asks for one more body, so that a small file cannot ask for a million. */
  takePart(): void;
}

/** Units of length by their names, in feet. Source: 1 ft = 0.3048 m exactly, NIST SP 811 B.8. */
const metre = 1 / 0.3048;
const prefixes: Readonly<Record<string, number>> = { DECI: 0.1, CENTI: 0.01, MILLI: 0.001, MICRO: 1e-6, KILO: 1000 };

/** Throws FileRefused where the project names no unit of length. */
export function modelOf({ schema, entities }: StepFile): Model {
  const byType = new Map<string, Entity[]>();
  for (const entity of entities.values()) {
    const known = byType.get(entity.type);
    if (known) known.push(entity);
    else byType.set(entity.type, [entity]);
  }
  const all = (...types: readonly string[]): readonly Entity[] => types.flatMap((type) => byType.get(type) ?? []);
  const at = (value: Value): Entity => {
    if (!isRef(value)) throw new PartRefused('a reference in it is missing');
    const entity = entities.get(value.ref);
    if (!entity) throw new PartRefused(`it refers to #${value.ref}, which is not there`);
    return entity;
  };
  const perhaps = (value: Value): Entity | undefined => (value === undefined ? undefined : at(value));
  const each = (value: Value): readonly Entity[] => listOf(value).map(at);

  const feetPerUnit = unitOfLength({ all, at, each });
  const length = (value: Value): number => figure(value) * feetPerUnit;
  const place = (figures: Value): Xyz => {
    const [x, y, z] = listOf(figures);
    const found = { x: length(x), y: length(y), z: z === undefined ? 0 : length(z) };
    const reach = limits.reach * metre;
    if (Math.max(Math.abs(found.x), Math.abs(found.y), Math.abs(found.z)) <= reach) return found;
    throw new PartRefused(`it lies more than ${limits.reach / 1000} km from the model's origin`);
  };
  const typed = (entity: Entity, type: string): Entity => {
    if (entity.type !== type) throw new PartRefused(`#${entity.id} is an ${entity.type} where an ${type} is expected`);
    return entity;
  };
  const point = (value: Value): Xyz => place(typed(at(value), 'IFCCARTESIANPOINT').args[0]);
  const direction = (value: Value): Xyz => {
    const [x, y, z] = listOf(typed(at(value), 'IFCDIRECTION').args[0]);
    return unit({ x: figure(x), y: figure(y), z: z === undefined ? 0 : figure(z) });
  };
  const axes = (value: Value): Frame => {
    const entity = perhaps(value);
    if (!entity) return world;
    const [origin, first, second] = entity.args;
    if (entity.type === 'IFCAXIS2PLACEMENT2D') {
      const x = first === undefined ? east : direction(first);
      return { origin: point(origin), x, y: { x: -x.y, y: x.x, z: 0 }, z: up };
    }
    typed(entity, 'IFCAXIS2PLACEMENT3D');
    const z = first === undefined ? up : direction(first);
    return { origin: point(origin), ...squared(z, second === undefined ? usualX(z) : direction(second)) };
  };

  const stood = new Map<number, Frame>();
  const standing = (value: Value, depth = 0): Frame => {
    const entity = perhaps(value);
    if (!entity) return world;
    const known = stood.get(entity.id);
    if (known) return known;
    if (depth > limits.placements) {
      throw new PartRefused(`its placement #${entity.id} stands in itself, or more than ${limits.placements} deep`);
    }
    typed(entity, 'IFCLOCALPLACEMENT');
    const frame = within(standing(entity.args[0], depth + 1), axes(entity.args[1]));
    stood.set(entity.id, frame);
    return frame;
  };

  let parts = 0;
  const takePart = (): void => {
    parts += 1;
    if (parts > limits.parts)
      throw new PartRefused(`the model asks for more than ${limits.parts} bodies, with repeats`);
  };
  return {
    schema,
    all,
    at,
    perhaps,
    each,
    length,
    point,
    place,
    direction,
    axes,
    standing: (value) => standing(value),
    takePart,
  };
}

/** A frame's directions from its z and something that its x leans to. */
export function squared(z: Xyz, toward: Xyz): Pick<Frame, 'x' | 'y' | 'z'> {
  const x = unit(less(toward, times(z, dot(toward, z))));
  return { x, y: crossed(z, x), z };
}

/** Where x leans when nothing says: to the model's own. */
export function usualX(z: Xyz): Xyz {
  return Math.abs(z.x) > 0.999_999 ? north : east;
}

export function listOf(value: Value): readonly Value[] {
  if (!isList(value)) throw new PartRefused('a list in it is missing');
  return value;
}

/** A figure, with or without the name of its type. */
export function figure(value: Value): number {
  const plain = isTyped(value) ? value.value : value;
  if (typeof plain !== 'number') throw new PartRefused('a figure in it is missing');
  return plain;
}

/** Feet that one of the project's units of length is. */
function unitOfLength({ all, at, each }: Pick<Model, 'all' | 'at' | 'each'>): number {
  try {
    const [project] = all('IFCPROJECT');
    const assigned = project ? each(at(project.args[8]).args[0]) : [];
    const length = assigned.find(({ args }) => wordOf(args[1]) === 'LENGTHUNIT');
    if (length) return feetIn(length, at, 0);
  } catch (error) {
    if (!(error instanceof PartRefused)) throw error;
  }
  const fix = 'export the model with its units: IFCPROJECT names them';
  throw new FileRefused('model-units', 'the model does not say in what unit its lengths are', fix);
}

function feetIn(measure: Entity, at: Model['at'], depth: number): number {
  const found = namedFeet(measure, at, depth);
  if (!(found > 1e-9 && found < 1e6)) throw new PartRefused('the unit has no size');
  return found;
}

function namedFeet({ type, args }: Entity, at: Model['at'], depth: number): number {
  if (type === 'IFCSIUNIT') {
    const prefix = wordOf(args[2]);
    const times = prefix === undefined ? 1 : prefixes[prefix];
    if (wordOf(args[3]) === 'METRE' && times !== undefined) return metre * times;
  }
  // A foot is so many of another unit; that one is not one of the first again.
  if (type === 'IFCCONVERSIONBASEDUNIT' && depth < 3) {
    const factor = at(args[3]);
    return figure(factor.args[0]) * feetIn(at(factor.args[1]), at, depth + 1);
  }
  throw new PartRefused('the unit is not known');
}
