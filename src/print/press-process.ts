import process from 'node:process';
import type { PressAnswer, PressOrder } from './press.js';
import { setPdf } from './set-pdf.js';

/** The other process of `press.ts`: makes the PDFs that it is sent, one after the other, and ends with who sends them. */

let last: Promise<void> = Promise.resolve();

process.on('message', (order: PressOrder) => {
  last = last.then(async () => {
    process.send?.(await answer(order));
  });
});
process.on('disconnect', () => process.exit());

async function answer({ number, job }: PressOrder): Promise<PressAnswer> {
  try {
    return { number, pdf: await setPdf(job) };
  } catch (error) {
    return { number, failed: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
}
