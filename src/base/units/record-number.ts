/** `003`: the number of an issue or a change order as its files are named. */
export function recordNumber(number: number): string {
  return String(number).padStart(3, '0');
}
