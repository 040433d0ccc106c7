/** A piece of a record's text that gives way to another. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** A text with pieces of it replaced; every byte outside of them stays as it was. The pieces do not overlap. */
export function splice(text: string, edits: readonly Edit[]): string {
  return edits
    .toSorted((a, b) => b.from - a.from)
    .reduce((whole, { from, to, text: piece }) => whole.slice(0, from) + piece + whole.slice(to), text);
}
