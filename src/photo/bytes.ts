/** Bytes one after the other. */
export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Letters that stand at a place, one byte each. */
export function lettersAt(bytes: Uint8Array, from: number, count: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + count));
}

export function viewOf({ buffer, byteOffset, byteLength }: Uint8Array): DataView {
  return new DataView(buffer, byteOffset, byteLength);
}

/** What was read of a picture before its limits are looked at. Sides are in pixels, as it is shown. */
export interface Stripped {
  readonly width: number;
  readonly height: number;
  readonly bytes: Uint8Array;
}
