import { printQuantity } from '../../../base/units/index.js';
import { prove, roomPath } from '../prove.js';
import type { DraftLevel } from './level.js';
import type { Item, RoomParts, RoomText } from './record.js';
import type { Space } from './space.js';

/** A room as it would be written, and the same with some use, so that the rest of it can be checked where its use is asked. */
export interface Drafted extends RoomParts {
  readonly record: RoomText;
  readonly proof: RoomText;
}

/** What of the drafts does not hold, and why. */
interface Wrong {
  readonly rooms: ReadonlyMap<Space, string>;
  readonly items: readonly { readonly item: Item; readonly why: string }[];
}

/** Share of a body's volume by which its draft's may differ. */
const nearVolume = 0.001;

/** Reads and measures drafts as any records are: what is an error, and where a volume is not that of the body. */
export function proveRooms(drafted: readonly Drafted[], levels: readonly DraftLevel[]): Wrong {
  const byPath = new Map(drafted.map((room) => [roomPath(room.space.slug), room]));
  const sources = [...byPath].map(([path, { proof }]) => ({ path, text: proof.text }));
  const ids = levels.map(({ id }) => id);
  const { volumes, errors } = prove(sources, ids);
  const rooms = new Map<Space, string>();
  const items: { item: Item; why: string }[] = [];
  for (const { file, at, message } of errors) {
    const room = byPath.get(file);
    const item = room?.proof.items.get(at.line);
    if (item) items.push({ item, why: message });
    else if (room && !rooms.has(room.space)) rooms.set(room.space, `its draft would be an error: ${message}`);
  }
  if (errors.length > 0) return { rooms, items };
  for (const [path, { space }] of byPath) {
    const [drawn, taken] = [space.shape.volume, volumes.get(path)];
    if (taken !== undefined && Math.abs(taken / drawn - 1) <= nearVolume) continue;
    const [one, other] = [printQuantity(drawn, 'cu ft', 2), printQuantity(taken ?? 0, 'cu ft', 2)];
    rooms.set(space, `its body holds ${one}, and a draft of it ${other}`);
  }
  return { rooms, items };
}
