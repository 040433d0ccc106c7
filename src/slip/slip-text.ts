import { lookUp, type Book, type LookUp } from '../core/book/index.js';
import { lower, printDay, printMoneyMove, type Cents } from '../base/units/index.js';
import { choiceTitle, stillOpen, stillOpenWords } from '../table/index.js';
import { encodeSlip } from './encode-slip.js';
import type { Slip } from './slip.js';

/** Names of what a slip chooses, as the Book shows them. */
export interface SlipWords {
  /** `Larch Hollow, job 2614`. */
  readonly house: string;
  /** In the order of the slip's choices: `Great room · stone facing, chimney breast`, `open`, `Thin natural ledge`. */
  readonly choices: readonly { readonly where: string; readonly was: string; readonly now: string }[];
  /** Of the house, before and with all choices: two whole Books, since differences of single choices do not add up. */
  readonly total?: { readonly was: Cents; readonly now: Cents };
  /** Of the total, what of it waits for choices that are open besides. */
  readonly waits?: readonly string[];
}

/** Letters of the code line to a line of text: mail wraps at 72 or more. */
const lineLength = 64;

/** The words of a slip by the Book that it was made from; `after` is the Book with its choices. What the Book does not know is called by its id. */
export function slipWords(book: Book, slip: Pick<Slip, 'choices'>, after?: Book): SlipWords {
  const look = lookUp(book);
  return {
    house: `${book.house.name}, job ${book.house.number}`,
    choices: slip.choices.map(({ selection, was, now }) => ({
      where: whereOf(selection, book, look),
      was: optionWords(selection, was, look),
      now: optionWords(selection, now, look),
    })),
    ...(after && { total: { was: book.money.today, now: after.money.today }, waits: waitsOf(slip, after) }),
  };
}

/** The whole text of a slip, to be mailed, printed or read out: what is chosen in words, who and when, and the code line in lines of 64. */
export function slipText(slip: Slip, { house, choices, total, waits = [] }: SlipWords): string {
  const lines = choices.map(({ where, was, now }, index) => `${index + 1}. ${where}: ${was} → ${now}`);
  const parts = [
    `Choice slip\n${house}`,
    lines.join('\n'),
    ...(total ? [[`Total of the house: ${printMoneyMove(total.was, total.now)}`, ...waits].join('\n')] : []),
    `Chosen by ${slip.by} on ${printDay(slip.on)}`,
    ...(slip.note === undefined ? [] : [slip.note]),
    `For bookmatch choose; please leave these lines as they are:\n${inLines(encodeSlip(slip))}`,
  ];
  return `${parts.join('\n\n')}\n`;
}

function waitsOf({ choices }: Pick<Slip, 'choices'>, after: Book): readonly string[] {
  const selections = choices.map(({ selection }) => selection);
  return stillOpen(lookUp(after), selections).map(stillOpenWords);
}

function whereOf(id: string, book: Book, look: LookUp): string {
  const selection = look.selection(id);
  if (!selection) return id;
  const room = book.rooms.find(({ slug }) => slug === selection.room)?.name ?? selection.room;
  return `${room} · ${lower(choiceTitle(selection, look))}`;
}

/** An option by its name, `not wanted`, or `open`. */
export function optionWords(id: string, slug: string | null, look: LookUp): string {
  if (slug === null) return 'open';
  if (slug === 'none') return 'not wanted';
  const selection = look.selection(id);
  return (selection && look.option(selection.category, slug)?.name) ?? slug;
}

function inLines(code: string): string {
  return (code.match(new RegExp(`.{1,${lineLength}}`, 'gu')) ?? []).join('\n');
}
