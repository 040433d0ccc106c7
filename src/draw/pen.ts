/** Line weights in points: what is cut is heavy, what is seen is medium, what explains is fine. */
export const pens = {
  cut: 1.5,
  object: 0.9,
  fine: 0.55,
  hair: 0.35,
} as const;

export type Pen = keyof typeof pens;

/** Dash patterns in points. */
export const dashes = {
  hidden: '3.5 2',
  open: '7 2.5 1.5 2.5',
  fine: '1.5 1.5',
} as const;

/** Text sizes in points. Nothing on a sheet is smaller than `note`. */
export const sizes = {
  title: 9.5,
  name: 9,
  dimension: 7.5,
  note: 7,
} as const;
