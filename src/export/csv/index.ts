export * from './write-csv.js';
