declare const unit: unique symbol;

/** A number that carries its unit in its type, so that feet never meet nanometres unnoticed. */
export type Branded<Unit extends string> = number & { readonly [unit]: Unit };
