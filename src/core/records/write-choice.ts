import type { Path } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { appendItem } from './splice-items.js';
import { setKeys, valueAt } from './splice-keys.js';

/** A choice to be written down. */
export interface NewChoice {
  /** Where the selection stands in its room's record. */
  readonly path: Path;
  /** Slug, or `none`; null takes a choice away, and who made it with it. */
  readonly option: string | null;
  readonly on: IsoDate;
  readonly by: string;
  /** Short digest of the choice slip that it was handed over by. */
  readonly slip?: string;
}

/** A room's record with a choice for one of its places that a finish set gives to others as well: the set's selection as it stands in the house's
 *  record at `path`, at the room's places, with the choice in it, after what the room selects itself. */
export function writeOverride(
  room: string,
  house: string,
  { at, ...choice }: NewChoice & { readonly at: readonly string[] },
): string {
  const written = valueAt(house, choice.path) as Readonly<Record<string, unknown>>;
  const [first] = at;
  const own = { ...written, at: at.length === 1 ? first : at, ...keysOf(choice) };
  const told = Object.entries(own).filter(([, value]) => value !== undefined);
  return appendItem(room, 'selections', Object.fromEntries(told), []);
}

/** A room's record with choices in it. What stood in `chosen` and beside it gives way; nothing else of the record changes. */
export function writeChoices(text: string, choices: readonly NewChoice[]): string {
  return setKeys(
    text,
    choices.map((choice) => ({
      in: choice.path,
      values: keysOf(choice),
      after: ['chosen', 'considering', 'allowance', 'standard', 'category'],
    })),
  );
}

/** The keys of a selection that say what is chosen, when, by whom and by which slip; undefined is none. */
function keysOf({ option, on, by, slip }: NewChoice): Readonly<Record<string, string | undefined>> {
  const isOpen = option === null;
  return {
    chosen: isOpen ? undefined : option,
    'chosen-on': isOpen ? undefined : on,
    'chosen-by': isOpen ? undefined : by,
    slip: isOpen ? undefined : slip,
  };
}
