import type { Path } from '../../base/problem/index.js';
import type { IsoDate } from '../../base/units/index.js';
import { setKeys } from './splice-keys.js';

/** A choice to be written down. */
export interface NewChoice {
  /** Where the selection stands in its room's record. */
  readonly path: Path;
  /** Slug, or `none`. */
  readonly option: string;
  readonly on: IsoDate;
  readonly by: string;
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
