import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

// Packs the program, installs it elsewhere with what it needs to run, and tries it on each Node that README names: the package `node` of npm brings
// them. Not part of the tests, since it fetches some 100 MB for each.
//
//   npm run nodes              all of them
//   npm run nodes -- 22        one

const usual = ['20', '22', '24'];
const root = join(import.meta.dirname, '..');
const folder = mkdtempSync(join(tmpdir(), 'bookmatch-nodes-'));
const house = join(folder, 'house');
const day = ['--house', house, '--on', '2026-04-20', '--quiet'];
const tried: readonly (readonly string[])[] = [
  ['--help'],
  ['check', ...day],
  ['takeoff', ...day],
  ['completion', 'bash', '--', 'che'],
  ['build', ...day, '--out', join(folder, 'out')],
];

try {
  run('npm', ['run', '--silent', 'prepack'], root);
  run('npm', ['pack', '--ignore-scripts', '--silent', '--pack-destination', folder], root);
  const packed = readdirSync(folder).find((name) => name.endsWith('.tgz')) ?? '';
  cpSync(join(root, 'test/cases/small-house'), house, { recursive: true });
  const asked = process.argv.slice(2);
  const wrong = (asked.length > 0 ? asked : usual).filter((major) => !isFine(major, join(folder, packed)));
  if (wrong.length > 0) {
    console.log(`It does not run on Node ${wrong.join(', ')}.`);
    process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true });
}

/** Installs and tries it on one Node; says what came of it. */
function isFine(major: string, packed: string): boolean {
  const dir = mkdtempSync(join(folder, `on-${major}-`));
  writeFileSync(join(dir, 'package.json'), '{ "private": true, "type": "module" }\n');
  try {
    run('npm', ['install', '--omit=dev', '--no-audit', '--no-fund', '--silent', `node@${major}`, packed], dir);
    const node = join(dir, 'node_modules/node/bin/node');
    const version = run(node, ['--version'], dir).trim();
    for (const words of tried) {
      const start = performance.now();
      run(node, [join(dir, 'node_modules/bookmatch/dist/bookmatch.js'), ...words], dir);
      console.log(`${version}  ${((performance.now() - start) / 1000).toFixed(1)} s  bookmatch ${words[0] ?? ''}`);
    }
    return true;
  } catch (error) {
    console.log(`Node ${major}: ${error instanceof Error ? error.message : String(error)}`);
    return false;
  }
}

function run(program: string, words: readonly string[], cwd: string): string {
  return execFileSync(program, words, { cwd, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}
