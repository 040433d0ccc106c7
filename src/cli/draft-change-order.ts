import { join } from 'node:path';
import { draftLines, type Comparison } from '../core/compare/index.js';
import { changeOrderRecord, replacedPages } from '../signoff/index.js';
import { nextNumber } from '../disk/history/index.js';
import type { LoadedComparison } from '../disk/load/index.js';
import { readHouseFolder, writeAtomically } from '../disk/store/index.js';
import { parseDay, parseDays, printMoneyChange, recordNumber } from '../base/units/index.js';
import type { Console } from './console.js';
import { UsageError } from './usage-error.js';

export interface DraftOptions {
  readonly title?: string;
  readonly reason?: string;
  readonly days?: string;
  readonly requestedBy?: string;
  readonly validUntil?: string;
}

/** Writes the comparison as the next change order, proposed, with its lines frozen. */
export async function draftChangeOrder(
  houseDir: string,
  { comparison, ...books }: Extract<LoadedComparison, { ok: true }>,
  { title, reason, days = '0 days', requestedBy, validUntil }: DraftOptions,
  console: Console,
): Promise<number> {
  if (reason === undefined) throw new UsageError('--draft wants --reason "why, in words that both parties understand"');
  const read = parseDays(days);
  if (!read.ok) throw new UsageError(`--days ${days}: ${read.why}${read.fix === undefined ? '' : `; ${read.fix}`}`);
  const until = validUntil === undefined ? undefined : parseDay(validUntil);
  if (until && !until.ok) throw new UsageError(`--valid-until ${validUntil}: ${until.why}`);
  const [from, to] = [versionOf(comparison.from), versionOf(comparison.to)];
  const draft = draftLines(comparison);
  if (draft.lines.length === 0) {
    console.error(`Nothing that a change order speaks of differs between ${from} and ${to}. Nothing was written.\n`);
    return 1;
  }
  // By the names of the files, so that a record which cannot be read keeps its number.
  const { files } = await readHouseFolder(houseDir);
  const number = await nextNumber(
    houseDir,
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
  await writeAtomically(join(houseDir, path), record);
  console.tell(
    `Change order ${number}, proposed: ${printMoneyChange(draft.money, 'always')}\n${join(houseDir, path)}\n` +
      `To sign: bookmatch print-change ${number}\n`,
  );
  return 0;
}

/** An issue by its name, anything else by its commit: a branch or a tag may move. */
function versionOf({ label, commit }: Comparison['from']): string {
  if (/^issue-[1-9]\d*$/u.test(label)) return label;
  if (commit !== undefined) return commit;
  throw new UsageError(
    'a change order is drafted between two versions that are committed: commit first, then name HEAD',
  );
}
