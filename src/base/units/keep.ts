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

/** A function that keeps its last answers by all that they were made from: objects, which never change, by which they are; lists by their entries;
 *  figures and texts by what they say. `make` reads nothing but its inputs. An answer lives no longer than its first input. */
export function keepSame<Inputs extends readonly [object, ...unknown[]], Answer>(
  make: (...inputs: Inputs) => Answer,
): (...inputs: Inputs) => Answer {
  const kept = new WeakMap<object, readonly { readonly inputs: Inputs; readonly answer: Answer }[]>();
  return (...inputs) => {
    const known = kept.get(inputs[0]) ?? [];
    const found = known.find((one) => one.inputs.every((input, index) => isSame(input, inputs[index])));
    if (found) return found.answer;
    const answer = make(...inputs);
    kept.set(inputs[0], [{ inputs, answer }, ...known].slice(0, mostKept));
    return answer;
  };
}

/** What was made is the same object as before where it says the same, so that what is made of it need not be made again: by a name, one of the last
 *  few that had it. Of values of lists, maps and plain objects; any other object is itself alone. */
export function keepAlike<Value>(): (name: string, value: Value) => Value {
  const kept = new Map<string, readonly Value[]>();
  return (name, value) => {
    const known = kept.get(name) ?? [];
    const found = known.find((one) => isAlike(one, value));
    if (found !== undefined) return found;
    kept.set(name, [value, ...known].slice(0, mostKept));
    return value;
  };
}

/** As it stands, as it is tried, as it was issued, and one more. */
const mostKept = 4;

function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  return isList(a) && isList(b) && a.length === b.length && a.every((one, index) => Object.is(one, b[index]));
}

function isAlike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (isList(a) || isList(b))
    return isList(a) && isList(b) && a.length === b.length && a.every((one, index) => isAlike(one, b[index]));
  if (a instanceof Map && b instanceof Map) return isAlike([...a], [...b]);
  if (!isPlain(a) || !isPlain(b)) return false;
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && isAlike(a[key], b[key]));
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;
}

/** Numbers objects as they come, so that a text can say which they are. */
export function numbering(): (one: object) => number {
  const numbers = new WeakMap<object, number>();
  let last = 0;
  return (one) => remember(numbers, one, () => (last += 1));
}

/** An answer that is made when it is first asked for, and never again. */
export function once<Answer>(make: () => Answer): () => Answer {
  return keepBy(() => 'once', make);
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
