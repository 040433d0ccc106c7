export { setsTable, type TriedSet } from './sets.js';
export { whatFollows, type Tried, type WhatFollows } from './what-follows.js';
