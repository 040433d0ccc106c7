export { setsTable, type TriedSet } from './sets.js';
export { stillOpen, stillOpenWords } from './still-open.js';
export { whatFollows, type Tried, type WhatFollows } from './what-follows.js';
