/** A name from a model, as a record may carry it: on one line, of eighty signs at most, without what moves the cursor, turns the writing's
 *  direction or opens a mark for readers. Empty where nothing is left. */
export function plainName(written: unknown): string {
  if (typeof written !== 'string') return '';
  const plain = written
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/<!--|-->/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
  return [...plain].slice(0, 80).join('').trim();
}

/** A text in a record, so that nothing in it is read as anything else. */
export function quotedText(text: string): string {
  return JSON.stringify(text);
}

/** The name itself, or with the first number that makes it another than those which are taken; it is taken then. */
export function untaken(name: string, taken: Set<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number += 1) free = `${name}-${number}`;
  taken.add(free);
  return free;
}
