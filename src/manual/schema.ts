import { schemaOf } from '../core/records/index.js';

/** What the manual reads of a JSON Schema. */
export interface Schema {
  readonly title?: string;
  readonly description?: string;
  readonly type?: string;
  readonly format?: string;
  readonly pattern?: string;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly $ref?: string;
  readonly oneOf?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean | Schema;
  readonly items?: Schema;
  readonly examples?: readonly unknown[];
  readonly 'read-by'?: readonly string[];
}

/** The schema itself where another refers to it. What stands beside a reference is more to the point than what it leads to. */
export function resolved(schema: Schema): Schema {
  if (schema.$ref === undefined) return schema;
  const { $ref, ...beside } = schema;
  return { ...resolved(schemaOf($ref)), ...beside };
}

/** A schema's own ways of being written: itself, or each of the alternatives that it offers. */
export function waysOf(schema: Schema): readonly Schema[] {
  const whole = resolved(schema);
  const ways = whole.oneOf ?? whole.anyOf;
  return ways ? ways.flatMap(waysOf) : [whole];
}
