import type { Xy } from '../../../base/geometry/index.js';
import { readBody } from '../body/body.js';
import type { Model } from '../model.js';
import { plainName } from '../name.js';
import { attempt } from '../refused.js';
import { turnedBack, turnedBackInSpace, type Turn } from '../room/turn.js';
import { isRef, wordOf, type Entity } from '../step/value.js';
import type { Xyz } from '../xyz.js';
import { swingsOf, type Swing } from './swing.js';
import { externalFinder } from './external.js';

/** A door, a window or a bare opening of the model, as a hole through a wall. */
export interface Hole {
  /** The door or window, else the opening itself. */
  readonly entity: Entity;
  readonly kind: 'door' | 'window' | 'open';
  /** Corners of its body in feet, on the turned plan. */
  readonly corners: readonly Xyz[];
  /** Out of doors on one side, or between rooms, where the model says so. */
  readonly isExternal?: boolean;
  readonly swing?: Swing;
  /** The way that its own y runs, on the turned plan: doors swing that way. */
  readonly ahead: Xy;
  readonly tag: string;
  readonly name: string;
}

/** A hole that cannot be placed, and why. */
interface Unread {
  readonly entity: Entity;
  readonly why: string;
}

interface Holes {
  readonly holes: readonly Hole[];
  readonly unread: readonly Unread[];
}

/** Every door and window of the model, and every opening in a wall that nothing fills. */
export function readHoles(model: Model, turn: Turn): Holes {
  const externalOf = externalFinder(model);
  const swingOf = swingsOf(model);
  const hosts = pairs(model, 'IFCRELVOIDSELEMENT', 5, 4);
  const filled = pairs(model, 'IFCRELFILLSELEMENT', 5, 4);
  const fillings = model.all('IFCDOOR', 'IFCDOORSTANDARDCASE', 'IFCWINDOW', 'IFCWINDOWSTANDARDCASE');
  const used = new Set(filled.values());
  const bare = model.all('IFCOPENINGELEMENT', 'IFCOPENINGSTANDARDCASE').filter((opening) => {
    const host = hosts.get(opening.id);
    const type = host === undefined ? undefined : attempt(() => model.at({ ref: host }).type);
    const isInWall = type && 'value' in type && type.value.startsWith('IFCWALL');
    return !used.has(opening.id) && isInWall && wordOf(opening.args[8]) !== 'RECESS';
  });
  const holes: Hole[] = [];
  const unread: Unread[] = [];
  for (const entity of [...fillings, ...bare]) {
    const own = filled.get(entity.id);
    const host = hosts.get(own ?? entity.id);
    const body = bodyOfHole(model, entity, own);
    if ('why' in body) {
      unread.push({ entity, why: body.why });
      continue;
    }
    const ahead = attempt(() => model.standing(entity.args[5]).y);
    const kind = entity.type.startsWith('IFCDOOR') ? 'door' : entity.type.startsWith('IFCWINDOW') ? 'window' : 'open';
    const isExternal = externalOf(entity.id, host);
    const swing = kind === 'door' ? swingOf(entity) : undefined;
    holes.push({
      entity,
      kind,
      corners: body.value.faces.flat(2).map((corner) => turnedBackInSpace(corner, turn)),
      ...(isExternal !== undefined && { isExternal }),
      ...(swing && { swing }),
      ahead: 'value' in ahead ? turnedBack(ahead.value, turn) : { x: 0, y: 0 },
      tag: plainName(entity.args[7]),
      name: plainName(entity.args[2]),
    });
  }
  return { holes, unread };
}

/** Of a door, the hole that it fills; where none is read, its own body. */
function bodyOfHole(
  model: Model,
  entity: Entity,
  hole: number | undefined,
): ReturnType<typeof attempt<ReturnType<typeof readBody>>> {
  if (hole !== undefined) {
    const through = attempt(() => readBody(model, model.at({ ref: hole })));
    if ('value' in through) return through;
  }
  return attempt(() => readBody(model, entity));
}

/** What a relation joins: by the id of one, the id of the other. */
function pairs(model: Model, type: string, one: number, other: number): ReadonlyMap<number, number> {
  const found = new Map<number, number>();
  for (const { args } of model.all(type)) {
    const [from, to] = [args[one], args[other]];
    if (isRef(from) && isRef(to) && !found.has(from.ref)) found.set(from.ref, to.ref);
  }
  return found;
}
