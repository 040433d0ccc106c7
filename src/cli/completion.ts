import { Argument, Command } from 'commander';
import type { Console } from './console.js';
import { shells, shellScript, type Shell } from './completion/shell-script.js';
import { flagWithValue, placeOf } from './completion/typed-line.js';

type Done = (code: number) => void;
type MakeProgram = (asked: string | undefined, console: Console, done: Done) => Promise<Command>;

/** `bookmatch completion bash`: the script that makes Tab complete commands, flags and names of the house's records. With the words of a line
 *  behind `--`, it is what that script asks: a line for each word that may stand for the last of them. */
export function makeCompletion(makeProgram: MakeProgram) {
  return (console: Console, done: Done): Command =>
    new Command('completion')
      .addArgument(new Argument('<shell>', 'the shell that reads it').choices(shells))
      .argument('[words...]', 'behind --: the words typed so far, as the script hands them on')
      .action(async (shell: Shell, words: readonly string[]) => {
        if (words.length === 0) {
          console.out(shellScript(shell));
          return done(0);
        }
        const program = await makeProgram(
          words.find((word) => !word.startsWith('-')),
          console,
          done,
        );
        console.out((await linesFor(shell, words, program)).map((line) => `${line}\n`).join(''));
        done(0);
      });
}

async function linesFor(shell: Shell, words: readonly string[], program: Command): Promise<readonly string[]> {
  const { start, candidates, value, house = '.' } = placeOf(program, words);
  const names =
    value === undefined ? [] : await (await import('./completion/names-in-house.js')).namesInHouse(value, house);
  const found = [...candidates, ...names.map((word) => ({ word, about: '' }))].filter(({ word }) =>
    word.startsWith(start),
  );
  // Bash takes what stands behind = for a word of its own, and wants no remarks.
  if (shell === 'bash') return found.map(({ word }) => word);
  const [, flag] = flagWithValue.exec(words.at(-1) ?? '') ?? [];
  return found.map(({ word, about }) => `${flag === undefined ? '' : `${flag}=`}${word}\t${about}`);
}
