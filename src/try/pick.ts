import { selectionId, type Records, type Room, type Selection } from '../core/model/index.js';
import { keepSame, type IsoDate } from '../base/units/index.js';

/** What is tried at one place. */
export interface Pick {
  /** As `selectionId` makes it. */
  readonly selection: string;
  /** An option's slug, `none` where nothing is wanted, or null where nothing is chosen. */
  readonly option: string | null;
}

/** What stands at a place of a Book, as a pick names it. */
export function chosenAt({ chosen, state }: { readonly chosen?: string; readonly state: string }): string | null {
  return state === 'none' ? 'none' : (chosen ?? null);
}

/** The records as they would be with choices made on a day; by whom is not told yet. */
export function withPicks(records: Records, picks: readonly Pick[], on: IsoDate): Records {
  return picker()(records, picks, on);
}

/** Picks in the same records one time after the other. What nobody picked stays the same object, and so does what is picked again, so that what is
 *  kept of it is found. */
export function picker(): typeof withPicks {
  const choose = keepSame(withOption);
  const select = keepSame((room: Room, selections: Room['selections']): Room => ({ ...room, selections }));
  return (records, picks, on) => {
    if (picks.length === 0) return records;
    const options = new Map(picks.map(({ selection, option }) => [selection, option]));
    const rooms = records.rooms.map((room) => {
      const selections = room.selections.map((selection) => {
        const option = options.get(selectionId(room.slug, selection));
        return option === undefined ? selection : choose(selection, option, on);
      });
      return selections.some((selection, index) => selection !== room.selections[index])
        ? select(room, selections)
        : room;
    });
    return { ...records, rooms };
  };
}

function withOption(
  { chosen: _, chosenOn: _on, chosenBy: _by, slip: _slip, ...open }: Selection,
  option: string | null,
  on: IsoDate,
): Selection {
  return option === null ? open : { ...open, chosen: option, chosenOn: on };
}
