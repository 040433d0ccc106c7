/** The text, cut after a word and with an ellipsis when it is longer than `most` characters. */
export function shorten(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${text.slice(0, most).replace(/\s+\S*$/, '')}…`;
}
