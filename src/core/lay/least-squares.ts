/** One equation of a least-squares problem: the sum of `of`'s coefficients times the unknowns is `is`, give or take `sigma`. */
export interface Equation {
  readonly of: readonly (readonly [unknown: number, coefficient: number])[];
  readonly is: number;
  readonly sigma: number;
}

/** Weighted least squares by normal equations and Cholesky's factor: A'PA = LL'. Every unknown must be in an equation that
 *  fixes it; one that is not, throws. What stands before the first unknown that shares an equation with a row's own is nothing in the factor as in the
 *  matrix, and is passed over. Sources: Björck, Numerical Methods for Least Squares Problems (1996), 2.2; George and Liu, Computer Solution of Large Sparse
 *  Positive Definite Systems (1981), 4, the envelope method; both from memory. */
export class LeastSquares {
  /** Lower triangle of the factor, row by row. */
  private readonly factor: Float64Array;
  /** Of each row, the first column that may hold something. */
  private readonly begins: Int32Array;

  constructor(
    readonly unknowns: number,
    readonly equations: readonly Equation[],
  ) {
    this.begins = beginsOf(unknowns, equations);
    this.factor = factored(normalMatrix(unknowns, equations), unknowns, this.begins);
  }

  /** The unknowns that leave the least weighted squares. */
  solution(): Float64Array {
    const right = new Float64Array(this.unknowns);
    for (const { of, is, sigma } of this.equations) {
      for (const [unknown, coefficient] of of) add(right, unknown, (coefficient * is) / (sigma * sigma));
    }
    return this.solve(right);
  }

  /** What one more unknown would explain, for each unit of which equations' right sides grow as `shifts` say: its value, and by how much the
   *  weighted squares would fall from those at the solution `x`. Closed form of solving anew, as Baarda's test for one wrong observation: A Testing Procedure for Use in
   *  Geodetic Networks (1968), from memory. `prior` is what the unknown may be for itself. */
  explainedBy(
    shifts: readonly Shift[],
    x: Float64Array,
    prior: number,
  ): { readonly value: number; readonly gain: number } {
    const right = new Float64Array(this.unknowns);
    let [own, off] = [1 / (prior * prior), 0];
    for (const { equation, by } of shifts) {
      const { of, is, sigma } = this.equations[equation] as Equation;
      const weight = 1 / (sigma * sigma);
      let computed = 0;
      for (const [unknown, coefficient] of of) {
        add(right, unknown, coefficient * by * weight);
        computed += coefficient * (x[unknown] as number);
      }
      own += by * by * weight;
      off += by * (computed - is) * weight;
    }
    const through = this.solve(right);
    for (let i = 0; i < this.unknowns; i += 1) own -= (right[i] as number) * (through[i] as number);
    // Where nothing controls it, the unknown takes up its own error alone.
    if (own <= 1e-9) return { value: 0, gain: 0 };
    return { value: off / own, gain: (off * off) / own };
  }

  /** Standard deviation of an unknown, as the equations' own sigmas give it: the root of its place on the diagonal of the inverse. */
  deviation(unknown: number): number {
    const right = new Float64Array(this.unknowns);
    right[unknown] = 1;
    return Math.sqrt(this.solve(right)[unknown] as number);
  }

  private solve(right: Float64Array): Float64Array {
    const n = this.unknowns;
    const x = Float64Array.from(right);
    for (let row = 0; row < n; row += 1) {
      const start = (row * (row + 1)) / 2;
      let sum = x[row] as number;
      for (let k = this.begins[row] as number; k < row; k += 1)
        sum -= (this.factor[start + k] as number) * (x[k] as number);
      x[row] = sum / (this.factor[start + row] as number);
    }
    for (let row = n - 1; row >= 0; row -= 1) {
      const start = (row * (row + 1)) / 2;
      const value = (x[row] as number) / (this.factor[start + row] as number);
      x[row] = value;
      for (let k = this.begins[row] as number; k < row; k += 1) add(x, k, -(this.factor[start + k] as number) * value);
    }
    return x;
  }
}

/** An unknown's part in an equation: the equation's right side grows by `by` for each unit of it. */
export interface Shift {
  readonly equation: number;
  readonly by: number;
}

function normalMatrix(n: number, equations: readonly Equation[]): Float64Array {
  const matrix = new Float64Array((n * (n + 1)) / 2);
  for (const { of, sigma } of equations) {
    for (const [i, a] of of) {
      for (const [j, b] of of) if (j <= i) add(matrix, (i * (i + 1)) / 2 + j, (a * b) / (sigma * sigma));
    }
  }
  return matrix;
}

function beginsOf(n: number, equations: readonly Equation[]): Int32Array {
  const begins = Int32Array.from({ length: n }, (_, row) => row);
  for (const { of } of equations) {
    const first = Math.min(...of.map(([unknown]) => unknown));
    for (const [unknown] of of) begins[unknown] = Math.min(begins[unknown] as number, first);
  }
  return begins;
}

function factored(matrix: Float64Array, n: number, begins: Int32Array): Float64Array {
  for (let row = 0; row < n; row += 1) {
    const start = (row * (row + 1)) / 2;
    const begin = begins[row] as number;
    for (let column = begin; column <= row; column += 1) {
      const other = (column * (column + 1)) / 2;
      let sum = matrix[start + column] as number;
      for (let k = Math.max(begin, begins[column] as number); k < column; k += 1)
        sum -= (matrix[start + k] as number) * (matrix[other + k] as number);
      if (column < row) matrix[start + column] = sum / (matrix[other + column] as number);
      else if (sum > 0) matrix[start + row] = Math.sqrt(sum);
      else throw new RangeError(`unknown ${row} is in no equation that fixes it`);
    }
  }
  return matrix;
}

function add(to: Float64Array, index: number, value: number): void {
  to[index] = (to[index] as number) + value;
}
