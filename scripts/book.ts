/** Makes the demo house with its history in _demo/, its book and the manual in _site/. */
import { rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { execa } from 'execa';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const demo = join(root, '_demo');
const on = '2026-04-20';

await rm(demo, { recursive: true, force: true });
await bookmatch('new', '--demo', demo);
await bookmatch('manual', '--out', join(root, '_site'));
await bookmatch('build', '--house', demo, '--out', join(root, '_site'), '--on', on);

async function bookmatch(...words: string[]): Promise<void> {
  const command = join(root, 'src', 'cli', 'bookmatch.ts');
  const { exitCode } = await execa('node', ['--import', 'tsx', command, ...words], {
    cwd: root,
    stdio: 'inherit',
    reject: false,
  });
  if (exitCode !== 0) process.exit(exitCode ?? 1);
}
