import { execFile } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { promisify } from 'node:util';

/** Runs a script that may call `oneAtATime`, in a program of its own. Rejects when that fails. */
export async function withOneAtATime(script: string): Promise<void> {
  const file = join(import.meta.dirname, '../../src/disk/store/one-at-a-time.ts');
  const text = `import { oneAtATime } from ${JSON.stringify(file)}; ${script}`;
  await promisify(execFile)(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', text]);
}

/** Has a run of the program die while it has the place of who writes in a house; answers the names that it leaves in the program's own folder. */
export async function killedAtWork(dir: string): Promise<readonly string[]> {
  const kill = "process.kill(process.pid, 'SIGKILL')";
  await withOneAtATime(`await oneAtATime(${JSON.stringify(dir)}, () => ${kill});`).catch(() => undefined);
  return readdirSync(join(dir, '.bookmatch'));
}
