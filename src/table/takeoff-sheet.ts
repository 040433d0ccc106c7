import type { LookUp } from '../core/book/index.js';
import { words, type Block } from '../sheet/index.js';
import { countWords, cuttingWords, supplyWords } from '../core/takeoff/index.js';
import { printQuantity } from '../base/units/index.js';
import { layoutTables } from './layouts.js';
import { isFilled } from './part.js';
import { quantitiesOfRoom, quantitiesOfTrade, statementLines } from './quantities.js';
import { resistance } from './resistance.js';
import { assemblySteps, stepWords, takeoffSteps } from './steps.js';
import { roomSupplies, suppliesOfTrade } from './supplies.js';
import { quantityLines, type QuantityLine } from './takeoff-lines.js';

/** Quantities, layouts, supplies and R, room by room or trade by trade, and on request how each was figured. */
export function takeoffBlocks(
  look: LookUp,
  { by, arithmetic = false }: { readonly by: 'room' | 'trade'; readonly arithmetic?: boolean },
): readonly Block[] {
  const lines = quantityLines(look);
  const parts =
    by === 'room'
      ? look.book.rooms.map((room) => {
          const own = lines.filter((line) => line.room === room.slug);
          const title = look.roomTitle(room.slug);
          return {
            id: room.slug,
            title,
            own,
            quantities: quantitiesOfRoom(title, own, look),
            supplies: roomSupplies(room, look),
          };
        })
      : look.book.trades.map(({ slug, name }) => {
          const own = lines.filter((line) => line.trade === slug);
          return {
            id: slug,
            title: name,
            own,
            quantities: quantitiesOfTrade(slug, own, look),
            supplies: suppliesOfTrade(slug, look),
          };
        });
  return parts
    .filter(({ own }) => own.length > 0)
    .map(({ id, title, own, quantities, supplies }) => ({
      block: 'section',
      id,
      title,
      of: [
        ...[quantities, ...layoutTables(own, look), supplies, resistance(id, own, look)].filter(isFilled),
        ...(arithmetic ? [figured(id, own, look)] : []),
      ],
    }));
}

/** Every step with its reason, place by place. */
function figured(id: string, lines: readonly QuantityLine[], look: LookUp): Block {
  const of = lines.map((line): Block => {
    const { room, place, name, selection, takeoff } = line;
    const product = takeoff.part === 'main' ? name : `${name}, ${takeoff.part}`;
    return {
      block: 'note',
      id: `figured-${selection}-${takeoff.part}`,
      tone: 'aside',
      title: [words(`${look.room(room)?.number ?? room} ${place}: ${product}`)],
      of: stepsOf(line).map((text) => [words(text)]),
    };
  });
  return { block: 'section', id: `${id}-figured`, title: 'How this was figured', of };
}

function stepsOf({ takeoff }: QuantityLine): readonly string[] {
  const { cutting, counts = [], supplies = [], notes = [], assemblies = [], rule, source } = takeoff;
  return [
    ...takeoffSteps(takeoff).map(stepWords),
    ...statementLines(takeoff),
    ...(cutting ? cuttingWords(cutting) : []),
    ...counts.map((count) => `Counted as ${countWords(count)}: ${count.why}. Source: ${count.source}`),
    ...supplies.map(
      (supply) =>
        `${supply.what} ${printQuantity(supply.required, supply.unit)}: ${supplyWords(supply)}. Source: ${supply.source}`,
    ),
    ...notes.map((note) => `${note.what}: ${note.words}. Source: ${note.source}`),
    ...assemblies.flatMap((assembly) => [
      `${assembly.name}, R with the framing:`,
      ...assemblySteps(assembly).map((step) => `  ${stepWords(step)}`),
    ]),
    `Rule: ${rule} Source: ${source}`,
  ];
}
