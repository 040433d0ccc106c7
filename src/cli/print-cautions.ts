import { lookUp, type Book } from '../core/book/index.js';
import { cautionWords, countWords, sourceText, stateWords } from '../core/caution/index.js';
import { printDay } from '../base/units/index.js';

/** Every caution by room, for a terminal: its name, what was seen, what the source says, whom to ask and how it stands. */
export function printCautions(book: Book): string {
  const look = lookUp(book);
  return book.rooms
    .flatMap(({ slug }) => {
      const cautions = look.cautionsIn(slug);
      return cautions.length === 0 ? [] : [`${look.roomTitle(slug)}\n\n`, ...cautions.map(printCaution)];
    })
    .join('');
}

function printCaution(caution: Book['cautions'][number]): string {
  const { id, title, placeText, seen, says, source, locally, ask, accepted } = caution;
  const state = accepted ? `${stateWords(caution)}, ${printDay(accepted.on)}: ${accepted.why}` : stateWords(caution);
  const lines = [
    `${placeText}: ${title}`,
    seen,
    says,
    `${cautionWords.source}: ${sourceText(source)}`,
    ...(locally === '' ? [] : [`${cautionWords.locally}: ${locally}`]),
    `${cautionWords.ask}: ${ask}`,
    state,
    id,
  ];
  return `${lines.map((line, index) => `${index === 0 ? '  ' : '    '}${line}\n`).join('')}\n`;
}

/** One line that says how many there are; nothing when there are none. */
export function cautionLine({ cautions }: Book, areListed: boolean): string {
  if (cautions.length === 0) return '';
  return areListed
    ? `${countWords(cautions)}. ${cautionWords.lead}\n`
    : `${countWords(cautions)}: bookmatch check --cautions lists them.\n`;
}
