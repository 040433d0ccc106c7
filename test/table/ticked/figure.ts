/** A figure as it stands on paper, with one step of its last digit. Zeros at the end are not printed: `least` digits are meant. */
export interface Figure {
  readonly value: number;
  readonly step: number;
}

export const number = String.raw`[−+]?\$?[\d,]+(?:\.\d+)?`;

export function figure(text: string | undefined, least = 1): Figure {
  const [, sign = '', whole = '', part = ''] = /^([−+]?)\$?([\d,]+)(?:\.(\d+))?/u.exec(text?.trim() ?? '') ?? [];
  if (whole === '') throw new Error(`'${text ?? ''}' is no figure`);
  const size = Number(`${whole.replaceAll(',', '')}.${part}`);
  return { value: sign === '−' ? -size : size, step: 10 ** -Math.max(part.length, least) };
}

/** What was figured from printed digits is what is printed, within the last digit printed. */
export function holds(figured: number, printed: Figure): boolean {
  return Math.abs(figured - printed.value) <= printed.step * 1.000_001;
}

/** To the digit. */
export function adds(figured: number, printed: Figure): boolean {
  return Math.abs(figured - printed.value) < printed.step / 1000;
}
