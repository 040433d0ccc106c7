import { distance, type Xy } from '../../base/geometry/index.js';
import { pointOfEnd, type Joint } from './joint.js';
import type { LayRoom } from './laid-room.js';
import { jointRows } from './place-rooms.js';

/** The shortest way from room to room through joints, out by one and back to where it began, as a surveyor walks a traverse. */
export interface Loop {
  /** Indices of the rooms, in order. */
  readonly rooms: readonly number[];
  readonly joints: readonly Joint[];
  /** From joint to joint through each room, in feet. */
  readonly length: number;
  /** By how much the way back misses where it began, in feet. */
  readonly miss: Xy;
}

/** The loop that a joint closes; undefined where its rooms hang together by it alone. */
export function loopOf(joint: Joint, joints: readonly Joint[], rooms: readonly LayRoom[]): Loop | undefined {
  const [start, goal] = [joint.a.room, joint.b.room];
  const came = new Map<number, { readonly from: number; readonly by: Joint }>();
  const queue = [start];
  for (let here = queue.shift(); here !== undefined && here !== goal; here = queue.shift()) {
    for (const other of joints) {
      if (other === joint) continue;
      const next = other.a.room === here ? other.b.room : other.b.room === here ? other.a.room : undefined;
      if (next === undefined || next === start || came.has(next)) continue;
      came.set(next, { from: here, by: other });
      queue.push(next);
    }
  }
  const last = came.get(goal);
  if (!last) return undefined;
  const passed: { readonly room: number; readonly by: Joint }[] = [];
  for (let here = goal, step = came.get(here); step; here = step.from, step = came.get(here))
    passed.unshift({ room: here, by: step.by });
  const ways = [...passed.map(({ by }) => by), joint];
  const order = [start, ...passed.map(({ room }) => room)];
  const length = order.reduce((sum, room, index) => {
    const [into, out] = [ways[(index + ways.length - 1) % ways.length], ways[index]] as [Joint, Joint];
    return sum + distance(pointIn(room, into, rooms), pointIn(room, out, rooms));
  }, 0);
  const miss = ways.reduce(
    (sum, way, index) => {
      const step = stepOf(way, rooms);
      const sign = way.a.room === order[index] ? 1 : -1;
      return { x: sum.x + sign * step.x, y: sum.y + sign * step.y };
    },
    { x: 0, y: 0 },
  );
  return { rooms: order, joints: ways, length, miss };
}

/** From the origin of a joint's first room to that of its second, as its tapes say. */
function stepOf(joint: Joint, rooms: readonly LayRoom[]): Xy {
  const [along, across] = jointRows(joint, rooms);
  return {
    x: along.way.x * along.is + across.way.x * across.is,
    y: along.way.y * along.is + across.way.y * across.is,
  };
}

function pointIn(room: number, { a, b }: Joint, rooms: readonly LayRoom[]): ReturnType<typeof pointOfEnd> {
  return pointOfEnd(a.room === room ? a : b, rooms);
}
