import type { RoomSpace } from '../feature/index.js';
import type { Room } from '../model/index.js';
import { roomSpace } from './feature.js';
import { planOf } from './plan.js';
import { vaultsOf } from './vault.js';
import { wallShapes } from './wall.js';

/** What features are measured and drawn in: walls and heights of a room. Undefined when it has no plan or no ceiling. */
export function spaceOf(room: Room): RoomSpace | undefined {
  const { value: plan } = planOf(room);
  const vaults = plan && vaultsOf(room, plan).value;
  return plan && vaults && roomSpace(room, plan, vaults, wallShapes(plan, vaults));
}
