/** Book → what each sheet says, as plain preformatted JSON. In: a Book. Out: strings, small figures and drawings in the
 *  order of print. Absent: layout, fonts, PDF. */
export * from './sheets.js';
export * from './change-order.js';
