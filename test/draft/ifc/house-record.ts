/** The record of a house that has nothing but levels, each a line of a list. */
export function houseRecord({
  metric,
  levels,
}: {
  readonly metric: boolean;
  readonly levels: readonly string[];
}): string {
  const coin = metric ? '€' : '$';
  return `---
name: House
number: "1"
place: Anywhere
${metric ? 'units: metric\n' : ''}currency: ${metric ? 'EUR' : 'USD'}
people: [{ role: owner, name: The owner }, { role: builder, name: The builder }]
contract: { sum: ${coin}1, date: 2026-02-16, tax: { rate: 0 %, on: [material] }, overage-markup: 0 %, credit-returns: 100 %, credit-markup: false, contingency: ${coin}0, owner-furnished-install: contract, rounding: half-up }
levels:
${levels.join('\n')}
calendar: { weekend: [saturday, sunday], holidays: none, review: 1 days }
milestones: [{ id: start, name: Start, date: 2026-05-04 }]
---
`;
}
