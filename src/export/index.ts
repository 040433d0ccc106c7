export * from './csv/index.js';
export * from './ics/index.js';
export * from './layouts/index.js';
export * from './orders/index.js';
export * from './quantities/index.js';
export { scheduleFiles } from './schedules/index.js';
