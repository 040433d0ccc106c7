export * from './ics/index.js';
