import { factOf } from '../../fact/index.js';
import type { Category, OpeningMeasure } from '../../model/index.js';
import { hingesOf } from '../../takeoff/index.js';
import type { BookOption } from '../book.js';
import type { DoorRow } from './schedule.js';

type Facts = Pick<
  DoorRow,
  'function' | 'stop' | 'fireRating' | 'undercut' | 'glass' | 'finish' | 'hinges' | 'functionIsMade' | 'isFlush'
>;

/** What a door and its hardware are beside their size. Hinges are counted where a category's record says that they go with it. */
export function doorFacts(
  opening: OpeningMeasure,
  door: { readonly option: BookOption | undefined; readonly category: Pick<Category, 'measure'> | undefined },
  hardware: { readonly option: BookOption | undefined; readonly category: Pick<Category, 'measure'> | undefined },
): Facts {
  const {
    function: locks,
    stop,
    fireRating,
    flush,
    undercut = factOf(door.option, 'door', 'undercut'),
  } = opening.door ?? {};
  const glass = factOf(door.option, 'door', 'glass');
  const finish = factOf(hardware.option, 'door-hardware', 'finish');
  const made = factOf(hardware.option, 'door-hardware', 'function');
  const count = hingesOf(opening);
  const by = boughtWith(door.option && door.category, hardware.option && hardware.category);
  return {
    ...(locks && { function: locks }),
    ...(stop && { stop }),
    ...(fireRating !== undefined && { fireRating }),
    ...(undercut !== undefined && { undercut }),
    ...(glass !== undefined && { glass }),
    ...(finish !== undefined && { finish }),
    ...(count > 0 && { hinges: { count, ...(by && { with: by }) } }),
    ...(locks && made !== undefined && { functionIsMade: made.split(/,\s*/u).includes(locks) }),
    ...(flush && { isFlush: true }),
  };
}

function boughtWith(
  door: Pick<Category, 'measure'> | undefined,
  hardware: Pick<Category, 'measure'> | undefined,
): NonNullable<DoorRow['hinges']>['with'] {
  const [byDoor, byHardware] = [countsHinges(door), countsHinges(hardware)];
  if (byDoor && byHardware) return 'twice';
  if (byDoor) return 'door';
  return byHardware ? 'hardware' : undefined;
}

const countsHinges = (category: Pick<Category, 'measure'> | undefined): boolean =>
  category?.measure.supplies?.some(({ goesWith }) => goesWith === 'hinges') ?? false;
