/** A value of an entity as the file writes it. `$` and `*` are undefined. */
export type Value = undefined | number | string | Ref | Word | Typed | readonly Value[];

/** `#12`: another entity. */
export interface Ref {
  readonly ref: number;
}

/** `.MILLI.`: one of the words that a type allows, without its points. */
export interface Word {
  readonly word: string;
}

/** `IFCLABEL('Oak')`: a value that says its own type. */
export interface Typed {
  readonly type: string;
  readonly value: Value;
}

/** `#12=IFCSPACE(…);` */
export interface Entity {
  readonly id: number;
  /** In capitals. */
  readonly type: string;
  readonly args: readonly Value[];
}

/** A file of ISO 10303-21, taken apart. */
export interface StepFile {
  readonly schema: string;
  readonly entities: ReadonlyMap<number, Entity>;
}

export function isList(value: Value): value is readonly Value[] {
  return Array.isArray(value);
}

export function isRef(value: Value): value is Ref {
  return typeof value === 'object' && 'ref' in value;
}

export function isTyped(value: Value): value is Typed {
  return typeof value === 'object' && 'type' in value;
}

/** The word of an enumeration; undefined for any other value. */
export function wordOf(value: Value): string | undefined {
  return typeof value === 'object' && 'word' in value ? value.word : undefined;
}
