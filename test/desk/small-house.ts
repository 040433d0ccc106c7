import { cp, mkdtemp, realpath } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDesk, type OpenDesk } from '../../src/cli/desk.js';
import { run } from '../../src/cli/main.js';
import { plainConsole } from '../../src/cli/plain-console.js';
import { makeConsole } from '../cli/make-console.js';

/** A copy of the small house in a folder of its own. */
export async function smallHouse(): Promise<string> {
  const dir = await realpath(await mkdtemp(join(tmpdir(), 'bookmatch-desk-')));
  await cp(join(import.meta.dirname, '../cases/small-house'), dir, { recursive: true });
  return dir;
}

/** A desk on 20 April 2026 that says nothing, at a port that is free. */
export function quietDesk(dir: string): Promise<OpenDesk> {
  const console = plainConsole(makeConsole({ out: () => undefined, error: () => undefined }));
  return openDesk({ dir, port: 0, today: () => '2026-04-20' }, run, { ...console, tell: () => undefined });
}
