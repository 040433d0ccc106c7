import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { git } from './git.js';

/** Two sides of one text; a side that is not there is absent. */
interface TextPair {
  readonly from?: string;
  readonly to?: string;
}

type TextDiffs =
  | {
      readonly ok: true;
      /** Unified hunks of each pair, in order; empty where both sides are the same. */ readonly diffs: readonly string[];
    }
  | { readonly ok: false; readonly why: string };

/** What differs in pairs of texts, as git tells it: one process for all of them. The texts need not be in any repository:
 *  they are laid out as numbered files, so that no name of a record reaches the disk. */
export async function diffTexts(pairs: readonly TextPair[]): Promise<TextDiffs> {
  if (pairs.length === 0) return { ok: true, diffs: [] };
  const folder = await mkdtemp(join(tmpdir(), 'bookmatch-diff-'));
  try {
    for (const side of ['from', 'to'] as const) {
      await mkdir(join(folder, side));
      await Promise.all(
        pairs.flatMap((pair, index) => {
          const text = pair[side];
          return text === undefined ? [] : [writeFile(join(folder, side, String(index)), text)];
        }),
      );
    }
    const answer = await git(folder, ['diff', ...plain, '--no-index', '--', 'from', 'to'], { differs: true });
    if (!answer.ok) return answer;
    return { ok: true, diffs: splitByFile(answer.out.toString('utf8'), pairs.length) };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Whatever the reader's own settings of git say. */
const plain = [
  '--no-color',
  '--no-ext-diff',
  '--no-textconv',
  '--no-renames',
  '--text',
  '--unified=3',
  '--inter-hunk-context=0',
  '--diff-algorithm=histogram',
  '--src-prefix=a/',
  '--dst-prefix=b/',
];

/** The hunks of each file. Lines of a hunk begin with a space, a sign, `@` or a backslash, so that a head cannot be
 *  mistaken for text of a record. */
function splitByFile(out: string, count: number): string[] {
  const diffs = Array.from({ length: count }, () => '');
  for (const file of out.split(/^(?=diff --git )/m)) {
    const [, number] = /^diff --git a\/(?:from|to)\/(\d+) /.exec(file) ?? [];
    const hunks = file.indexOf('\n@@ ');
    if (number !== undefined && hunks >= 0) diffs[Number(number)] = file.slice(hunks + 1);
  }
  return diffs;
}
