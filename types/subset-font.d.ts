declare module 'subset-font' {
  /** A font cut to the letters of a text. */
  export default function subsetFont(
    font: Uint8Array,
    letters: string,
    options: { readonly targetFormat: 'woff2'; readonly keepFeatures: readonly string[] },
  ): Promise<Uint8Array>;
}
