/** Cautions. In: rooms as measured and what is selected in them. Out: what to look at again, with its source. Absent: verdicts. */
export type { Caution } from './caution.js';
