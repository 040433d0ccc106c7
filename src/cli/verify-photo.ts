import { lookUp, type Book } from '../core/book/index.js';
import { printable, printableJson } from '../base/problem/index.js';
import { readCodes, sheetOfCode, type FoundCode, type SheetOfCode } from '../signoff/codes/index.js';
import { sheetStanding } from '../signoff/index.js';
import { notProven, sheetAnswer, type SheetAnswer } from './sheet-answer.js';
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
    const isOfIssue = answers.some(({ answer }) => answer.isOfIssue);
    console.out(`${answers.map(({ answer }) => answer.words).join('\n')}${isOfIssue ? notProven : ''}`);
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

interface PhotoAnswer extends SheetAnswer {
  readonly isOfIssue: boolean;
}

function answerTo(file: string, { text, count }: FoundCode, book: Book): PhotoAnswer {
  const sheet = sheetOfCode(text, book.house);
  if (!sheet.ok) {
    const its = count === 1 ? 'its code' : `each of ${count} codes in it`;
    return refused(file, `${its} ${sheet.why}${sheet.fix === undefined ? '' : `; ${sheet.fix}`}`);
  }
  return answerOf(file, count, sheet.value, book);
}

function refused(file: string, why: string, facts: object = {}): PhotoAnswer {
  return {
    isCurrent: false,
    isOfIssue: false,
    words: `${file}: ${why}.\n`,
    facts: { ...facts, problem: printable(why) },
  };
}

function answerOf(file: string, count: number, { trade, stamp }: SheetOfCode, book: Book): PhotoAnswer {
  const look = lookUp(book);
  if (!book.trades.some(({ slug }) => slug === trade))
    return refused(file, `its code is of a handout of '${trade}', a trade that ${book.house.name} does not have`);
  const called = `${count === 1 ? 'a sheet' : `${count} sheets`} of the handout ${look.tradeName(trade)}`;
  if (!stamp) {
    const why = `${called}, which was never issued: ask the builder before you build from it`;
    return refused(file, why, { trade });
  }
  const { number, digest } = stamp;
  const standing = sheetStanding(book, digest, number);
  if (!standing.issue) {
    const why = `${called}, which says issue ${number} with a digest that is no such issue's of ${book.house.name}: ask the builder before you build from it`;
    return refused(file, why, { trade });
  }
  return { ...sheetAnswer({ name: `${file}, ${called}`, trade }, standing, look), isOfIssue: true };
}
