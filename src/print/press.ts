import { fork, type ChildProcess } from 'node:child_process';
import process from 'node:process';
import { ownProcess, programPath, type OwnProcess } from '../disk/program/index.js';
import { layoutEnvironment } from './layout-environment.js';
import { setPdf, type PdfJob, type SetPdf } from './set-pdf.js';

export interface PressOrder {
  readonly number: number;
  readonly job: PdfJob;
}

export type PressAnswer = { readonly number: number } & ({ readonly pdf: Uint8Array } | { readonly failed: string });

/** Somebody who waits for a PDF. */
interface Waiting {
  readonly job: PdfJob;
  readonly done: (pdf: Uint8Array | Promise<Uint8Array>) => void;
  readonly failed: (error: Error) => void;
}

/** Milliseconds. To begin anew takes a second; what lays pages out keeps some hundred megabytes. */
const idleTime = 5_000;

/**
 * Makes PDFs in a process of its own, one after the other, while this one goes on: pages are made meanwhile, and a desk answers. It is begun with the
 * first job, and let go when none has come for some seconds. Where it cannot be begun or ends in the midst, what was asked for is made here.
 */
export function openPress(by: OwnProcess = ownProcess('src/print/press-process.ts')): SetPdf {
  const waiting = new Map<number, Waiting>();
  let child: ChildProcess | undefined;
  let numbers = 0;
  let idle: NodeJS.Timeout | undefined;

  const begin = (): ChildProcess => {
    const begun = fork(by.file, {
      execArgv: [...by.execArgv],
      cwd: programPath('.'),
      env: { ...layoutEnvironment, ...process.env },
      serialization: 'advanced',
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    const end = (): void => {
      if (child !== begun) return;
      child = undefined;
      for (const [number, { job, done }] of waiting) {
        waiting.delete(number);
        done(setPdf(job));
      }
    };
    begun.on('message', (answer: PressAnswer) => {
      const one = waiting.get(answer.number);
      waiting.delete(answer.number);
      if ('pdf' in answer) one?.done(answer.pdf);
      else one?.failed(new Error(answer.failed));
      if (waiting.size === 0) rest(begun);
    });
    begun.on('error', end);
    begun.on('exit', end);
    return begun;
  };
  /** A program that has nothing else to do ends, and its press with it. */
  const rest = (begun: ChildProcess): void => {
    begun.unref();
    begun.channel?.unref();
    idle = setTimeout(() => {
      child = undefined;
      begun.disconnect();
    }, idleTime).unref();
  };
  return (job) =>
    new Promise((done, failed) => {
      clearTimeout(idle);
      child ??= begin();
      child.ref();
      child.channel?.ref();
      const number = (numbers += 1);
      waiting.set(number, { job, done, failed });
      // What cannot be sent is told by the end of the process.
      child.send({ number, job } satisfies PressOrder, () => undefined);
    });
}
