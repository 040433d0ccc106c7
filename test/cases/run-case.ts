import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { run } from '../../src/cli/main.js';
import { makeConsole } from '../cli/make-console.js';
import { here, type Case } from './read-page.js';

const model = 'model.ifc';
const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-cases-'));

export function removeHouses(): void {
  rmSync(scratch, { recursive: true });
}

/** Does the steps of a case in a house folder of its own, and answers what each command prints. */
export async function runCase({ steps }: Case): Promise<readonly string[]> {
  const house = mkdtempSync(join(scratch, 'house-'));
  cpSync(join(here, 'small-house'), house, { recursive: true });
  // An addition's model lies in the houses of those cases alone that speak of it.
  if (steps.some((step) => step.does === 'run' && step.line.includes(model)))
    cpSync(join(here, model), join(house, model));
  const outputs: string[] = [];
  for (const step of steps) {
    if (step.does === 'write') overlay(house, step.target, step.text);
    else if (step.does === 'shell') shell(house, step.script);
    else outputs.push(await printed(house, step.line));
  }
  return outputs;
}

/** What a command line prints on the house; words in quotes stay together, and HOUSE is its folder. */
async function printed(house: string, line: string): Promise<string> {
  let text = '';
  const take = (more: string): void => void (text += more);
  const words = (line.match(/"[^"]*"|'[^']*'|\S+/g) ?? []).map((word) =>
    word
      .replace(/^'(.*)'$/u, '$1')
      .replaceAll('"', '')
      .replaceAll('HOUSE', house),
  );
  const code = await run([...words, '--house', house], makeConsole({ out: take, error: take }));
  return `${text.replaceAll(house, 'HOUSE').replace(/\n*$/, '\n')}exit ${code}\n`;
}

/** Whoever runs it and whenever, a commit has the same name. */
const sameCommits = {
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_NOSYSTEM: '1',
  ...Object.fromEntries(
    ['AUTHOR', 'COMMITTER'].flatMap((who) => [
      [`GIT_${who}_NAME`, 'Builder'],
      [`GIT_${who}_EMAIL`, 'builder@example.invalid'],
      [`GIT_${who}_DATE`, '2026-04-20T15:00:00Z'],
    ]),
  ),
};

function shell(house: string, script: string): void {
  execFileSync('sh', ['-ec', script], { cwd: house, env: { ...process.env, ...sameCommits } });
}

function overlay(house: string, target: string, text: string): void {
  const [path = '', ...edit] = target.split(' ');
  if (path.startsWith('-')) return rmSync(join(house, path.slice(1)));
  const file = join(house, path);
  mkdirSync(dirname(file), { recursive: true });
  if (edit.length === 0) return writeFileSync(file, text);
  const [from, to] = [lines(text, '-'), lines(text, '+')];
  const before = readFileSync(file, 'utf8');
  if (!before.includes(from)) throw new Error(`${target}: the small house has no such lines:\n${from}`);
  writeFileSync(
    file,
    before.replace(from, () => to),
  );
}

function lines(text: string, sign: string): string {
  return text
    .split('\n')
    .filter((line) => line.startsWith(sign))
    .map((line) => `${line.slice(1)}\n`)
    .join('');
}
