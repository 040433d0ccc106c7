/** A function that keeps its answers, so that what is asked again is made once. Inputs with one key must give one answer:
 *  the key is an object that never changes, or a text that tells the inputs apart. Answers live as long as the function:
 *  make one for each run, none for the whole program. */
export function keepBy<Inputs extends readonly unknown[], Answer>(
  keyOf: (...inputs: Inputs) => unknown,
  make: (...inputs: Inputs) => Answer,
): (...inputs: Inputs) => Answer {
  const kept = new Map<unknown, { readonly answer: Answer }>();
  return (...inputs) => {
    const key = keyOf(...inputs);
    const known = kept.get(key) ?? { answer: make(...inputs) };
    kept.set(key, known);
    return known.answer;
  };
}

/** The same for one input that is an object and never changes. */
export function keepEach<Input extends object, Answer>(make: (input: Input) => Answer): (input: Input) => Answer {
  return keepBy((input) => input, make);
}

/** Where answers are kept, such as a map. */
export interface Keeper<Key, Answer> {
  get(key: Key): Answer | undefined;
  set(key: Key, answer: Answer): unknown;
}

/** A keeper for longer than a run, by a text that holds all that the answers came from. */
export type Shelf<Answer> = Keeper<string, Answer>;

/** What is kept under a key; else it is made, and kept if it may be. */
export function remember<Key, Answer>(
  kept: Keeper<Key, Answer> | undefined,
  key: Key,
  make: () => Answer,
  mayKeep: (answer: Answer) => boolean = () => true,
): Answer {
  const known = kept?.get(key);
  if (known !== undefined) return known;
  const answer = make();
  if (mayKeep(answer)) kept?.set(key, answer);
  return answer;
}
