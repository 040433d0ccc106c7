export const savedRecord = 'content/rooms/study.md';

/** What the record says after a save: of another length each time. From `long` on it is as long as a record may be, so that the disk takes a while. */
export function savedText(number: number): string {
  const lines = number < long ? 100 + number : 36_000 + ((number * 7919) % 6000);
  return `---\nname: Save ${number}\n---\n${`Line of save ${number}.\n`.repeat(lines)}End of ${number}.\n`;
}

export const long = 40;
