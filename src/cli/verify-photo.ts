import { lookUp, type Book } from '../core/book/index.js';
import { printable, printableJson } from '../base/problem/index.js';
import { readCodes, sheetOfCode, type FoundCode, type SheetOfCode } from '../signoff/codes/index.js';
import { changeOrderOf, sheetStanding } from '../signoff/index.js';
import { changeOrderAnswer, notProven, sheetAnswer, type SheetAnswer } from './sheet-answer.js';
import { bookFor, type AskedOf } from './verify-sheet.js';

/** Tells of each code in a photograph of sheets whether its sheet is of the issue that counts, as of a digest that was typed. Answers the exit code: 0 where
 *  all are. */
export async function verifyPhoto(file: string, photo: Uint8Array, asked: AskedOf): Promise<number> {
  const { console } = asked;
  console.doing('looking for codes');
  const codes = await readCodes(photo);
  if (!codes.ok) return refuse(file, `${codes.why}${codes.fix === undefined ? '' : `; ${codes.fix}`}`, asked);
  if (codes.value.length === 0) return refuse(file, noCode, asked);
  const book = await bookFor(asked);
  if (!book) return 1;
  const answers = codes.value.map((code) => ({ code, answer: answerTo(file, code, book) }));
  if (asked.json === true) {
    const told = answers.map(({ code, answer }) => ({ code: code.text, ...answer.facts }));
    console.out(`${printableJson({ codes: told })}\n`);
  } else {
    const isKnown = answers.some(({ answer }) => answer.isKnown);
    console.out(`${answers.map(({ answer }) => answer.words).join('\n')}${isKnown ? notProven : ''}`);
  }
  return answers.every(({ answer }) => answer.isCurrent) ? 0 : 1;
}

const noCode =
  "no code of a printed sheet can be read in it; take it nearer, sharp and evenly lit, or type the digits beside 'Digest' on the sheet in place of the file";

function refuse(file: string, why: string, { console, json }: AskedOf): number {
  if (json === true) console.out(`${printableJson({ codes: [], problem: why })}\n`);
  else console.out(`${file}: ${why}.\n`);
  return 1;
}

function answerTo(file: string, { text, count }: FoundCode, book: Book): SheetAnswer {
  const sheet = sheetOfCode(text, book.house);
  if (!sheet.ok) {
    const its = count === 1 ? 'its code' : `each of ${count} codes in it`;
    return refused(file, `${its} ${sheet.why}${sheet.fix === undefined ? '' : `; ${sheet.fix}`}`);
  }
  return answerOf(file, count, sheet.value, book);
}

function refused(file: string, why: string, facts: object = {}): SheetAnswer {
  return {
    isCurrent: false,
    isKnown: false,
    words: `${file}: ${why}.\n`,
    facts: { ...facts, problem: printable(why) },
  };
}

function answerOf(file: string, count: number, { of, trade, stamp }: SheetOfCode, book: Book): SheetAnswer {
  const look = lookUp(book);
  const { name: house } = book.house;
  if (trade !== undefined && !book.trades.some(({ slug }) => slug === trade))
    return refused(file, `its code is of a handout of '${trade}', a trade that ${house} does not have`);
  const what =
    trade === undefined ? (of === 'book' ? 'the book' : 'a change order') : `the handout ${look.tradeName(trade)}`;
  const called = `${count === 1 ? 'a sheet' : `${count} sheets`} of ${what}`;
  const facts = { ...(trade !== undefined && { trade }) };
  if (!stamp) return refused(file, `${called}, which was never issued: ${ask}`, facts);
  const { number, digest } = stamp;
  if (of === 'change order') {
    const order = changeOrderOf(book, stamp);
    if (order) return changeOrderAnswer(`${file}, ${called}`, order);
    return refused(
      file,
      `${called}, number ${number}, that ${house} does not have so: it was drafted anew since, or is of another house`,
    );
  }
  const standing = sheetStanding(book, digest, number);
  if (standing.issue) return sheetAnswer({ name: `${file}, ${called}`, ...facts }, standing, look);
  return refused(
    file,
    `${called}, which says issue ${number} with a digest that is no such issue's of ${house}: ${ask}`,
    facts,
  );
}

const ask = 'ask the builder before you build from it';
