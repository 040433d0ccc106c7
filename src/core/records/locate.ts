import { isMap, isNode, isScalar, isSeq, type Document, type Node } from 'yaml';
import type { Origin, Path, Position } from '../../base/problem/index.js';

/** Where a value of a YAML document stands, where its key does, and the same of what is in it: plain data, which may be kept. */
export type Place = readonly [value: Spot, key: Spot | null, within?: Places];
export type Places = Readonly<Record<string, Place>>;
type Spot = readonly [line: number, column: number];

/** The places of all that is written in a document. */
export function placesOf({ contents }: Document.Parsed, position: (offset: number) => Position): Places {
  const spot = ({ range }: Node): Spot | undefined => {
    if (!range) return undefined;
    const { line, column } = position(range[0]);
    return [line, column];
  };
  const place = (value: unknown, key: Spot | null): readonly Place[] => {
    // A key without a value (`level:`) has no node of its own.
    const at = (isNode(value) ? spot(value) : undefined) ?? key;
    if (!at) return [];
    const inside = within(value);
    return [inside ? [at, key, inside] : [at, key]];
  };
  const within = (value: unknown): Places | undefined => {
    const entries = isSeq(value)
      ? value.items.flatMap((item, index) => place(item, null).map((one) => [String(index), one] as const))
      : isMap(value)
        ? value.items.flatMap(({ key, value: item }) => {
            const at = isScalar(key) ? spot(key) : undefined;
            return isScalar(key) && at ? place(item, at).map((one) => [String(key.value), one] as const) : [];
          })
        : [];
    return entries.length === 0 ? undefined : Object.fromEntries(entries);
  };
  return within(contents) ?? {};
}

/** The origin of a record by the places of its values and keys. A path that is not written down has the place of its nearest ancestor that is. */
export function locate(source: { readonly file: string; readonly text: string }, places: Places): Origin {
  const first: Position = { line: 1, column: 1 };
  // Where the whole record's keys begin: what it lacks would stand among them.
  const top = (): Spot | undefined =>
    Object.values(places)
      .flatMap(([, key]) => (key ? [key] : []))
      .reduce<Spot | undefined>((least, spot) => (least && least[0] <= spot[0] ? least : spot), undefined);
  const find = (path: Path): { readonly nearest?: Place; readonly isIt: boolean } => {
    let [nearest, within]: [Place | undefined, Places | undefined] = [undefined, places];
    for (const part of path) {
      const next: Place | undefined = within && Object.hasOwn(within, part) ? within[part] : undefined;
      if (!next) return { ...(nearest && { nearest }), isIt: false };
      [nearest, within] = [next, next[2]];
    }
    return { ...(nearest && { nearest }), isIt: nearest !== undefined };
  };
  const positionOf = (spot: Spot | undefined): Position => (spot ? { line: spot[0], column: spot[1] } : first);
  const at = (path: Path): Position => positionOf(find(path).nearest?.[0]);
  const key = (path: Path): Position => {
    const { nearest, isIt } = find(path);
    return positionOf((isIt ? nearest?.[1] : undefined) ?? nearest?.[0] ?? top());
  };
  return { ...source, at, key };
}
