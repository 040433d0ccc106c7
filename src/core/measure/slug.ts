/** A recorded name in an id; what is not a letter or digit becomes a hyphen. */
export function slugOf(name: string): string {
  const slug = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/gu, '');
  return slug === '' ? 'part' : slug;
}
