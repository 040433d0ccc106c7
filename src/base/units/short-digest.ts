/** The first 48 bits of a digest for people to read out: `4F2A-91C0-77BE`. Two versions of a house that differ share it
 *  with a chance of one in 280 million million; nobody should trust it where someone wants to deceive: use the whole one. */
export function shortDigest(hex: string): string {
  return (
    hex
      .slice(0, 12)
      .toUpperCase()
      .match(/.{1,4}/gu) ?? []
  ).join('-');
}
