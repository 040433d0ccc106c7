export { placeLinks } from '../where/index.js';
