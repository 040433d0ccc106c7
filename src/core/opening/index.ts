/** What follows from the size and shape of an opening: its sides, area and outline, in closed forms. */
export * from './shape.js';
export * from './words.js';
