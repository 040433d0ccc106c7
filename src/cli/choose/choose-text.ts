import { lookUp, type Book, type LookUp } from '../../core/book/index.js';
import { counted, joinWords, printDay } from '../../base/units/index.js';
import { choiceText } from '../../table/index.js';
import { slipWords, type Held, type SlipChoice } from '../../slip/index.js';
import type { ReadSlip } from './read-slips.js';
import type { Wanted } from './wanted.js';

/** `Choice slip 4F2A-91C0-77BE, mail.txt: 3 choices by The owners, 20 April 2026`, its sentence, and whether the records are those that it was made from. */
export function slipsText(slips: readonly ReadSlip[], recordsDigest: string): string {
  return slips
    .map(({ file, slip, short, by }) => {
      const { choices, on, note, snapshot } = slip;
      const isSame = snapshot !== '' && recordsDigest.startsWith(snapshot);
      const made = isSame ? 'Made from the records as they are now.' : 'The records have changed since it was made.';
      const sentence = note === undefined ? '' : `"${note}"\n`;
      return `Choice slip ${short}, ${file}: ${counted(choices.length, 'choice')} by ${by}, ${printDay(on)}\n${sentence}${made}\n`;
    })
    .join('\n');
}

/** What is taken and what stands already, a line for each; of several slips, who wants it. */
export function heldText(held: readonly (readonly [Wanted, Held])[], book: Book, several: boolean): string {
  const look = lookUp(book);
  const { choices: words } = slipWords(book, { choices: held.map(([{ choice }]) => choice) });
  const lines = held.map(([{ choice, slips }, { is }], index) => {
    const { where = '', was = '', now = '' } = words[index] ?? {};
    const files = joinWords([...new Set(slips.map(({ file }) => file))]);
    const what = was === now ? now : `${was} → ${now}`;
    return { is, text: `  ${where}: ${what}${notConsidered(choice, look)}${several ? `  (${files})` : ''}\n` };
  });
  const part = (title: string, is: Held['is']): string => {
    const own = lines.filter((line) => line.is === is);
    return own.length === 0 ? '' : `${title}\n${own.map(({ text }) => text).join('')}`;
  };
  return [part('Choices', 'open to it'), part('So already', 'so already')].filter((text) => text !== '').join('\n');
}

/** Each choice that cannot be taken: where it is written, and why. */
export function refusedText(held: readonly Held[], book: Book): string {
  const look = lookUp(book);
  return held
    .flatMap((one) => {
      if (one.is !== 'refused') return [];
      const { selection, choice, why } = one;
      const where = selection ? `${selection.source}:${selection.line}: ` : '';
      return [`${where}${choiceText(choice.selection, look)}\n  ${why}\n`];
    })
    .join('');
}

/** Each place for which slips want different things, and what each wants. */
export function differingText(differing: readonly (readonly Wanted[])[], book: Book): string {
  const look = lookUp(book);
  return differing
    .map((wishes) => {
      const [first] = wishes;
      const lines = wishes.map(({ choice, by, on, slips }) => {
        const [now = ''] = slipWords(book, { choices: [choice] }).choices.map((one) => one.now);
        return `  ${slips[0]?.file ?? ''}: ${now}, ${by}, ${printDay(on)}\n`;
      });
      return `${choiceText(first?.choice.selection ?? '', look)}\n${lines.join('')}`;
    })
    .join('');
}

/** What was signed as it was before: a change order says what it is now. Empty where nothing of it was. */
export function signedText(taken: readonly Wanted[], { selections }: Pick<Book, 'selections'>): string {
  const chosen = new Set(taken.map(({ choice }) => choice.selection));
  const signed = selections.flatMap(({ id, signed: state }) =>
    chosen.has(id) && state !== undefined && state.state !== 'new' ? [state] : [],
  );
  const [first] = signed;
  if (!first) return '';
  const issue = `issue-${first.issue}`;
  const how = `once this is committed, bookmatch compare ${issue} HEAD --draft --reason "…" drafts the change order`;
  return `${counted(signed.length, 'of these places is', 'of these places are')} signed in ${issue}: ${how}.\n`;
}

function notConsidered({ selection: id, now }: SlipChoice, look: LookUp): string {
  const { considering = [], standard } = look.selection(id) ?? {};
  const isOutside = now !== null && now !== 'none' && considering.length > 0 && now !== standard;
  return isOutside && !considering.includes(now) ? ', which was not among what is considered' : '';
}
