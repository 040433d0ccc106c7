/** The desk: the book of a house served to this machine alone, and written where it stands. In: a house folder, and the means to run commands.
 *  Out: pages, and records changed by the same commands that a person would type. Absent: rules of its own about what may be written. */
export { actOn, type Act, type Means, type Run, type TakingIn } from './act.js';
export type { Answered, BesideDesk } from './answer.js';
export type { Said } from './said.js';
export { deskOn } from './strip.js';
export { serveDesk, type Served } from './server.js';
export { newStart } from './start.js';
export { watchHouse, type Watched } from './standing.js';
