import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import process from 'node:process';
import { git } from '../../disk/history/index.js';
import type { Source } from '../../core/model/index.js';
import { makeFolder, writeAtomically } from '../../disk/store/index.js';
import { recordNumber, type IsoDate } from '../../base/units/index.js';
import type { Console, Terminal } from '../console.js';
import { passphraseVariable } from '../passphrase.js';
import { history, type Step } from './history.js';
import { recordsAsOf } from './records-as-of.js';
import { demoPassphrase, signersOf, signIssue, withSigners } from './sign-issue.js';

/** Runs a command line, and answers its exit code. */
export type Run = (argv: readonly string[], terminal: Terminal) => Promise<number>;

/** Makes the demo house with its history in an empty folder, by the commands themselves. Rejects when one of them fails:
 *  that is a fault of the program or of its demo, not of the person. */
export async function tellHistory(dir: string, sources: readonly Source[], run: Run, console: Console): Promise<void> {
  await makeFolder(dir);
  const telling: Telling = { dir, sources, run, console };
  await inGit(dir, ['init', '--quiet', '--initial-branch=main']);
  await inGit(dir, ['config', 'user.name', 'Project manager']);
  await inGit(dir, ['config', 'user.email', 'office@builder.example']);
  await writeAtomically(join(dir, '.gitignore'), '_site/\n*.p12\n');
  for (const [index, step] of history.entries()) {
    console.doing(`telling the demo's history, ${index + 1} of ${history.length}`);
    setGitClock(step.on);
    await tell(step, telling);
  }
  setGitClock(undefined);
}

interface Telling {
  readonly dir: string;
  readonly sources: readonly Source[];
  readonly run: Run;
  readonly console: Console;
}

async function tell(step: Step, telling: Telling): Promise<void> {
  const { dir, sources } = telling;
  switch (step.do) {
    case 'record':
      for (const { path, text } of recordsAsOf(sources, step.on)) await writeRecord(dir, path, text);
      return commitAll(dir, step.message);
    case 'edit':
      await edit(dir, step.path, step.from, step.to);
      return commitAll(dir, step.message);
    case 'issue':
      return runAll(telling, step.on, ['issue', '--for', step.for]);
    case 'draft':
      return draft(step, telling);
    case 'decide':
      return decide(step, telling);
    case 'sign':
      return signIssue(
        step,
        dir,
        (argv) => runAs(telling, step.on, argv),
        (message) => commitAll(dir, message),
      );
  }
}

/** Rooms are what changes, and invoices of the house's record; the rest is as it was when the contract was signed. */
async function writeRecord(dir: string, path: string, text: string): Promise<void> {
  const full = join(dir, path);
  if (path.startsWith('content/rooms/') || !existsSync(full)) return writeAtomically(full, text);
  if (path === 'content/house.md')
    await writeAtomically(full, withSigners(text, signersOf(await readFile(full, 'utf8'))));
}

async function draft(step: Extract<Step, { do: 'draft' }>, telling: Telling): Promise<void> {
  const { dir } = telling;
  const { on, since, title, reason, days } = step;
  const from = since === 'issue-1' ? since : /^to: (\S+)$/mu.exec(await readText(dir, orderPath(since.order)))?.[1];
  const options = ['--draft', '--title', title, '--reason', reason, '--days', days];
  await runAll(telling, on, ['compare', from ?? '', 'HEAD', ...options]);
  return commitAll(dir, `Change order proposed: ${title}`);
}

async function decide({ order, state, on, by }: Extract<Step, { do: 'decide' }>, telling: Telling): Promise<void> {
  const verb = { approved: 'approve', declined: 'decline' }[state];
  await runAll(telling, on, [verb, String(order), '--by', by]);
}

function orderPath(order: number): string {
  return `content/changes/${recordNumber(order)}.md`;
}

async function runAll(telling: Telling, on: IsoDate, argv: readonly string[]): Promise<void> {
  await runAs(telling, on, [...argv, '--house', telling.dir, '--on', on]);
}

/** Runs a command on a day of the story; what it says is shown only when it fails. */
async function runAs({ run, console }: Telling, on: IsoDate, argv: readonly string[]): Promise<void> {
  let said = '';
  const code = await run(argv, {
    ...console,
    color: false,
    out: (text) => void (said += text),
    error: (text) => void (said += text),
    doing: () => undefined,
    today: () => on,
    now: () => new Date(`${on}T17:00:00Z`),
    environment: (name) => (name === passphraseVariable ? demoPassphrase : console.environment(name)),
  });
  if (code !== 0) throw new Error(`the demo's history failed at: ${argv.join(' ')}\n${said}`);
}

async function edit(dir: string, path: string, from: string, to: string): Promise<void> {
  const text = await readText(dir, path);
  if (!text.includes(from)) throw new Error(`the demo's history does not fit ${path}: ${from}`);
  await writeAtomically(
    join(dir, path),
    text.replace(from, () => to),
  );
}

async function readText(dir: string, path: string): Promise<string> {
  return readFile(join(dir, path), 'utf8');
}

async function commitAll(dir: string, message: string): Promise<void> {
  await inGit(dir, ['add', '--all']);
  await inGit(dir, ['commit', '--quiet', '--message', message]);
}

async function inGit(dir: string, args: readonly string[]): Promise<void> {
  const answer = await git(dir, args);
  if (!answer.ok) throw new Error(`git ${args.join(' ')}: ${answer.why}`);
}

/** Git dates what it commits by its environment: so the demo's commits are of its own days, and the same on every machine. */
function setGitClock(on: IsoDate | undefined): void {
  for (const name of ['GIT_AUTHOR_DATE', 'GIT_COMMITTER_DATE']) {
    if (on === undefined) delete process.env[name];
    else process.env[name] = `${on}T17:00:00+00:00`;
  }
}
