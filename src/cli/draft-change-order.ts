import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import {
  agreedTwice,
  draftLines,
  inOrderOfDecision,
  type AgreedTwice,
  type Comparison,
} from '../core/compare/index.js';
import type { ChangeOrder } from '../core/model/index.js';
import { readChangeOrderRecord } from '../core/records/index.js';
import { changeOrderRecord, replacedPages, twiceWords, versionWords } from '../signoff/index.js';
import { nextNumber } from '../disk/history/index.js';
import { draftStart, loadComparison, signingOf, type LoadedComparison, type OpenHouse } from '../disk/load/index.js';
import { readHouseFolder, writeAtomically } from '../disk/store/index.js';
import { counted, parseDay, parseDays, printMoneyChange, recordNumber } from '../base/units/index.js';
import { typed, type Console } from './console.js';
import { UsageError } from './usage-error.js';

export interface DraftOptions {
  readonly title?: string;
  readonly reason?: string;
  readonly days?: string;
  readonly requestedBy?: string;
  readonly validUntil?: string;
}

type Agreed = Parameters<typeof draftStart>[2];
type Loaded = Extract<LoadedComparison, { ok: true }>;

/** Writes the comparison as the next change order, proposed, with its lines frozen. What approved change orders cover is left out, and said. */
export async function draftChangeOrder(
  open: OpenHouse,
  asked: Loaded,
  { title, reason, days = '0 days', requestedBy, validUntil }: DraftOptions,
  console: Console,
): Promise<number> {
  if (reason === undefined) throw new UsageError('--draft wants --reason "why, in words that both parties understand"');
  // Of days nothing else can be meant.
  const read = parseDays(/^-?\d+$/u.test(days) ? `${days} days` : days);
  if (!read.ok) throw new UsageError(`--days ${days}: ${read.why}${read.fix === undefined ? '' : `; ${read.fix}`}`);
  const until = validUntil === undefined ? undefined : parseDay(validUntil);
  if (until && !until.ok) throw new UsageError(`--valid-until ${validUntil}: ${until.why}`);
  const { label } = asked.comparison.from;
  const to = versionOf(asked.comparison.to, label);
  const { files } = await readHouseFolder(open.dir);
  const agreed = signingOf(files) ?? { changeOrders: [], issues: [] };
  const { version: from, covered } = await draftStart(
    open.dir,
    { from: versionOf(asked.comparison.from, label), to },
    agreed,
  );
  for (const order of covered) console.error(leftOutWords(order));
  const loaded = covered.length === 0 ? asked : await loadComparison(open, from, to, asked.comparison.to.on);
  if (!loaded.ok) {
    console.error(`${loaded.why}. Nothing was written.\n`);
    return 1;
  }
  const { comparison, ...books } = loaded;
  const draft = draftLines(comparison);
  if (draft.lines.length === 0) {
    console.error(`Nothing that a change order speaks of differs between ${from} and ${to}. Nothing was written.\n`);
    return 1;
  }
  // By the names of the files, so that a record which cannot be read keeps its number.
  const number = await nextNumber(
    open.dir,
    'changes',
    files.map((file) => file.path),
  );
  const path = `content/changes/${recordNumber(number)}.md`;
  const facts = {
    from,
    to,
    proposedOn: comparison.to.on,
    reason,
    days: read.value,
    replaces: replacedPages(comparison, books),
    ...(requestedBy !== undefined && { requestedBy }),
    ...(until && { validUntil: until.value }),
  };
  const record = changeOrderRecord(draft, { ...facts, ...(title !== undefined && { title }) });
  const drafted = readChangeOrderRecord({ path, text: record });
  const why = drafted && standsAgainst(drafted, agreed);
  if (why !== undefined) {
    console.error(`${why} Nothing was written.\n`);
    return 1;
  }
  await writeAtomically(join(open.dir, path), record);
  console.tell(
    `Change order ${number}, proposed: ${printMoneyChange(draft.money, 'always')}\n${join(open.dir, path)}\n` +
      typed(`To sign: bookmatch print-change ${number}\n`, console) +
      typed(`It is not committed yet: git add --all, then git commit -m "Change order ${number} proposed"\n`, console),
  );
  return 0;
}

/** What a draft leaves out, as an approved change order has it. */
function leftOutWords({ number, title, from, to, amount, lines }: ChangeOrder): string {
  const versions = `from ${versionWords(from)} to ${versionWords(to)}`;
  const has = `${counted(lines.length, 'line', 'lines')}, ${printMoneyChange(amount, 'always')}`;
  return `Left out, as change order ${number} (${title}) is approved and has it: what lies ${versions}, ${has}.\n`;
}

/** Why a draft is not to be proposed: its lines are agreed, where versions alone do not tell, as of a draft from somewhere else than where an approved
 *  change order begins or ends; or all of them are proposed already. */
function standsAgainst(draft: ChangeOrder, { changeOrders, issues }: Agreed): string | undefined {
  const [twice, ...more] = agreedTwice(draft, inOrderOfDecision(changeOrders), issues);
  if (twice) return refusal([twice, ...more], twice.by);
  const same = changeOrders.find(({ state, lines }) => state === 'proposed' && isDeepStrictEqual(lines, draft.lines));
  return same && `Change order ${same.number} (${same.title}) is proposed with the same lines: decide on it first.`;
}

function refusal(twice: readonly AgreedTwice[], { from, to }: ChangeOrder): string {
  const whence = `draft from where it begins (${versionWords(from)}) or ends (${versionWords(to)})`;
  return `This draft ${twiceWords(twice)}. It would be agreed twice: ${whence}.`;
}

/** An issue by its name, anything else by its commit: a branch or a tag may move. */
function versionOf({ label, commit }: Comparison['from'], from: string): string {
  if (/^issue-[1-9]\d*$/u.test(label)) return label;
  if (commit !== undefined) return commit;
  throw new UsageError(
    `a change order is drafted between two versions that are committed: git add --all, git commit, then bookmatch compare ${from} HEAD --draft …`,
  );
}
