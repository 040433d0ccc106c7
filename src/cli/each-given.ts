/** What a flag that may be given again comes to: all of it, in order. */
export function eachGiven(value: string, before: readonly string[] = []): readonly string[] {
  return [...before, value];
}
