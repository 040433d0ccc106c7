import type { AdoptedCode, Option } from '../model/index.js';
import type { Caution, CautionSource } from './caution.js';
import type { SelectionView } from './view.js';
import { counted } from '../../base/units/index.js';

/** Words that the site, the printed book and the commands share about cautions. */
export const cautionWords = {
  title: 'Cautions',
  lead: 'Things seen in these records that want a second look before they are built. None is a verdict: local code and licensed practice decide.',
  none: 'No rule saw anything to look at again. That is no approval: local code and licensed practice decide.',
  source: 'Source',
  ask: 'Ask',
  locally: 'Adopted code',
  open: 'To clear up',
  accepted: 'Accepted',
  rules: 'Rules that looked',
} as const;

/** `International Residential Code, 2018, R312.1.2`; without an edition `common practice, no source: …`. */
export function sourceText({ document, edition, section }: CautionSource): string {
  return edition === '' ? `${document}: ${section}` : `${document}, ${edition}, ${section}`;
}

/** The edition that a code's figure is from, and what decides instead: a clause. Empty where the source is no code. */
export function locallyWords({ isCode, edition }: CautionSource, adopted: AdoptedCode | undefined): string {
  if (!isCode) return '';
  const figure = `the figure is of the ${edition} edition`;
  return adopted
    ? `${figure}; ${codeName(adopted)}, adopted by ${adopted.by}, decides: ask its building office`
    : `${figure}; the house does not name its adopted code, which decides: ask the building office which it is`;
}

/** What the whole list of cautions is held against, in a sentence. */
export function adoptedWords(adopted: AdoptedCode | undefined): string {
  return adopted
    ? `Adopted by ${adopted.by}: ${codeName(adopted)}. Figures below are from the editions named beside them; that code decides.`
    : 'The house does not name the code that is adopted where it is built (code in house.md). Ask the building office which it is: it decides.';
}

function codeName({ name, edition }: AdoptedCode): string {
  return `${name}, ${edition}`;
}

/** `To clear up`, or who accepted it; the day stands apart, each output prints it its own way. */
export function stateWords({ accepted }: Caution): string {
  return accepted ? `${cautionWords.accepted} by ${accepted.by}` : cautionWords.open;
}

/** `9 cautions, 2 of them accepted`. */
export function countWords(cautions: readonly Caution[]): string {
  const all = counted(cautions.length, 'caution');
  const accepted = cautions.filter((caution) => caution.accepted).length;
  if (accepted === 0) return all;
  return accepted === cautions.length ? `${all}, accepted` : `${all}, ${accepted} of them accepted`;
}

/** An option with how far it is from being built: `Horizontal cable, still considered`. */
export function optionWords({ state, counted }: SelectionView, option: Option): string {
  if (state !== 'open') return option.name;
  return option === counted ? `${option.name}, the standard while this is open` : `${option.name}, still considered`;
}

/** A side of a room where no wall stands: `South side, open to Kitchen`. */
export function sideWords(wall: string, beside: string): string {
  return `${wall.replace(/ wall$/u, '')} side, open to ${beside}`;
}

/** `a, b and c`. */
export function joinWords(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
