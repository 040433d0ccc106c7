import type { Attribute, AttributeRule } from '../model/index.js';
import type { FactKind, Product } from './product.js';
import { products, type ProductName } from './products/index.js';

/** An option of the records, or of a Book, which has its attributes in the category's order. */
export interface Telling {
  readonly attributes: Readonly<Record<string, Attribute>> | readonly NamedAttribute[];
}

interface NamedAttribute {
  readonly name: string;
  readonly attribute: Attribute;
}

/** A category of the records or of a Book. */
interface Asking {
  readonly attributes: readonly Pick<AttributeRule, 'name'>[];
}

type Facts<Of extends ProductName> = (typeof products)[Of]['facts'];
export type FactName<Of extends ProductName> = keyof Facts<Of> & string;

type KindOf<Fact> = Fact extends { readonly kind: infer Kind extends FactKind } ? Kind : never;

/** What a kind of attribute holds: a `Length`, a boolean for `yes-no`. */
type Value<Kind extends FactKind> = {
  [Each in Attribute['value'] as Each['kind']]: Each[Exclude<keyof Each, 'kind'>];
}[Kind];

/** A fact of an option, by the product that it is one of. Undefined is 'not recorded', or recorded as another kind: who reads
 *  it says so and asks, it does not pass. */
export function factOf<Of extends ProductName, Name extends FactName<Of>>(
  option: Telling | undefined,
  product: Of,
  name: Name,
): Value<KindOf<Facts<Of>[Name]>> | undefined {
  const value = option && attributeOf(option, name)?.value;
  if (value === undefined || value.kind !== factsOf(product)[name]?.kind) return undefined;
  return valueIn(value) as Value<KindOf<Facts<Of>[Name]>>;
}

/** The name and kind of a fact, as the attribute that a category has for it. */
export function attributeFor<Of extends ProductName>(
  product: Of,
  name: FactName<Of>,
): { readonly name: string; readonly kind: FactKind } {
  return { name, kind: factsOf(product)[name]?.kind ?? 'text' };
}

/** Is it a number that the program computes with? None of these is ever less than nothing. */
export function isReckoned(name: string): boolean {
  return Object.values<Product>(products).some(({ facts }) => facts[name]?.kind === 'number');
}

/** The unit of a number that has one, by the name of its fact: an attribute of that name is written in the house's unit. */
export function unitOfFact(name: string): string {
  return Object.values<Product>(products).find(({ facts }) => facts[name]?.unit !== undefined)?.facts[name]?.unit ?? '';
}

/** Do options of the category record the fact? Rules and schedules know a category by its facts. The product is there for the
 *  name's type. */
export function carries<Of extends ProductName>(
  category: Asking | undefined,
  _product: Of,
  name: FactName<Of>,
): boolean {
  return category?.attributes.some((rule) => rule.name === name) ?? false;
}

function factsOf(product: ProductName): Product['facts'] {
  return products[product].facts;
}

function attributeOf({ attributes }: Telling, name: string): Attribute | undefined {
  if (isList(attributes)) return attributes.find((each) => each.name === name)?.attribute;
  return attributes[name];
}

function isList(attributes: Telling['attributes']): attributes is readonly NamedAttribute[] {
  return Array.isArray(attributes);
}

function valueIn(value: Attribute['value']): unknown {
  switch (value.kind) {
    case 'text':
      return value.text;
    case 'number':
      return value.number;
    case 'length':
      return value.length;
    case 'lengths':
      return value.lengths;
    case 'yes-no':
      return value.yes;
  }
}
