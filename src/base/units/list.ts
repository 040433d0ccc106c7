/** `material, freight and tax`. */
export function joinWords(words: readonly string[], and = 'and'): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1) ?? ''}`;
}
