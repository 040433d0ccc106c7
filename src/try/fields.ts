/** What a page and the script that serves it call the same things. */
export const tryFields = {
  /** Of a fieldset: the id of the selection that its radio buttons are of. Their values are options' slugs; empty: nothing is chosen. */
  place: 'data-try',
  /** Of a picture: the slug of the room that it shows. */
  picture: 'data-try-picture',
  /** Of a picture of which a page shows the parts apart: `drawn` or `words`. */
  part: 'data-try-part',
  /** Of a button: what it picks, as a JSON list of picks. */
  set: 'data-try-set',
  /** Where the bar and what follows are put. */
  root: 'try-root',
  follows: 'try-follows',
  followsTitle: 'try-follows-title',
  /** Read out when it changes. */
  said: 'try-said',
  /** Where slips are laid down: a box to paste into, files to open, a button that reads the box, what is said, and what comes of it. */
  slipText: 'slip-text',
  slipFiles: 'slip-files',
  slipRead: 'slip-read',
  slipSaid: 'slip-said',
  slips: 'slips-root',
  /** At the desk: a form that takes a slip, with its text in the field `slip`. */
  taken: 'try-taken',
  /** Of the root: the name under which this browser keeps what is picked. */
  store: 'data-store',
  /** Of the root: the page's path in the book, from which links go. */
  page: 'data-page',
} as const;

/** The name under which a browser keeps what is picked of a house. */
export function storeKey({ name, number }: { readonly name: string; readonly number: string }): string {
  return `bookmatch-try ${number} ${name}`;
}

/** The name under which a browser keeps slips that were laid down, while its window is open. */
export function slipsKey(house: Parameters<typeof storeKey>[0]): string {
  return `${storeKey(house)} slips`;
}
