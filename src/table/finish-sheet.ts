import type { LookUp } from '../core/book/index.js';
import { words, type Sheet } from '../sheet/index.js';
import { finishes, finishKeys, finishRemarks } from './finish.js';
import { isFilled, part } from './part.js';

const lead =
  'A key means the same finish in every room. A key in brackets is the standard, counted while the choice is open. Finishes stand in working order; where no place is named, they cover the whole floor, all walls or the whole ceiling.';

/** Room finish schedule, and on the same sheet what each key and remark means. */
export function finishSheet(look: LookUp): Sheet {
  return {
    format: 'bookmatch/sheet/1',
    id: 'finish-schedule',
    title: 'Room finish schedule',
    paper: 'landscape',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(lead)] },
      ...[finishes.lay(look)].filter(isFilled),
      ...part(look, { id: 'legend', title: 'Keys', of: finishKeys }),
      ...part(look, { id: 'remarks', title: 'Remarks', of: finishRemarks }),
    ],
  };
}
