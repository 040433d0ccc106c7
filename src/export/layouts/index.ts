export * from './rows.js';
