import { joinWords, speakAs } from '../base/units/index.js';
import { join, resolve } from 'node:path';
import { Command } from 'commander';
import {
  loadComparison,
  onDisk,
  openHouse,
  withTextDiffs,
  type LoadedComparison,
  type OpenHouse,
} from '../disk/load/index.js';
import { printableJson } from '../base/problem/index.js';
import type { Console } from './console.js';
import { draftChangeOrder, type DraftOptions } from './draft-change-order.js';
import { checkHouseDir, dayOf, withHouseOptions, type HouseOptions } from './house-options.js';
import { printComparison } from './print-comparison.js';
import { UsageError } from './usage-error.js';

interface CompareOptions extends HouseOptions, DraftOptions {
  readonly json?: boolean;
  readonly draft?: boolean;
  readonly out?: string;
}

/** `bookmatch compare A [B]`: what changed between two versions and what it costs. */
export function compare(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('compare'))
    .argument('<from>', 'a git version: a commit, a tag or a branch')
    .argument('[to]', 'a git version; without one, the records as they lie on disk')
    .option('--json', 'print as JSON')
    .option('--draft', 'write the next change order, proposed, with these lines')
    .option('--title <words>', 'with --draft: what it is about')
    .option('--reason <words>', 'with --draft: why')
    .option('--days <days>', 'with --draft: working days that it moves the end of the job (default: 0 days)')
    .option('--requested-by <person>', 'with --draft: who asked for it')
    .option('--valid-until <day>', 'with --draft: the last day on which it can be approved at this amount, YYYY-MM-DD')
    .option('--out <dir>', 'write it as pages that open from disk, into comparison/ of this folder')
    .action(async (from: string, to: string | undefined, options: CompareOptions) => {
      const dir = checkHouseDir(options.house);
      const open = openHouse(dir);
      console.doing('reading both versions');
      const loaded = await loadComparison(open, from, to ?? onDisk, dayOf(options.on, console));
      if (!loaded.ok && loaded.problems.length === 0) throw new UsageError(loaded.why);
      if (!loaded.ok) {
        console.problems(loaded.problems, `${loaded.why}.`);
        return done(1);
      }
      const { comparison } = loaded;
      speakAs(loaded.to.house);
      const shared = await sharedNow(open, [from, to ?? onDisk]);
      if (shared !== undefined) console.error(shared);
      if (options.draft) return done(await draftChangeOrder(open, loaded, options, console));
      if (options.out !== undefined) {
        const written = await writePages(loaded, options.out, console);
        if (!options.json) console.tell(written);
      }
      if (options.json) console.out(`${printableJson(comparison)}\n`);
      else if (options.out === undefined) console.out(printComparison(comparison));
      done(0);
    });
}

/** What of the versions is as it is now, whatever they say. */
async function sharedNow(open: OpenHouse, versions: readonly string[]): Promise<string | undefined> {
  const { house } = await open.current();
  const folders = house?.records.house.shared ?? [];
  const commits = versions.filter((version) => version !== onDisk && !version.startsWith('issue-'));
  if (folders.length === 0 || commits.length === 0) return undefined;
  const are = folders.length === 1 ? 'is' : 'are';
  return `${joinWords(folders)} ${are} in no commit: of ${joinWords(commits)} read as on disk now. An issue holds what it was made from.\n\n`;
}

async function writePages(
  { comparison, from, to }: Extract<LoadedComparison, { ok: true }>,
  dir: string,
  console: Console,
): Promise<string> {
  const told = await withTextDiffs(comparison, from, to);
  if (told.why !== undefined) console.error(`The records' text is left out: ${told.why}.\n`);
  const out = resolve(dir);
  const { writeComparison } = await import('../site/index.js');
  const pages = await writeComparison(told.comparison, from, to, out);
  return `${join(out, 'comparison', 'index.html')}  what changed, ${pages.length} pages\n`;
}
