import { byText } from '../base/units/index.js';
import type { BookSelection, LookUp } from '../core/book/index.js';
import { sourceText } from '../core/caution/index.js';
import { optionsAt } from '../table/index.js';
import type { HandoutCaution, HandoutQuestion } from './handout.js';
import { capital, day, joined, own, told, type Said } from './own.js';
import { sieve, sieveName } from './sieve.js';
import { whoReads } from './who.js';
import { placeWords, productFinish, refTo, statusOf, whenDecided, workAt } from './words.js';
import type { Work } from './work.js';

type Asked = Omit<HandoutQuestion, 'where'> & { readonly room: string };

/** What the trade cannot know yet: its open selections by the day they are decided, then what the scope leaves open. The same
 *  question of several rooms is asked once. */
export function questions(work: Work): readonly HandoutQuestion[] {
  const open = work.selections
    .filter(({ state }) => state === 'open')
    .toSorted((a, b) => byText(a.decision.by, b.decision.by));
  const asked = new Map<string, { question: Asked; rooms: string[] }>();
  for (const question of [...open.map((selection) => openQuestion(selection, work)), ...scopeQuestions(work)]) {
    const { room, ...rest } = question;
    const key = JSON.stringify(rest);
    const known = asked.get(key);
    if (!known) asked.set(key, { question, rooms: [room] });
    else if (!known.rooms.includes(room)) known.rooms.push(room);
  }
  return [...asked.values()].map(({ question: { room, ...rest }, rooms }) => ({
    ...rest,
    where:
      rooms.length === 1
        ? sieveName(work.look.roomTitle(room))
        : joined(
            rooms.map((slug) => sieveName(work.look.room(slug)?.number ?? slug)),
            ', ',
          ),
  }));
}

function openQuestion(selection: BookSelection, work: Work): Asked {
  const { look, products, keys } = work;
  const { category, decision, room } = selection;
  const options = optionsAt(selection).flatMap((id) => products.get(id) ?? []);
  return {
    room,
    about: workAt(look.categoryName(category), placeWords(selection)),
    status: statusOf(selection),
    when: capital(whenDecided(selection, look)),
    question: options.length === 0 ? own('What goes here?') : own('Which of these goes here?'),
    reason: sieve(decision.reason),
    options: options.map((option) => productFinish(option, false, keys)),
  };
}

function scopeQuestions({ look, trade }: Work): readonly Asked[] {
  return look.book.scope.findings
    .filter(({ trades }) => trades.includes(trade.slug))
    .flatMap(({ room, placeText, what }) => {
      const question = sieve(what);
      if (question === '') return [];
      const about = workAt('Scope', placeText);
      return [{ room, about, status: 'open', when: own(''), question, reason: sieve(''), options: [] } as const];
    });
}

/** The cautions that the trade should read. */
export function cautions({ look, trade }: Work): readonly HandoutCaution[] {
  return look.book.cautions
    .filter(({ trades }) => trades.includes(trade.slug))
    .map(({ id, title, room, placeText, seen, says, source, locally, ask, accepted }) => ({
      id: refTo(id),
      title: sieve(title),
      room: sieveName(look.roomTitle(room)),
      place: sieve(placeText),
      seen: sieve(seen),
      says: sieve(says),
      source: joined(
        [sieve(sourceText(source)), locally === '' ? own('') : told`Adopted code: ${sieve(locally)}`],
        '. ',
      ),
      ask: sieve(ask),
      accepted: accepted
        ? told`Accepted by ${acceptedBy(accepted.by, look)} on ${day(accepted.on)}: ${sieve(accepted.why)}`
        : own(''),
    }));
}

function acceptedBy(by: string, { book }: LookUp): Said {
  const who = whoReads(by, book.house);
  return who === undefined ? own('someone of the house') : sieveName(who);
}
