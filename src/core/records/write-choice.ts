import type { Path } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { appendItem, setKeys, valueAt } from './splice-keys.js';

/** A choice to be written down. */
export interface NewChoice {
  /** Where the selection stands in its room's record. */
  readonly path: Path;
  /** Slug, or `none`. */
  readonly option: string;
  readonly on: IsoDate;
  readonly by: string;
}

/** A room's record with a choice for one of its places that a finish set gives to others as well: the set's selection as it stands in the house's
 *  record at `path`, at the room's places, with the choice in it, after what the room selects itself. */
export function writeOverride(
  room: string,
  house: string,
  { path, at, option, on, by }: NewChoice & { readonly at: readonly string[] },
): string {
  const written = valueAt(house, path) as Readonly<Record<string, unknown>>;
  const [first] = at;
  return appendItem(room, 'selections', {
    ...written,
    at: at.length === 1 ? first : at,
    chosen: option,
    'chosen-on': on,
    'chosen-by': by,
  });
}

/** A room's record with choices in it. What stood in `chosen` gives way; nothing else of the record changes. */
export function writeChoices(text: string, choices: readonly NewChoice[]): string {
  return setKeys(
    text,
    choices.map(({ path, option, on, by }) => ({
      in: path,
      values: { chosen: option, 'chosen-on': on, 'chosen-by': by },
      after: ['chosen', 'considering', 'allowance', 'standard', 'category'],
    })),
  );
}
