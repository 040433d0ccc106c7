import type { Model } from '../model.js';
import { attempt } from '../refused.js';
import { isList, isRef, isTyped, wordOf, type Entity, type Value } from '../step/value.js';

/** Whether the model says that something is in an outside wall: by a property of itself, of its type or of the wall, or by the border of a
 *  space. Undefined where it does not say. */
export function externalFinder(model: Model): (id: number, host: number | undefined) => boolean | undefined {
  const said = new Map<number, boolean>();
  const note = (ids: Value, is: boolean | undefined): void => {
    if (is === undefined || !isList(ids)) return;
    for (const id of ids) if (isRef(id)) said.set(id.ref, is || said.get(id.ref) === true);
  };
  for (const { args } of model.all('IFCRELDEFINESBYTYPE')) {
    const type = attempt(() => model.at(args[5]));
    if ('value' in type && isList(type.value.args[5]))
      for (const set of type.value.args[5]) note(args[4], isExternalIn(model, set));
  }
  for (const { args } of model.all('IFCRELDEFINESBYPROPERTIES')) note(args[4], isExternalIn(model, args[5]));
  const bordering = new Set<number>();
  for (const { args } of model.all(...borders)) {
    if (isRef(args[5]) && wordOf(args[8])?.startsWith('EXTERNAL')) bordering.add(args[5].ref);
  }
  return (id, host) => {
    if (bordering.has(id)) return true;
    return said.get(id) ?? (host === undefined ? undefined : said.get(host));
  };
}

const borders = ['IFCRELSPACEBOUNDARY', 'IFCRELSPACEBOUNDARY1STLEVEL', 'IFCRELSPACEBOUNDARY2NDLEVEL'];

/** What a set of properties says of `IsExternal`. */
function isExternalIn(model: Model, set: Value): boolean | undefined {
  const found = attempt(() => {
    const entity = model.at(set);
    return entity.type === 'IFCPROPERTYSET' ? model.each(entity.args[4]).find(isNamed) : undefined;
  });
  const value = 'value' in found ? found.value?.args[2] : undefined;
  const word = isTyped(value) ? wordOf(value.value) : undefined;
  return word === 'T' ? true : word === 'F' ? false : undefined;
}

function isNamed({ type, args }: Entity): boolean {
  return type === 'IFCPROPERTYSINGLEVALUE' && args[0] === 'IsExternal';
}
