#!/usr/bin/env node
import process from 'node:process';
import { run } from './main.js';
import { thisTerminal } from './this-terminal.js';

// A reader such as head may have had enough: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

const terminal = thisTerminal();
try {
  process.exitCode = await run(process.argv.slice(2), terminal);
} finally {
  terminal.end();
}
