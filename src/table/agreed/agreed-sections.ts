import type { LookUp } from '../../core/book/index.js';
import { words, type Block } from '../../sheet/index.js';
import { agreedSteps } from '../money/index.js';
import { issues } from './issues.js';

/** The issues, and the contract sum as it was agreed. */
export function agreedSections(look: LookUp): readonly Block[] {
  const digest =
    'A digest is a number made from all that was issued. A copy with the same digest says the same; a copy with another is another book.';
  const issued: Block = {
    block: 'section',
    id: 'issues',
    title: 'Issues',
    of: [issues.lay(look), { block: 'prose', tone: 'small', of: [words(digest)] }],
  };
  const agreed: Block = {
    block: 'section',
    id: 'agreed',
    title: 'The contract sum, as it was agreed',
    of: [
      agreedSteps.lay(look),
      {
        block: 'prose',
        tone: 'plain',
        of: [words('The same way by allowances and choices', { to: 'page', id: 'money.html' })],
      },
    ],
  };
  return look.book.issues.length === 0 ? [agreed] : [issued, agreed];
}
