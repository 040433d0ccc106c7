/** A whole number with its sign: `+10`, `−3`, `0`. */
export function signed(amount: number): string {
  if (amount === 0) return '0';
  return amount > 0 ? `+${amount}` : `−${-amount}`;
}
