import type { BookSelection } from '../book/index.js';
import { printDay } from '../units/index.js';
import type { HandoutCaution, HandoutQuestion } from './handout.js';
import { sieve } from './sieve.js';
import { optionsAt } from './work.js';
import type { Work } from './work.js';

/** What the trade cannot know yet: its open selections by the day they are decided, then what the scope leaves open. */
export function questions(work: Work): readonly HandoutQuestion[] {
  const open = work.selections
    .filter(({ state }) => state === 'open')
    .toSorted((a, b) => (a.decision.by < b.decision.by ? -1 : a.decision.by > b.decision.by ? 1 : 0));
  return [...open.map((selection) => openQuestion(selection, work)), ...scopeQuestions(work)];
}

function openQuestion(selection: BookSelection, { look, products }: Work): HandoutQuestion {
  const { category, decision, room, placeText } = selection;
  const options = optionsAt(selection).flatMap((id) => products.get(id) ?? []);
  return {
    room: look.roomTitle(room),
    place: placeText,
    category: look.categoryName(category),
    question: options.length === 0 ? 'What goes here?' : 'Which of these goes here?',
    decideBy: decision.by,
    reason: sieve(decision.reason),
    options: options.map(({ key, option }) => ({ product: key, name: option.name })),
  };
}

function scopeQuestions({ look, trade }: Work): readonly HandoutQuestion[] {
  return look.book.scope.findings
    .filter(({ trades }) => trades.includes(trade.slug))
    .flatMap(({ room, placeText, what }) => {
      const question = sieve(what);
      if (question === '') return [];
      return [{ room: look.roomTitle(room), place: placeText, category: 'Scope', question, reason: '', options: [] }];
    });
}

/** The cautions that the trade should read. */
export function cautions({ look, trade }: Work): readonly HandoutCaution[] {
  return look.book.cautions
    .filter(({ trades }) => trades.includes(trade.slug))
    .map(({ id, title, room, placeText, seen, says, source, ask, accepted }) => ({
      id,
      title,
      room: look.roomTitle(room),
      place: placeText,
      seen: sieve(seen),
      says: sieve(says),
      source: [source.document, source.edition, source.section].filter((part) => part !== '').join(', '),
      ask: sieve(ask),
      accepted: accepted ? sieve(`Accepted by ${accepted.by} on ${printDay(accepted.on)}: ${accepted.why}`) : '',
    }));
}
