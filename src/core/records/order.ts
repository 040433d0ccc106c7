import { byText } from '../../base/units/index.js';

/** Order of room numbers as people read them: 9 before 101, 101 before 101A. */
export function byNumber(a: string, b: string): number {
  const [left, right] = [pieces(a), pieces(b)];
  for (let index = 0; index < Math.max(left.length, right.length); index += 1) {
    const [one = '', other = ''] = [left[index], right[index]];
    const bothDigits = /^\d/u.test(one) && /^\d/u.test(other);
    const order = (bothDigits ? Number(one) - Number(other) : 0) || byText(one, other);
    if (order !== 0) return order;
  }
  return 0;
}

function pieces(text: string): readonly string[] {
  return text.match(/\d+|\D+/gu) ?? [];
}
