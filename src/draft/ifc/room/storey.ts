import type { Model } from '../model.js';
import { plainName } from '../name.js';
import { attempt } from '../refused.js';
import { isList, isRef, type Entity, type Value } from '../step/value.js';

/** A storey of the model that spaces stand on. */
export interface Storey {
  readonly id: number;
  readonly name: string;
  /** Height in the model, in feet. */
  readonly height: number;
}

/** The storey of an object: the one that it is a part of, or of whose parts it is one. Undefined where there is none. */
export function storeyFinder(model: Model): (entity: Entity) => Storey | undefined {
  const above = new Map<number, Value>();
  const note = (parts: Value, whole: Value): void => {
    if (!isList(parts)) return;
    for (const part of parts) if (isRef(part) && !above.has(part.ref)) above.set(part.ref, whole);
  };
  for (const { args } of model.all('IFCRELAGGREGATES')) note(args[5], args[4]);
  for (const { args } of model.all('IFCRELCONTAINEDINSPATIALSTRUCTURE')) note(args[4], args[5]);
  const storeys = new Map(model.all('IFCBUILDINGSTOREY').map((entity) => [entity.id, storeyOf(model, entity)]));
  return ({ id }) => {
    let here: number | undefined = id;
    for (let step = 0; step < 20 && here !== undefined; step += 1) {
      const storey = storeys.get(here);
      if (storey) return storey;
      const whole: Value = above.get(here);
      here = isRef(whole) ? whole.ref : undefined;
    }
    return undefined;
  };
}

function storeyOf(model: Model, { id, args }: Entity): Storey {
  const name = plainName(args[2]) || plainName(args[7]) || `Level #${id}`;
  const placed = attempt(() => model.standing(args[5]).origin.z);
  const written = attempt(() => model.length(args[9]));
  const height = args[5] !== undefined && 'value' in placed ? placed.value : 'value' in written ? written.value : 0;
  return { id, name, height };
}
