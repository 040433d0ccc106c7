import { join } from 'node:path';
import { Command, Option } from 'commander';
import type { Book, Stamp } from '../core/book/index.js';
import { nextNumber, workingTree } from '../disk/history/index.js';
import { bookOf, checkAgreed, issuedPath, openHouse } from '../disk/load/index.js';
import { issuePurposes, type Issue, type IssuePurpose } from '../core/model/index.js';
import { hasErrors } from '../base/problem/index.js';
import { makeBookPdf, undrawnProblems } from '../print/index.js';
import {
  canonicalJson,
  digestOfBytes,
  issueBlockers,
  issueRecord,
  printBlockers,
  roomDigests,
  sharedDigests,
  tradeDigests,
} from '../signoff/index.js';
import { printDay, recordNumber, shortDigest, speakAs } from '../base/units/index.js';
import { commitTogether } from './commit-together.js';
import type { Console } from './console.js';
import {
  checkHouseDir,
  dayOf,
  reportBriefly,
  reportProblems,
  withHouseOptions,
  type HouseOptions,
} from './house-options.js';
import { UsageError } from './usage-error.js';

interface IssueOptions extends HouseOptions {
  readonly for: IssuePurpose;
  readonly anyway?: string;
}

/** `bookmatch issue --for PURPOSE`: the next numbered version of the book, kept in the house folder and committed. */
export function issue(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('issue'))
    .addOption(new Option('--for <purpose>', 'what it is for').choices([...issuePurposes]).makeOptionMandatory())
    .option('--anyway <reason>', 'with --for construction: issue although things stand in the way, and why')
    .action(async (options: IssueOptions) => {
      checkAnyway(options);
      const dir = checkHouseDir(options.house);
      const on = dayOf(options.on, console);
      const tree = await workingTree(dir);
      if (!tree.ok) throw new UsageError(`${tree.why}: an issue is made from what is committed`);
      if (tree.changed.length > 0) {
        const list = tree.changed.map((path) => `  ${path}\n`).join('');
        const why = console.takesCommands
          ? 'Not everything is committed; an issue is made from what is'
          : 'Not everything is in a version; an issue is made from what is. Record one first';
        console.error(`${why}:\n${list}Nothing was issued.\n`);
        return done(1);
      }
      const open = openHouse(dir);
      console.doing('reading the records');
      const loaded = await bookOf(open, on);
      if (!loaded.book) {
        reportBriefly(loaded, 'Nothing was issued.', console);
        return done(1);
      }
      speakAs(loaded.book.house);
      console.doing('figuring the change orders again');
      const stale = await checkAgreed(open, on);
      reportBriefly({ problems: [...loaded.problems, ...stale] }, '', console);
      const { house } = await open.current();
      const hasSlots = (house?.records.house.slots ?? []).length > 0;
      const blockers = options.for === 'construction' ? issueBlockers(loaded.book, { hasSlots }) : [];
      if (blockers.length > 0) console.error(`What stands in the way of construction:\n${printBlockers(blockers)}`);
      if (hasErrors(stale)) {
        console.error('Nothing was issued.\n');
        return done(1);
      }
      if (blockers.length > 0 && options.anyway === undefined) {
        console.error(
          'Nothing was issued. To issue all the same, say why: --anyway "…" is recorded with all of this.\n',
        );
        return done(1);
      }
      const despite = blockers.map(({ text }) => text);
      const anyway = despite.length > 0 && options.anyway !== undefined ? { why: options.anyway, despite } : undefined;
      done(
        await makeIssue(
          dir,
          loaded.book,
          {
            purpose: options.for,
            commit: tree.commit,
            folders: house?.records.house.shared ?? [],
            ...(anyway && { anyway }),
          },
          console,
        ),
      );
    });
}

function checkAnyway({ for: purpose, anyway }: IssueOptions): void {
  if (anyway === undefined) return;
  if (purpose !== 'construction') throw new UsageError('--anyway goes with --for construction');
  if (anyway.trim() === '') throw new UsageError('--anyway wants the reason, in words');
}

async function makeIssue(
  dir: string,
  book: Book,
  {
    purpose,
    commit,
    anyway,
    folders,
  }: Pick<Issue, 'purpose' | 'commit' | 'anyway'> & { readonly folders: readonly string[] },
  console: Console,
): Promise<number> {
  const number = await nextNumber(
    dir,
    'issues',
    book.issues.map(({ source }) => source),
  );
  const snapshot = new TextEncoder().encode(canonicalJson(book));
  const digest = digestOfBytes(snapshot);
  const stamp: Stamp = { number, purpose, date: book.on, digest, ...(anyway && { anyway }) };
  console.doing('printing the book');
  const { pdf, undrawn } = await makeBookPdf(book, stamp);
  reportProblems({ problems: undrawnProblems(undrawn, book.sources) }, '', console);
  const [rooms, trades] = [roomDigests(book), tradeDigests(book)];
  const shared = folders.length > 0 ? sharedDigests(folders, book.sources) : undefined;
  const open = book.selections.filter(({ state }) => state === 'open').map(({ id }) => id);
  const record = issueRecord(
    {
      purpose,
      date: book.on,
      commit,
      digest,
      rooms,
      trades,
      signatures: [],
      open,
      ...(shared && { shared }),
      ...(anyway && { anyway }),
      body: '',
    },
    `Issued for ${purpose} on ${printDay(book.on)}.`,
  );
  const path = issuedPath(number);
  const recordPath = `content/issues/${recordNumber(number)}.md`;
  // The record comes last: an issue is there when its record is.
  const files: [string, Uint8Array | string][] = [
    [`${path}.json`, snapshot],
    [`${path}.pdf`, pdf],
    [recordPath, record],
  ];
  const words = `Issue ${number} for ${purpose}`;
  const told =
    `${words}, ${printDay(book.on)}, digest ${shortDigest(digest)}\n` +
    `${join(dir, `${path}.pdf`)}  to print or to sign\n` +
    `${join(dir, `${path}.json`)}  what was issued, as data\n` +
    `${join(dir, recordPath)}  its record${anyway ? `, with the ${anyway.despite.length} points that stood in the way` : ''}\n`;
  return commitTogether(dir, new Map(files), words, told, console);
}
