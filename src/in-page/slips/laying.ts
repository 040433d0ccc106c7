import type { Book } from '../../core/book/index.js';
import { errorsIn, type Outcome, type Problem } from '../../base/problem/index.js';
import { counted, type IsoDate } from '../../base/units/index.js';
import {
  encodeSlip,
  layTogether,
  togetherChoices,
  unsettled,
  type Difference,
  type Held,
  type LaidTogether,
  type Settled,
  type SlipChoice,
} from '../../slip/index.js';
import { setsTable } from '../../table/index.js';
import type { HouseBlock } from '../../sheet/index.js';
import type { Trial } from '../trying.js';
import { holdHere } from './hold-here.js';
import { snapshotOf } from '../snapshot.js';
import type { SlipStore } from './kept-slips.js';
import { readSlip, slipTitle, type LaidSlip } from './read-slip.js';

/** What the page shows of slips that were laid down. */
export interface Laid {
  readonly slips: readonly LaidSlip[];
  readonly from: Book;
  readonly together: LaidTogether;
  readonly settled: ReadonlyMap<string, Settled>;
  readonly unsettled: readonly Difference[];
  /** Of each slip, the choices that still fit. */
  readonly fitting: readonly (readonly SlipChoice[])[];
  /** Of all together: what nobody contradicts, and what was settled. */
  readonly choices: readonly SlipChoice[];
  /** The house with these; absent where they do not go together, with why. */
  readonly to?: Book;
  readonly problems: readonly Problem[];
  /** The house as it stands, with each slip and with all together, a whole Book for each. */
  readonly money: HouseBlock;
}

/** Slips laid over each other on one page. What is done answers what to say of it. */
export interface Laying {
  readonly now: () => Laid;
  readonly lay: (text: string) => { readonly isLaid: boolean; readonly words: string };
  /** Lays down what is tried in this browser, as a slip like any other. */
  readonly layTried: () => string;
  readonly takeAway: (slip: LaidSlip) => string;
  readonly settle: (selection: string, as: Settled) => void;
}

/** Slips on a page: more are a mistake, and no table for them is read any more. */
const mostSlips = 12;

export function startLaying(trial: Trial, store: SlipStore, today: IsoDate, show: () => void): Laying {
  const { house } = trial;
  const reading = { number: house.records.house.number, snapshot: house.snapshot };
  const kept = store.read();
  let slips: readonly LaidSlip[] = kept.lines.flatMap((line) => {
    const read = readSlip(line, reading);
    return read.ok ? [read.laid] : [];
  });
  let settled: ReadonlyMap<string, Settled> = new Map(kept.settled);

  const changed = (): void => {
    store.write({ lines: slips.map(({ line }) => line), settled: [...settled] });
    show();
  };
  const lay = (text: string): ReturnType<Laying['lay']> => {
    const read = readSlip(text, reading);
    if (!read.ok) return { isLaid: false, words: read.words };
    const at = slips.findIndex(({ line }) => line === read.laid.line);
    if (at >= 0) return { isLaid: true, words: `This slip lies here already: it is slip ${at + 1}.` };
    if (slips.length >= mostSlips)
      return { isLaid: false, words: `${mostSlips} slips lie here: take some away before another is laid down.` };
    slips = [...slips, read.laid];
    changed();
    return { isLaid: true, words: `Slip ${slips.length} is read. ${slipTitle(read.laid)}.` };
  };
  const bookWith = remembered(trial);
  return {
    now: () => laidOf(trial, bookWith, holdHere(trial.now().from, house.locks, today), slips, settled),
    lay,
    layTried: () => {
      const { picks } = trial.now();
      const by = 'What is tried in this browser';
      return lay(encodeSlip({ house: reading.number, snapshot: snapshotOf(house), by, on: today, choices: picks }))
        .words;
    },
    takeAway: (slip) => {
      slips = slips.filter((other) => other !== slip);
      changed();
      return `Taken away. ${counted(slips.length, 'slip')} left.`;
    },
    settle: (selection, as) => {
      settled = new Map([...settled, [selection, as]]);
      changed();
    },
  };
}

type BookWith = (choices: readonly SlipChoice[]) => Outcome<Book>;

/** Books kept at most: those of the slips, and of what was settled last. */
const mostBooks = 4 * mostSlips;

/** Books with choices, each made once for a day: what is settled leaves those of the slips alone. */
function remembered(trial: Trial): BookWith {
  const books = new Map<string, Outcome<Book>>();
  return (choices) => {
    const picks = choices.map(({ selection, now }) => ({ selection, option: now }));
    const key = JSON.stringify([trial.now().on, picks]);
    const book = books.get(key) ?? trial.bookWith(picks);
    if (books.size >= mostBooks) books.clear();
    books.set(key, book);
    return book;
  };
}

function laidOf(
  trial: Trial,
  bookWith: BookWith,
  hold: (choice: SlipChoice) => Held,
  slips: readonly LaidSlip[],
  settled: ReadonlyMap<string, Settled>,
): Laid {
  const { from } = trial.now();
  const together = layTogether(
    slips.map(({ slip }) => slip),
    hold,
  );
  const choices = togetherChoices(together, settled);
  const fitting = slips.map(({ slip }) => slip.choices.filter((choice) => hold(choice).is === 'open to it'));
  const made = bookWith(choices);
  const open = unsettled(together, settled);
  const sets = [
    ...slips.map((laid, index) => {
      const fits = fitting[index] ?? [];
      const book = bookWith(fits).value;
      return {
        name: `Slip ${index + 1}, ${laid.by}`,
        choices: countedOf(fits.length, laid.slip.choices.length),
        ...(book && { book }),
      };
    }),
    ...(slips.length > 1
      ? [
          {
            name: open.length > 0 ? 'All together, as far as it is settled' : 'All together',
            choices: counted(choices.length, 'choice'),
            ...(made.value && { book: made.value }),
          },
        ]
      : []),
  ];
  return {
    slips,
    from,
    together,
    settled,
    unsettled: open,
    fitting,
    choices,
    ...(made.value && { to: made.value }),
    problems: made.value ? [] : errorsIn(made.problems),
    money: setsTable(from, sets),
  };
}

/** `2 of 3 choices, as the rest no longer counts`. */
function countedOf(fitting: number, all: number): string {
  if (fitting === all) return counted(all, 'choice');
  return `${fitting} of ${counted(all, 'choice')}: the rest stands already or no longer fits`;
}
