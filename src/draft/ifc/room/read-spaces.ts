import { slugFor } from '../../../core/records/index.js';
import { readBody } from '../body/body.js';
import type { Body } from '../body/face.js';
import type { Model } from '../model.js';
import { plainName, untaken } from '../name.js';
import { attempt, PartRefused } from '../refused.js';
import type { Entity } from '../step/value.js';
import { shapeOf } from './shape.js';
import type { Space } from './space.js';
import { storeyFinder, type Storey } from './storey.js';
import { mainTurn, type Turn } from './turn.js';

/** What a house has already: no draft takes the same. */
export interface Taken {
  readonly numbers: readonly string[];
  readonly marks: readonly string[];
  readonly rooms: readonly string[];
  readonly levels: readonly { readonly id: string; readonly name: string }[];
}

/** A space that is no room, and why. */
export interface LeftOut {
  readonly entity: Entity;
  readonly number: string;
  readonly name: string;
  readonly why: string;
}

export interface Spaces {
  readonly spaces: readonly Space[];
  readonly leftOut: readonly LeftOut[];
  readonly turn: Turn;
  /** What naming a space leaves open. */
  readonly asks: ReadonlyMap<Space, readonly string[]>;
}

interface Stood {
  readonly entity: Entity;
  readonly body: Body;
  readonly storey: Storey;
}

/** Every space of a model in the order of the file: its shape on the turned plan and its names, or why it is no room. */
export function readSpaces(model: Model, taken: Taken): Spaces {
  const storeyOf = storeyFinder(model);
  const leftOut: LeftOut[] = [];
  const leave = (entity: Entity, why: string): void => void leftOut.push({ entity, ...writtenNames(entity), why });
  const stood = model.all('IFCSPACE').flatMap((entity): Stood[] => {
    const read = attempt(() => {
      const storey = storeyOf(entity);
      if (!storey) throw new PartRefused('it stands on no storey');
      return { entity, body: readBody(model, entity), storey };
    });
    if ('value' in read) return [read.value];
    leave(entity, read.why);
    return [];
  });
  const asDrawn = stood.flatMap(({ body }) => {
    const shape = attempt(() => shapeOf(body, 0));
    return 'value' in shape ? [shape.value.floor.outline] : [];
  });
  const turn = mainTurn(asDrawn);
  const shaped = stood.flatMap((one) => {
    const shape = attempt(() => shapeOf(one.body, turn));
    if ('value' in shape) return [{ ...one, shape: shape.value }];
    leave(one.entity, shape.why);
    return [];
  });
  const name = namer(taken, shaped);
  const named = shaped.map(({ entity, storey, shape }) => {
    const { asks, ...names } = name(entity);
    return { space: { entity, storey, shape, ...names }, asks };
  });
  return {
    spaces: named.map(({ space }) => space),
    leftOut,
    turn,
    asks: new Map(named.map(({ space, asks }) => [space, asks])),
  };
}

/** The number and the name, as far as the model has both: many programs write the number as a space's name, and its name as the long one. */
function writtenNames({ args }: Entity): { readonly number: string; readonly name: string } {
  const [short, long] = [plainName(args[2]), plainName(args[7])];
  if (long !== '') return { number: short, name: long };
  return /^\S{0,6}\d\S{0,6}$/u.test(short) ? { number: short, name: '' } : { number: '', name: short };
}

type Names = Pick<Space, 'name' | 'number' | 'slug'> & { readonly asks: readonly string[] };

/** Gives each space a name, and a number and a file of its own. */
function namer(taken: Taken, all: readonly { readonly entity: Entity }[]): (entity: Entity) => Names {
  const numbers = new Set(taken.numbers);
  // In records, outside is no room.
  const slugs = new Set(['outside']);
  const bases = new Map<string, number>();
  for (const { entity } of all) {
    const base = slugBase(writtenNames(entity));
    bases.set(base, (bases.get(base) ?? 0) + 1);
  }
  return (entity) => {
    const written = writtenNames(entity);
    const base = slugBase(written);
    const isShared = (bases.get(base) ?? 0) > 1;
    const own = isShared ? [base, slugFor(written.number)].filter((word) => word !== '').join('-') : base;
    const slug = untaken(own === '' ? `space-${entity.id}` : own, slugs);
    const isKept = taken.rooms.includes(slug);
    const number = isKept ? written.number || slug : untaken(written.number || 'S1', numbers);
    const asks = [
      ...(written.number === '' ? [`the model gives it no number: it is written as ${number}`] : []),
      ...(written.number !== '' && number !== written.number
        ? [`number ${written.number} is another room's: it is written as ${number}`]
        : []),
      ...(written.name === '' ? ['the model gives it no name'] : []),
    ];
    return { name: written.name || `Room ${number}`, number, slug, asks };
  };
}

function slugBase({ name, number }: { readonly name: string; readonly number: string }): string {
  return slugFor(name === '' ? `room ${number}` : name)
    .slice(0, 60)
    .replace(/-$/u, '');
}
