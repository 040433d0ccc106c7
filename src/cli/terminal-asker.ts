import process from 'node:process';
import type { Asker } from './asker.js';
import { UsageError } from './usage-error.js';

// What is asked stands beside the problems, so that what a command answers can be sent on by itself.
const output = process.stderr;

/** Asks on the terminal; nobody is there when either side of it is no terminal. */
export function terminalAsker(): Asker | undefined {
  return process.stdin.isTTY && process.stderr.isTTY ? asker : undefined;
}

const asker: Asker = {
  async text({ asks, example, usual, read }) {
    const { text } = await prompts();
    const hint = usual === undefined || usual === '' ? example : usual;
    const answer = await text({
      message: asks,
      output,
      ...(hint !== undefined && { placeholder: hint }),
      ...(usual !== undefined && { defaultValue: usual }),
      validate: (typed = '') => {
        const reading = read(typed === '' && usual !== undefined ? usual : typed);
        return reading.ok ? undefined : `${reading.why}${reading.fix === undefined ? '' : `: ${reading.fix}`}`;
      },
    });
    return given(answer);
  },
  async choice(asks, choices, usual) {
    const { select } = await prompts();
    const options = choices.map(({ value, label }) => ({ value, label }));
    const answer = await select({
      message: asks,
      output,
      options,
      maxItems: 10,
      ...(usual !== undefined && { initialValue: usual }),
    });
    return given(answer);
  },
};

// Few commands ask, and the library takes its time to be read.
const prompts = () => import('@clack/prompts');

async function given(answer: string | symbol): Promise<string> {
  const { isCancel } = await prompts();
  if (isCancel(answer)) throw new UsageError('Stopped. Nothing was written.');
  return String(answer);
}
