import type { Terminal } from './console.js';

/** Runs with a console; what is printed names commands as `bookmatch …`, and where the program was called in another way, that is said once at the
 *  end, beside what the command prints for others to read. */
export async function tellingHowItIsCalled(
  console: Terminal,
  run: (console: Terminal) => Promise<number>,
): Promise<number> {
  const called = console.takesCommands ? calledAs((name) => console.environment(name)) : undefined;
  if (called === undefined) return run(console);
  let isNamed = false;
  const watch = (text: string): void => void (isNamed ||= /\bbookmatch [a-z]/u.test(text));
  const code = await run({
    ...console,
    out: (text) => {
      watch(text);
      console.out(text);
    },
    error: (text) => {
      watch(text);
      console.error(text);
    },
  });
  if (isNamed) console.error(`Where it says bookmatch, type: ${called}\n`);
  return code;
}

/** How the program was called, where that is not by its name. Source: what npm and npx say of themselves in the environment. */
function calledAs(environment: Terminal['environment']): string | undefined {
  switch (environment('npm_lifecycle_event')) {
    case 'bookmatch':
      return 'npm run bookmatch --';
    case 'npx':
      return 'npx bookmatch';
    default:
      return undefined;
  }
}
