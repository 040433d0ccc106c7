/** `hinges left` as the first words of a line. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A name inside a sentence: `doors D01 and D02`. Marks and names of makers keep their capitals. */
export function lower(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}
