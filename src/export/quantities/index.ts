export * from './rows.js';
export * from './steps.js';
