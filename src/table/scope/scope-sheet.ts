import type { LookUp } from '../../core/book/index.js';
import { words, type Block, type Sheet } from '../../sheet/index.js';
import { findings } from './findings.js';
import { layers } from './layers.js';

const lead = (text: string): Block => ({ block: 'prose', tone: 'lead', of: [words(text)] });

/** What nobody or two do, then who does what, room by room. */
export function scopeSheet(look: LookUp): Sheet {
  const none = 'None found: every layer that the records ask for has one trade.';
  return {
    format: 'bookmatch/sheet/1',
    id: 'scope',
    title: 'Scope',
    paper: 'portrait',
    blocks: [
      lead(
        'Who supplies and installs each layer of each place, from the framing out. What a finish needs beneath it, what trades carry and what rooms must have is written in the records.',
      ),
      {
        block: 'section',
        id: 'findings',
        title: 'Gaps and overlaps',
        of:
          look.book.scope.findings.length === 0
            ? [{ block: 'prose', tone: 'plain', of: [words(none)] }]
            : [findings.lay(look)],
      },
      { block: 'section', id: 'layers', title: 'Who does what, by room', of: [layers.lay(look)] },
    ],
  };
}

/** The findings alone, as they are printed; nothing where there are none. */
export function findingSheet(look: LookUp): Sheet | undefined {
  if (look.book.scope.findings.length === 0) return undefined;
  return {
    format: 'bookmatch/sheet/1',
    id: 'scope',
    title: 'Scope: to be settled',
    paper: 'landscape',
    blocks: [
      lead(
        'What nobody does, or two do, or was never chosen, by what the records say of layers and trades. Who does each layer of each place is in the site’s sheet of scope.',
      ),
      findings.lay(look),
    ],
  };
}
