import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import process from 'node:process';
import { layoutEnvironment } from '../src/print/layout-environment.js';

/** The whole test of the project in one command: tools, generated files, then style, types and arrows, then every test. The last
 *  line counts the tests. */

interface Step {
  readonly name: string;
  readonly command: string;
  readonly args: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
}

const bin = (name: string, ...args: string[]) => ({ command: join('node_modules', '.bin', name), args });

const schemas: Step = { name: 'generated files', command: 'npm', args: ['run', '--silent', 'schemas'] };

/** The longest first, so that two that take turns end together. */
const checks: readonly Step[] = [
  { name: 'types', ...bin('tsc', '-p', '.') },
  { name: 'format', ...bin('prettier', '--check', '--log-level', 'warn', '.') },
  { name: 'lint', ...bin('eslint', '.', '--max-warnings', '0') },
  { name: 'arrows', ...bin('depcruise', 'src', 'eleventy.config.ts', '--config', '.dependency-cruiser.cjs') },
];

process.exitCode = await main();

async function main(): Promise<number> {
  const missing = missingTools();
  if (missing.length > 0) {
    console.error(
      `The tests open pages in a browser and judge PDFs with outside programs. Not found: ${missing.join(', ')}.`,
    );
    console.error('On Debian or Ubuntu: sudo apt-get install -y chromium qpdf poppler-utils openssl');
    console.error('Another Chromium will do: set CHROMIUM_PATH to its program file.');
    return 1;
  }
  const failed: string[] = [];
  if (!(await runStep(schemas))) failed.push(schemas.name);
  failed.push(...(await failedOf(checks)));
  const folder = mkdtempSync(join(tmpdir(), 'bookmatch-test-'));
  const report = join(folder, 'report.json');
  const tests = {
    name: 'tests',
    ...bin('vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${report}`),
    env: layoutEnvironment,
  };
  if (!(await runStep(tests))) failed.push('tests');
  if (failed.length > 0) console.error(`\nNot in order: ${failed.join(', ')}`);
  printCounts(report);
  rmSync(folder, { recursive: true, force: true });
  return failed.length === 0 ? 0 : 1;
}

function missingTools(): string[] {
  const browser = [process.env['CHROMIUM_PATH'] ?? '', 'chromium', 'chromium-browser', 'google-chrome'].some(isThere);
  const programs = ['qpdf', 'pdfinfo', 'openssl', 'git'].filter((program) => !isThere(program));
  return browser ? programs : ['chromium', ...programs];
}

function isThere(program: string): boolean {
  if (program === '') return false;
  if (program.includes('/')) return existsSync(program);
  return (process.env['PATH'] ?? '').split(delimiter).some((dir) => existsSync(join(dir, program)));
}

/** Runs two steps at a time; answers the names of those that failed. */
async function failedOf(steps: readonly Step[]): Promise<readonly string[]> {
  const waiting = [...steps];
  const failed: string[] = [];
  const takeTurns = async (): Promise<void> => {
    for (let step = waiting.shift(); step; step = waiting.shift()) if (!(await runStep(step))) failed.push(step.name);
  };
  await Promise.all([takeTurns(), takeTurns()]);
  return failed;
}

async function runStep({ name, command, args, env = {} }: Step): Promise<boolean> {
  const started = Date.now();
  const output: string[] = [];
  const child = spawn(command, args, {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...env, ...process.env, NO_COLOR: '1' },
  });
  child.stdout.on('data', (chunk: Buffer) => output.push(chunk.toString()));
  child.stderr.on('data', (chunk: Buffer) => output.push(chunk.toString()));
  const code = await new Promise((done) => child.on('close', done).on('error', () => done(1)));
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(`${code === 0 ? 'ok    ' : 'FAILED'} ${name} (${seconds} s)`);
  if (code !== 0 || name === 'tests') console.log(output.join(''));
  return code === 0;
}

function printCounts(report: string): void {
  if (!existsSync(report)) return;
  const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8')) as Record<
    string,
    number
  >;
  const skipped = numPendingTests ? `, ${numPendingTests} skipped` : '';
  console.log(`${numPassedTests} passed, ${numFailedTests} failed${skipped}`);
}
