export { houseStanding, type HouseStanding } from './house-standing.js';
export { housesTotals, mostUrgentFirst, type HousesTotal, type ListedHouse } from './listed-houses.js';
export { housesTable } from './houses-table.js';
