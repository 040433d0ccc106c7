/** What would move the cursor, ring the bell, recolour or turn round what a terminal shows: control characters of both sets, line and
 *  paragraph separators, and the marks that override the direction of text (https://www.unicode.org/reports/tr9/). */
const controls = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** The same but for tabs and ends of lines, of one sign or of two. */
const controlsInLine =
  /\r(?!\n)|[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** What JSON leaves of them within its strings. */
const controlsInJson = /[\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** A text as one line of a terminal: each control character becomes one plain sign, so that columns stay. */
export function printable(text: string): string {
  return text.replace(/\t/gu, ' ').replace(controls, '�');
}

/** The same of a text of several lines, whose ends stay, as those of files for others do that end in two signs. */
export function printableLines(text: string): string {
  return text.replace(controlsInLine, '�');
}

/** A value as JSON, in which no control character stands as itself, whoever reads it. */
export function printableJson(value: unknown): string {
  const json = JSON.stringify(value, null, 2);
  return json.replace(controlsInJson, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
