export { whatFollows, type Tried, type WhatFollows } from './what-follows.js';
