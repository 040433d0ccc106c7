/** What a model may ask for. A house's model stays far under each; a file made to keep a machine busy does not. */
export const limits = {
  /** Characters of the file. */
  characters: 100_000_000,
  /** Numbers, texts, words and references in it. */
  values: 5_000_000,
  /** Lists in lists. */
  nesting: 50,
  /** Placements in placements. */
  placements: 60,
  /** Bodies in bodies. */
  bodies: 30,
  /** Bodies of the whole model, each counted as often as it is asked for. */
  parts: 20_000,
  /** Faces of one body. */
  faces: 5000,
  spaces: 500,
  /** In metres, from the model's origin. */
  reach: 10_000,
} as const;
