import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { draftLines } from '../src/core/compare/index.js';
import { bookOf, issuedPath, loadComparison, openHouse } from '../src/disk/load/index.js';
import { readHouseFolder } from '../src/disk/store/index.js';
import {
  canonicalJson,
  changeOrderRecord,
  digestOfBytes,
  issueRecord,
  roomDigests,
  tradeDigests,
} from '../src/signoff/index.js';
import { recordNumber } from '../src/base/units/index.js';

/** Measures what a long job costs: `check` of the demo house with 200 commits, 30 issues and 60 change orders against `check` of the
 *  same records with none of them. Run: node --import tsx scripts/long-history.ts [runs] */

const root = fileURLToPath(new URL('..', import.meta.url));
const on = '2026-04-20';
const counts = { commits: 200, issues: 30, changeOrders: 60 };
const runs = Number(process.argv[2] ?? 5);

const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-long-'));
const [short, long] = [join(scratch, 'short'), join(scratch, 'long')];
try {
  await makeHouses();
  const first = await seconds(long);
  print(`first check, nothing kept: ${first.wall.toFixed(1)} s, ${(first.peak / 1024).toFixed(0)} MB`);
  const took = { short: [] as number[], long: [] as number[] };
  for (let run = 0; run < runs; run += 1) {
    took.short.push((await seconds(short)).cpu);
    took.long.push((await seconds(long)).cpu);
  }
  const [a, b] = [median(took.short), median(took.long)];
  print(`check, no history: ${a.toFixed(2)} s; with it: ${b.toFixed(2)} s of processor time, medians of ${runs}`);
  print(`ratio ${(b / a).toFixed(2)}`);
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

async function makeHouses(): Promise<void> {
  for (const dir of [short, long]) {
    cpSync(join(root, 'content'), join(dir, 'content'), { recursive: true });
    git(dir, ['init', '-q', '--initial-branch=main']);
    git(dir, ['config', 'user.name', 'Builder']);
    git(dir, ['config', 'user.email', 'builder@example.invalid']);
  }
  git(short, ['add', '-A']);
  git(short, ['commit', '-qm', 'Records']);
  const commits = await importCommits();
  git(long, ['reset', '-q', '--hard', 'main']);
  const step = Math.floor(counts.commits / counts.changeOrders);
  let open = openHouse(long);
  for (let number = 1; number <= counts.changeOrders; number += 1) {
    // Houses that are read are held: a new run every few orders lets the old ones go.
    if (number % 10 === 0) open = openHouse(long);
    const [from = '', to = ''] = [commits[(number - 1) * step], commits[number * step]];
    const loaded = await loadComparison(open, from, to, on);
    if (!loaded.ok) throw new Error(`${loaded.why}\n${JSON.stringify(loaded.problems.slice(0, 2))}`);
    const record = changeOrderRecord(draftLines(loaded.comparison), {
      from,
      to,
      proposedOn: on,
      reason: 'A choice.',
      days: 0,
    });
    const approved = record.replace('state: proposed', `state: approved\ndecided-on: ${on}\ndecided-by: The owners`);
    put(`content/changes/${recordNumber(number)}.md`, approved);
    print(`change order ${number}`);
  }
  git(long, ['add', '-A', 'content']);
  git(long, ['commit', '-qm', 'Change orders']);
}

/** One commit after another, each with another choice somewhere, by one process. */
async function importCommits(): Promise<readonly string[]> {
  const { files } = await readHouseFolder(short);
  const { book } = await bookOf(openHouse(short), on);
  if (!book) throw new Error('the demo house does not hold together');
  const now = new Map(files.map(({ path, text }) => [path, text]));
  const open = files.filter(({ path }) => path.startsWith('content/rooms/')).flatMap(openChoices);
  const rooms = roomDigests(book);
  const trades = tradeDigests(book);
  let stream = '';
  const blob = (path: string, text: string): void => {
    now.set(path, text);
    stream += `M 100644 inline ${path}\ndata ${Buffer.byteLength(text)}\n${text}\n`;
  };
  let issue = 0;
  for (let at = 0; at < counts.commits; at += 1) {
    const message = `Commit ${at}`;
    stream += `commit refs/heads/main\nmark :${at + 1}\ncommitter Builder <builder@example.invalid> ${1_770_000_000 + at * 3600} +0000\ndata ${message.length}\n${message}\n`;
    if (at === 0) for (const { path, text } of files) blob(path, text);
    else {
      const choice = open[at % open.length];
      if (!choice) throw new Error('the demo house has no open choice');
      const option = choice.options[Math.floor(at / open.length) % choice.options.length] ?? '';
      const text = now.get(choice.path) ?? '';
      blob(
        choice.path,
        text
          .replace(choice.line, () => `${choice.line}    note: Version ${at}\n    chosen: ${option}\n`)
          .replace(/( {4}note: Version \d+\n {4}chosen: .*\n) {4}note: Version \d+\n {4}chosen: .*\n/u, '$1'),
      );
    }
    if (at % Math.floor(counts.commits / counts.issues) === 3 && issue < counts.issues) {
      issue += 1;
      const sources = [...now].map(([path, text]) => ({ path, text }));
      const snapshot = new TextEncoder().encode(canonicalJson({ ...book, sources }));
      put(`${issuedPath(issue)}.json`, snapshot);
      const digest = digestOfBytes(snapshot);
      const signatures = (['owner', 'builder'] as const).map((role) => ({
        role,
        name: role,
        on,
        how: 'hand' as const,
        file: 'issued/scan.pdf',
        digest,
      }));
      const facts = { purpose: 'pricing' as const, date: on, commit: 'c'.repeat(40), digest, rooms, trades, body: '' };
      blob(
        `content/issues/${recordNumber(issue)}.md`,
        issueRecord({ ...facts, signatures: issue === 20 ? signatures : [] }, 'Issued.'),
      );
    }
  }
  git(long, ['fast-import', '--quiet', '--export-marks=.git/marks'], stream);
  const marks = readFileSync(join(long, '.git', 'marks'), 'utf8')
    .trim()
    .split('\n');
  const ids = new Map(marks.map((line) => line.split(' ') as [string, string]));
  return Array.from({ length: counts.commits }, (_, at) => ids.get(`:${at + 1}`) ?? '');
}

/** Selections with options to choose from and nothing chosen. */
function openChoices({
  path,
  text,
}: {
  readonly path: string;
  readonly text: string;
}): readonly { readonly path: string; readonly line: string; readonly options: readonly string[] }[] {
  return [...text.matchAll(/^ {4}considering: \[(.+)\]\n(?! {4}(?:chosen|note))/gmu)].flatMap(([line, list = '']) => {
    const isOnce = text.split(line).length === 2;
    const entry = text.slice(text.indexOf(line)).split(/^ {2}- /mu)[0] ?? '';
    const options = list.split(', ').filter((option) => option !== 'none');
    return isOnce && !entry.includes('chosen:') && !entry.includes('note:') && options.length > 1
      ? [{ path, line, options }]
      : [];
  });
}

async function seconds(dir: string): Promise<{ readonly wall: number; readonly cpu: number; readonly peak: number }> {
  const words = ['--import', 'tsx', join(root, 'src/cli/bookmatch.ts'), 'check', '--house', dir, '--on', on];
  const started = performance.now();
  const child = spawn('/usr/bin/env', ['time', '-f', '%U %S %M', 'node', ...words], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let said = '';
  child.stderr.on('data', (more: Buffer) => (said += more.toString()));
  const code = await new Promise<number | null>((done) => child.on('close', done));
  const [, user = '', system = '', peak = ''] = /(\S+) (\S+) (\d+)\n$/u.exec(said) ?? [];
  if (code !== 0) throw new Error(said);
  return { wall: (performance.now() - started) / 1000, cpu: Number(user) + Number(system), peak: Number(peak) };
}

function git(dir: string, args: readonly string[], input = ''): void {
  const { status, stderr } = spawnSync('git', ['-C', dir, ...args], { input, encoding: 'utf8', maxBuffer: 1 << 30 });
  if (status !== 0) throw new Error(stderr);
}

function put(path: string, bytes: Uint8Array | string): void {
  const full = join(long, path);
  mkdirSync(dirname(full), { recursive: true });
  writeFileSync(full, bytes);
}

function median(list: readonly number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
