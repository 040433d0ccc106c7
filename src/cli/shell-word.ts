/** A word as a shell takes it: in single quotes where it has anything that a shell would part or read otherwise. */
export function shellWord(word: string): string {
  return /^[\p{L}\p{N}_./:@%+=,-]+$/u.test(word) ? word : `'${word.replaceAll("'", String.raw`'\''`)}'`;
}
