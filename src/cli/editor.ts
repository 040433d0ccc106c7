import { spawn } from 'node:child_process';
import process from 'node:process';
import { Command } from 'commander';
import { relay } from './editor/relay.js';
import type { Console } from './console.js';
import { UsageError } from './usage-error.js';

const usualServer = 'yaml-language-server';

/** `bookmatch editor`: what an editor starts to know the keys of records: a server of YAML that is installed beside, and sees of each record
 *  its front matter with its schema. Ends when the editor does. */
export function editor(_console: Console, done: (code: number) => void): Command {
  return new Command('editor')
    .option('--server <command>', 'the server of YAML that it starts', usualServer)
    .addHelpText(
      'after',
      '\nAn editor starts it and speaks with it: see how-to/editor.md in the manual. The server is installed with npm install --global yaml-language-server.\n',
    )
    .action(async ({ server }: { readonly server: string }) => done(await serve(server)));
}

function serve(command: string): Promise<number> {
  // On Windows, what npm installs is a .cmd file, which wants a shell.
  const child = spawn(command, ['--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
    shell: process.platform === 'win32',
  });
  return new Promise((resolve, reject) => {
    child.on('error', () => {
      reject(
        new UsageError(
          `${command} does not start: install it with npm install --global ${usualServer}, or name it with --server`,
        ),
      );
    });
    child.on('spawn', () => {
      relay({ says: process.stdin, hears: process.stdout }, { says: child.stdout, hears: child.stdin });
      process.stdin.on('end', () => child.kill());
    });
    child.on('exit', (code) => {
      process.stdin.destroy();
      resolve(code === null || code === 0 ? 0 : 1);
    });
  });
}
