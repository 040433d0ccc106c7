import { cautionWords, sourceText, stateWords, type Caution } from '../../core/caution/index.js';
import { printDay } from '../../base/units/index.js';

/** One caution, at its room's page. */
export interface CautionRow {
  readonly place: string;
  readonly title: string;
  readonly seen: string;
  readonly says: string;
  readonly ask: string;
  readonly source: string;
  readonly state: string;
  readonly isAccepted: boolean;
  /** The reason, when it is accepted. */
  readonly why: string;
}

export function cautionRow(caution: Caution): CautionRow {
  const { placeText, title, seen, says, ask, source, accepted } = caution;
  return {
    place: placeText,
    title,
    seen,
    says,
    ask: `${cautionWords.ask} ${ask}.`,
    source: `${cautionWords.source}: ${sourceText(source)}`,
    state: accepted ? `${stateWords(caution)}, ${printDay(accepted.on)}` : stateWords(caution),
    isAccepted: accepted !== undefined,
    why: accepted?.why ?? '',
  };
}
