import type { Path } from '../../base/problem/index.js';
import { mostCounted, printAmount } from '../../base/units/index.js';
import type { Finding } from './finding.js';
import { leavesIn, nothingSeen, unshownSignIn } from './lookalikes.js';

/** What no schema says of each text and each number of a record, since it is so of all of them: a text shows something and holds no sign that cannot be
 *  shown, and a number is no larger than what a house has. What is no number at all has been found by its type. */
export function valueFindings(data: unknown): readonly Finding[] {
  return leavesIn(data).flatMap(({ value, path }) => {
    if (typeof value === 'string') return textFinding(value, path) ?? [];
    return typeof value === 'number' ? (numberFinding(value, path) ?? []) : [];
  });
}

function textFinding(text: string, path: Path): Finding | undefined {
  const name = nameOf(path);
  if (nothingSeen(text)) {
    const message = text === '' ? `${name} is empty` : `${name} is empty: nothing of it can be seen`;
    return {
      path,
      code: 'text-empty',
      message,
      fix: 'write it, or leave the key out where it may be absent',
      onKey: false,
    };
  }
  const sign = unshownSignIn(text);
  if (sign === undefined) return undefined;
  const message = `${name} holds a sign that cannot be shown (${sign})`;
  return { path, code: 'text-sign', message, fix: 'type it anew, without that sign', onKey: false };
}

function numberFinding(value: number, path: Path): Finding | undefined {
  if (!Number.isFinite(value) || Math.abs(value) <= mostCounted) return undefined;
  const message = `${nameOf(path)} is ${value}, which is more than any house has`;
  return { path, code: 'number-large', message, fix: `write ${printAmount(mostCounted, 0)} at most`, onKey: false };
}

function nameOf(path: Path): string {
  return `'${String(path.findLast((part) => typeof part === 'string') ?? '')}'`;
}
