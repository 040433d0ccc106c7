import { createHash, randomBytes } from 'node:crypto';
import { lstat } from 'node:fs/promises';
import { hostname } from 'node:os';
import process from 'node:process';

/** Part of the name of what a run leaves on a disk while it works: its process, its machine, as several may work in one folder, and what no other name has. */
export function newTag(): string {
  return `${process.pid}-${machine}-${randomBytes(6).toString('hex')}`;
}

/** A tag within a name, as a part of an expression. */
export const tagForm = String.raw`\d+-[0-9a-f]{8}-[0-9a-f]{12}`;

/** Whose a tag is: this process's, another's of this machine that runs, or that was killed; of another machine nobody knows here. */
export function whose(tag: string): 'this' | 'running' | 'killed' | 'elsewhere' {
  const [pid = '', of] = tag.split('-');
  if (of !== machine) return 'elsewhere';
  if (Number(pid) === process.pid) return 'this';
  return runs(Number(pid)) ? 'running' : 'killed';
}

const machine = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

function runs(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // It runs, and is somebody else's.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** A day: no command takes as long. */
const longestElsewhere = 86_400_000;

/** Was what has that tag left by a run that is no more? One run of this program does one thing after the other; of one of another machine it is believed after a day. */
export async function isLeft(path: string, tag: string): Promise<boolean> {
  const owner = whose(tag);
  if (owner !== 'elsewhere') return owner !== 'running';
  const facts = await lstat(path).catch(() => undefined);
  return facts !== undefined && Date.now() - facts.mtimeMs > longestElsewhere;
}
