import type { Attribute } from '../model/index.js';

export type FactKind = Attribute['value']['kind'];

/** One thing that options of a kind of product record as an attribute of this name, and that code reads. */
export interface Fact {
  readonly kind: FactKind;
  /** Of a number that has one. */
  readonly unit?: string;
  /** What it says and what for, in a sentence. */
  readonly tells: string;
  /** Ids of the caution rules that read it. */
  readonly cautions?: readonly string[];
  /** Who else reads it: schedules, take-off, drawings. */
  readonly readers?: readonly string[];
  /** Its lack is no slip: there may be nothing to say, a schedule shows the gap, or the measure asks for it. */
  readonly isOptional?: true;
}

/** A kind of product with the facts that belong together. Slugs of categories are the builder's own, so that a category is
 *  known by how it is measured or by what its options record. */
export interface Product {
  /** As in `is an interior door`. */
  readonly name: string;
  /** The convention by which nothing else is measured. */
  readonly measuredBy?: string;
  /** Facts that no other product has: a category with one of them is of this kind. */
  readonly knownBy: readonly string[];
  /** By the attribute's name. */
  readonly facts: Readonly<Record<string, Fact>>;
}
