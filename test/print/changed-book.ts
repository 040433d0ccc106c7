import type { Book } from '../../src/core/book/index.js';
import { smallBook } from '../book/small-house.js';

const commit = 'c'.repeat(40);
const order = (state: string, amount: string): string => `---
title: Oak in the study
state: ${state}
from: ${commit}
to: ${commit}
proposed-on: 2026-04-21
${state === 'proposed' ? '' : 'decided-on: 2026-04-23\ndecided-by: The owners\n'}reason: The sample looked better.
days: 2 days
amount: ${amount}
valid-until: 2026-05-01
requested-by: The owner
replaces:
  - { room: study, from: ${'a'.repeat(64)}, to: ${'b'.repeat(64)} }
lines:
  - { room: study, what: Floor, from: Pine, to: Oak, amount: ${amount} }
---
`;
/** The small house with three change orders: approved, declined, proposed. */
export const changedBook = (): Book =>
  smallBook({
    'content/changes/001.md': order('approved', '$120.25'),
    'content/changes/002.md': order('declined', '$900'),
    'content/changes/003.md': order('proposed', '-$20.50'),
  });
