import { readdir } from 'node:fs/promises';
import { resolve } from 'node:path';
import { Command } from 'commander';
import { programPath } from '../disk/program/index.js';
import { readHouseFolder } from '../disk/store/index.js';
import type { Console } from './console.js';
import { demoPassphrase } from './demo/sign-issue.js';
import { tellHistory, type Run } from './demo/tell-history.js';
import { UsageError } from './usage-error.js';

/** `bookmatch new --demo DIR`: the demo house under git, with its history. */
export function makeNew(run: Run) {
  return (console: Console, done: (code: number) => void): Command =>
    new Command('new')
      .argument('<dir>', 'a folder that is not there yet, or empty')
      .requiredOption(
        '--demo',
        'the demo house: issues, change orders and a signed book, made by the commands themselves',
      )
      .action(async (dir: string) => {
        const target = resolve(dir);
        const names = await readdir(target).catch(() => []);
        if (names.length > 0) throw new UsageError(`${dir} is not empty: name another folder`);
        // The program's own content/ is the demo house.
        const { files } = await readHouseFolder(programPath('.'));
        await tellHistory(target, files, run, console);
        console.out(
          `${target}  the demo house, with its history in git\n` +
            `Its throw-away certificates owner.p12 and builder.p12 have the passphrase ${demoPassphrase}.\n` +
            `  bookmatch compare issue-2 --house ${dir} --on 2026-04-20\n` +
            `  bookmatch verify ${dir}/issued/002-signed-owner-builder.pdf --house ${dir}\n` +
            `  bookmatch build --house ${dir} --on 2026-04-20\n`,
        );
        done(0);
      });
}
