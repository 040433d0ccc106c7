import type { FieldChange } from './room-change.js';

/** Fields that read otherwise now, of `[field, from, to]`. */
export function compareText(fields: readonly (readonly [string, string, string])[]): FieldChange[] {
  return fields.filter(([, from, to]) => from !== to).map(([field, from, to]) => ({ field, from, to }));
}
