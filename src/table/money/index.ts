export { agreedSteps, contractSteps } from './contract-steps.js';
export { forecast } from './forecast.js';
export { forecastChoices } from './forecast-choices.js';
export { allowances } from './allowances.js';
export { allowanceLines } from './allowance-lines.js';
export { allowanceFigures } from './allowance-figures.js';
export { upgrades } from './upgrades.js';
export { totalsByCategory, totalsByRoom, totalsByTrade } from './totals.js';
export { moneySections, moneySheets } from './money-sheets.js';
