import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

/** What tests put down for a moment lies in one folder, which goes with the run. Answers what ends it. */
export default function ownTemporaryFolder(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'bookmatch-tests-'));
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) process.env[name] = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
