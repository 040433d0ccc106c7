/** Points of a length on paper in millimetres, as drawings write them. Source: an inch is 25.4 mm and 72 points. */
function points(millimetres: number): number {
  return Math.round((millimetres * 7200) / 25.4) / 100;
}

/** Line weights in points, of the series 0.13, 0.18, 0.35, 0.50 mm: what is cut is heavy, what is seen is medium, what explains is fine.
 *  Source: the widths that LibreCAD's manual ('Common Line Widths') sets in bold as ISO standard sizes; which is for what is common
 *  practice, no source, and ISO 128 itself was not read. */
export const pens = {
  cut: points(0.5),
  object: points(0.35),
  fine: points(0.18),
  hair: points(0.13),
} as const;

export type Pen = keyof typeof pens;

/** Dash patterns in points. */
export const dashes = {
  hidden: '3.5 2',
  open: '7 2.5 1.5 2.5',
  fine: '1.5 1.5',
} as const;

/** Text sizes in points. Nothing on a sheet is smaller than `note`, whose capitals and figures are 1.8 mm high: over 1/16 inch, the least
 *  that drafters write at. Common practice, no source; one public guide, for sheets that are read at half their size, asks for 4 mm
 *  on the whole sheet, which is 2 mm as read (Naval Facilities' guide for A-E firms, 7.8): notes are smaller than that. */
export const sizes = {
  title: 9.5,
  name: 9,
  dimension: 7.5,
  note: 7,
} as const;
