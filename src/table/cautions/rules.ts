import type { LookUp } from '../../core/book/index.js';
import { cautionRules as ruleBook, cautionWords, sourceText, type Caution } from '../../core/caution/index.js';
import { col, quiet, words, type Cell } from '../../sheet/index.js';
import { lower, inHouseWords } from '../../base/units/index.js';
import { schedule } from '../schedule.js';

type Row = (typeof ruleBook)[number] & { readonly seen: readonly (Caution & { readonly roomName: string })[] };

/** Every rule, with what it looks for, its source and what it saw in this house; also those that saw nothing. */
export const cautionRules = schedule<Row>({
  table: {
    id: 'caution-rules',
    caption: 'Every rule, with what it looks for, its source and what it saw in this house',
    named: 'rule',
    rowId: ({ id }) => id,
    columns: [
      col.words('rule', 'Rule', ({ title }) => title, { width: 'words' }),
      col.lines(
        'looksFor',
        'Looks for',
        ({ limits }) => limits().map(({ what, text }) => ({ cell: words(`${what}: ${text}`) })),
        { width: 'long' },
      ),
      col.lines(
        'suchAs',
        'Such as',
        ({ examples }) =>
          examples.filter(({ sees }) => sees !== null).map(({ what }) => ({ cell: words(inHouseWords(what)) })),
        { width: 'words' },
      ),
      col.words('source', 'Source', ({ source }) => sourceText(source), { width: 'words' }),
      col.cell('lines', 'seen', 'Seen', seenOf, { width: 'words' }),
    ],
  },
  rows: ({ book, roomName }: LookUp) =>
    ruleBook.map((rule) => ({
      ...rule,
      seen: book.cautions
        .filter((caution) => caution.rule === rule.id)
        .map((caution) => ({ ...caution, roomName: roomName(caution.room) })),
    })),
});

function seenOf({ seen }: Row): Cell {
  if (seen.length === 0) return quiet('nothing');
  const of = seen.map(({ id, roomName, placeText, accepted }) => ({
    cell: words(`${roomName}, ${lower(placeText)}`, { to: 'caution', id }),
    ...(accepted && { after: `(${cautionWords.accepted.toLowerCase()})` }),
  }));
  return { is: 'lines', of };
}
