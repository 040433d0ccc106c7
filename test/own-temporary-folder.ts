import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import process from 'node:process';

const prefix = 'bookmatch-tests-';

/** What tests put down for a moment lies in one folder, which goes with the run, and so does what the program keeps for its user. Answers what ends it. */
export default function ownTemporaryFolder(): () => void {
  // Asked once for each project of the configuration.
  if (basename(tmpdir()).startsWith(prefix)) return () => undefined;
  const folder = mkdtempSync(join(tmpdir(), prefix));
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) process.env[name] = folder;
  for (const name of ['XDG_STATE_HOME', 'LOCALAPPDATA']) process.env[name] = join(folder, 'own');
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
