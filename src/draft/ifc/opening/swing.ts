import type { Model } from '../model.js';
import { attempt } from '../refused.js';
import { isList, isRef, wordOf, type Entity } from '../step/value.js';

/** How a door opens, as far as the model says. */
export interface Swing {
  readonly operation?: 'swing' | 'double' | 'sliding';
  /** Side of the hinges, seen the way that the door's own y runs, which is the way it swings. */
  readonly hinge?: 'left' | 'right';
}

/** The words of ISO 16739 for what opens one way or slides. Others, such as folding doors, are no operation that a record has. */
const swings: Readonly<Record<string, Swing>> = {
  SINGLE_SWING_LEFT: { operation: 'swing', hinge: 'left' },
  SINGLE_SWING_RIGHT: { operation: 'swing', hinge: 'right' },
  DOUBLE_DOOR_SINGLE_SWING: { operation: 'double' },
  SLIDING_TO_LEFT: { operation: 'sliding' },
  SLIDING_TO_RIGHT: { operation: 'sliding' },
  DOUBLE_DOOR_SLIDING: { operation: 'sliding' },
};

/** Reads it of a door, or of its type where the door does not say. */
export function swingsOf(model: Model): (door: Entity) => Swing | undefined {
  const types = new Map<number, Entity>();
  for (const { args } of model.all('IFCRELDEFINESBYTYPE')) {
    const type = attempt(() => model.at(args[5]));
    if (!('value' in type) || !isList(args[4])) continue;
    for (const object of args[4]) if (isRef(object)) types.set(object.ref, type.value);
  }
  return ({ id, args }) => {
    const own = swings[wordOf(args[11]) ?? ''];
    const type = types.get(id);
    if (own || !type) return own;
    return swings[wordOf(type.args[type.type === 'IFCDOORSTYLE' ? 8 : 10]) ?? ''];
  };
}
