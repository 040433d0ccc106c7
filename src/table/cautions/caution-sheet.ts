import type { LookUp } from '../../core/book/index.js';
import { adoptedWords, cautionWords, countWords } from '../../core/caution/index.js';
import { words, type Block, type Sheet } from '../../sheet/index.js';
import { cautions } from './cautions.js';
import { cautionRules } from './rules.js';

/** The register as it is printed, then every rule that looked, also those that saw nothing. */
export function cautionSheet(look: LookUp): Sheet {
  const { cautions: found, house } = look.book;
  return {
    format: 'bookmatch/sheet/1',
    id: 'cautions',
    title: cautionWords.title,
    paper: 'landscape',
    blocks: [
      { block: 'prose', tone: 'lead', of: [words(found.length === 0 ? cautionWords.none : cautionWords.lead)] },
      { block: 'prose', tone: 'plain', of: [words(adoptedWords(house.code))] },
      ...(found.length === 0 ? [] : register(look)),
      cautionRules.lay(look),
    ],
  };
}

function register(look: LookUp): readonly Block[] {
  const count: Block = { block: 'prose', tone: 'plain', of: [words(`${countWords(look.book.cautions)}.`)] };
  return [count, cautions.lay(look)];
}
