/** A value as it was written, short enough for one line. */
export function quoted(value: unknown): string {
  if (value === null) return 'nothing';
  if (typeof value === 'string') return `'${value.length > 60 ? `${value.slice(0, 57)}…` : value}'`;
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of keys';
  return String(value);
}

/** What a schema's `type` asks for. */
export function typeWords(type: unknown): string {
  switch (type) {
    case 'string':
      return 'a text';
    case 'integer':
      return 'a whole number';
    case 'number':
      return 'a number';
    case 'boolean':
      return 'true or false';
    case 'array':
      return 'a list';
    case 'object':
      return 'a group of keys';
    default:
      return 'something else';
  }
}

/** What `yes`, `no`, `on` or `off` means, which YAML 1.2 takes for text; undefined for anything else. */
export function answerOf(value: unknown): boolean | undefined {
  if (typeof value !== 'string') return undefined;
  if (/^(yes|on)$/iu.test(value)) return true;
  return /^(no|off)$/iu.test(value) ? false : undefined;
}
