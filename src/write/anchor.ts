/** An id that is valid in HTML: a letter first, then letters, digits, `-` and `_`. */
export function anchorOf(kind: string, name: string): string {
  return `${kind}-${name.replaceAll('/', '_').replace(/[^A-Za-z0-9_-]/g, '-')}`;
}
