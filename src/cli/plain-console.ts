import { errorsIn, printable, printableLines, printProblems } from '../base/problem/index.js';
import { unread } from '../base/units/index.js';
import type { Asker } from './asker.js';
import type { Console, Terminal } from './console.js';

/** The one way from commands to a terminal. What a command says holds words of records, names of files, flags: no control
 *  character of theirs passes. Colours are the program's own, and only problems have any. */
export function plainConsole(terminal: Terminal): Omit<Console, 'tell'> {
  return {
    out: (text) => terminal.out(printableLines(text)),
    error: (text) => terminal.error(printableLines(text)),
    problems: (problems, outcome) => {
      const said = { color: terminal.color, ...(outcome !== undefined && { outcome }) };
      const errors = errorsIn(problems);
      // Where nobody asked for them by a command, what is only to be looked at does not stand before what is wrong.
      const told = !terminal.takesCommands && errors.length > 0 ? errors : problems;
      if (told.length > 0) terminal.error(printProblems(told, said));
    },
    doing: (what) => terminal.doing(printable(what)),
    today: () => terminal.today(),
    now: () => terminal.now(),
    environment: (name) => terminal.environment(name),
    input: (most) => terminal.input(most),
    askSecret: (question) => terminal.askSecret(printableLines(question)),
    asker: () => plainAsker(terminal.asker()),
    takesCommands: terminal.takesCommands,
    ...(terminal.compared && { compared: terminal.compared }),
  };
}

/** What is asked holds names of the house; what may be typed is judged by words that hold what was typed. */
function plainAsker(asker: Asker | undefined): Asker | undefined {
  if (!asker) return undefined;
  return {
    text: ({ asks, read, ...rest }) =>
      asker.text({
        ...rest,
        asks: printableLines(asks),
        read: (text) => {
          const reading = read(text);
          if (reading.ok) return reading;
          return unread(
            printableLines(reading.why),
            reading.fix === undefined ? undefined : printableLines(reading.fix),
          );
        },
      }),
    choice: (asks, choices, usual) =>
      asker.choice(
        printableLines(asks),
        choices.map(({ value, label }) => ({ value, label: printableLines(label) })),
        usual,
      ),
  };
}
