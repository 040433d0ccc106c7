import type { Model } from '../model.js';
import { PartRefused } from '../refused.js';
import { isList, type Entity, type Value } from '../step/value.js';
import { bodyOf, type Body } from './face.js';
import { solidsOf } from './solid.js';

/** The body of an object (a space, an opening, a flight) as it stands in the model. Throws PartRefused in half a sentence. */
export function readBody(model: Model, { args }: Entity): Body {
  const [, , , , , placement, shape] = args;
  const body = shapeNamed(model, shape, 'body');
  if (!body) throw new PartRefused('it has no body');
  const frame = model.standing(placement);
  return bodyOf(model.each(body.args[3]).flatMap((item) => solidsOf(model, item, frame)));
}

/** One of an object's shapes, by what the model calls it. */
function shapeNamed(model: Model, shape: Value, name: string): Entity | undefined {
  const shapes = model.perhaps(shape)?.args[2];
  if (!isList(shapes)) return undefined;
  return model.each(shapes).find(({ args }) => typeof args[1] === 'string' && args[1].toLowerCase() === name);
}
