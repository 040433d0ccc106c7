import { join } from 'node:path';
import { Command } from 'commander';
import { documentPath } from '../disk/load/index.js';
import { makeChangeOrderPdf, undrawnProblems } from '../print/index.js';
import { changeOrderDigest } from '../signoff/index.js';
import { shortDigest } from '../base/units/index.js';
import { writeAtomically } from '../disk/store/index.js';
import type { Console } from './console.js';
import { loadFor, reportBriefly, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';

/** `bookmatch print-change N`: the paper that owner and builder sign, kept in issued/ so that verify can hold a signed one against it. */
export function printChange(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('print-change'))
    .argument('<number>', 'the number of the change order')
    .action(async (named: string, options: HouseOptions) => {
      const loaded = await loadFor(options, console, { marked: false });
      reportBriefly(loaded, loaded.book ? '' : 'Nothing was written.', console);
      if (!loaded.book) return done(1);
      const { book } = loaded;
      const order = book.changeOrders.find(({ number }) => String(number) === named.replace(/^0+/u, ''));
      if (!order)
        throw new UsageError(
          `there is no change order ${named}; the last is ${book.changeOrders.at(-1)?.number ?? 'none'}`,
        );
      if (order.state !== 'proposed') {
        console.error(
          `Change order ${order.number} is ${order.state}: what was signed is not printed anew. Nothing was written.\n`,
        );
        return done(1);
      }
      const { pdf, undrawn } = await makeChangeOrderPdf(book, order);
      reportProblems({ problems: undrawnProblems(undrawn, book.sources) }, '', console);
      const path = join(loaded.open.dir, documentPath({ is: 'change order', number: order.number }));
      await writeAtomically(path, pdf);
      console.tell(`${path}  to sign, digest ${shortDigest(changeOrderDigest(book.house.number, order))}\n`);
      done(0);
    });
}
