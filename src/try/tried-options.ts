import type { Alternative, BookSelection } from '../core/book/index.js';
import { chosenAt } from './pick.js';

/** What can be picked at a place. */
export interface TriedOption {
  /** Slug, `none`, or null for nothing chosen. */
  readonly option: string | null;
  /** With its figures, where it is an option. */
  readonly alternative?: Alternative;
  /** Does it stand there as recorded? */
  readonly stands: boolean;
}

/** What can be picked at a place: what stands there, and every option considered. Nothing wanted can be picked where the contract holds nothing
 *  for it. */
export function triedOptions(selection: BookSelection): readonly TriedOption[] {
  const { alternatives, standard, allowance, state } = selection;
  const stands = chosenAt(selection);
  const options = alternatives.map((alternative) => ({
    option: alternative.option,
    alternative,
    stands: alternative.option === stands,
  }));
  const isExtra = standard === undefined && allowance === undefined;
  return [
    ...(state === 'open' ? [{ option: null, stands: true }] : []),
    ...options,
    ...(isExtra || state === 'none' ? [{ option: 'none', stands: state === 'none' }] : []),
  ];
}
