export const savedRecord = 'content/rooms/study.md';

/** What the record says after a save: of another length each time, and long enough to be written in several parts. */
export function savedText(number: number): string {
  return `---\nname: Save ${number}\n---\n${`Line of save ${number}.\n`.repeat(4000 + ((number * 7919) % 5000))}End of ${number}.\n`;
}
