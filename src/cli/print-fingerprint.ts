/** A fingerprint as certificate programs print it: pairs with colons between. */
export function printFingerprint(hex: string): string {
  return (hex.toUpperCase().match(/../gu) ?? []).join(':');
}
