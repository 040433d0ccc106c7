export * from '../where/index.js';
