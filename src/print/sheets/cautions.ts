import { cautionWords, countWords, sourceText, stateWords } from '../../caution/index.js';
import type { Caution } from '../../caution/index.js';
import { printDay } from '../../units/index.js';
import type { LookUp } from '../../book/index.js';

/** The register of cautions, by room. */
export interface CautionSheet {
  readonly title: string;
  readonly lead: string;
  readonly count: string;
  readonly rows: readonly (CautionRow & { readonly slug: string; readonly room: string })[];
}

/** One caution, at its room's page and in the register. */
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

export function makeCautions(look: LookUp): CautionSheet {
  const { cautions } = look.book;
  return {
    title: cautionWords.title,
    lead: cautions.length === 0 ? cautionWords.none : cautionWords.lead,
    count: countWords(cautions),
    rows: cautions.map((caution) => ({
      ...cautionRow(caution),
      slug: caution.room,
      room: look.roomTitle(caution.room),
    })),
  };
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
