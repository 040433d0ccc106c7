/** Table of reachable sums is not made larger than this. */
const largestTable = 200_000;

/** The least sum of stock lengths that is not under `needed`; where the lengths share so small a measure that sums are too
 *  many to try, the least multiple of that measure. No layout can buy less. */
export function leastSum(stock: readonly number[], needed: number): number {
  if (needed <= 0 || stock.length === 0) return 0;
  const measure = stock.reduce(commonMeasure);
  const units = stock.map((length) => length / measure);
  const target = Math.ceil(needed / measure);
  const [shortest, longest] = [Math.min(...units), Math.max(...units)];
  if (target > shortest * longest || target + longest > largestTable) return Math.max(target, shortest) * measure;
  const reachable = new Uint8Array(target + longest + 1);
  reachable[0] = 1;
  for (let sum = 1; sum < reachable.length; sum += 1) {
    if (!units.some((unit) => unit <= sum && reachable[sum - unit] === 1)) continue;
    reachable[sum] = 1;
    if (sum >= target) return sum * measure;
  }
  return target * measure;
}

function commonMeasure(a: number, b: number): number {
  return b === 0 ? a : commonMeasure(b, a % b);
}
