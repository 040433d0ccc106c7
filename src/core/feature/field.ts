import { parseLength, type Length } from '../../base/units/index.js';

export type Raw = Readonly<Record<string, unknown>>;

/** A length of a record that the schema has passed. */
export function lengthField(raw: Raw, key: string): Length {
  return optionalLength(raw, key) ?? (0 as Length);
}

export function optionalLength(raw: Raw, key: string): Length | undefined {
  const parsed = typeof raw[key] === 'string' ? parseLength(raw[key]) : undefined;
  return parsed?.ok ? parsed.value : undefined;
}

export function textField(raw: Raw, key: string): string {
  return typeof raw[key] === 'string' ? raw[key] : '';
}

export function numberField(raw: Raw, key: string, otherwise: number): number {
  return typeof raw[key] === 'number' ? raw[key] : otherwise;
}

export function yesField(raw: Raw, key: string): boolean | undefined {
  return typeof raw[key] === 'boolean' ? raw[key] : undefined;
}

/** A group of fields, such as `firebox: { width, height }`. */
export function groupField(raw: Raw, key: string): Raw | undefined {
  const value = raw[key];
  return typeof value === 'object' && value !== null ? (value as Raw) : undefined;
}

export function lengthsField(raw: Raw, key: string): readonly Length[] {
  const values: readonly unknown[] = Array.isArray(raw[key]) ? raw[key] : [];
  return values.map((value) => lengthField({ value }, 'value'));
}
