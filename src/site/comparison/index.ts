/** Pages of what lies between two Books. They name nothing of the book around them, so that they stand in it or alone. */
export { comparisonPages, comparisonSet } from './comparison-pages.js';
