#!/usr/bin/env node
import process from 'node:process';
import { askSecret } from './ask-secret.js';
import { run } from './main.js';
import { terminalAsker } from './terminal-asker.js';

// A reader such as head may have had enough: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
  today: () => new Date().toLocaleDateString('sv-SE'),
  now: () => new Date(),
  environment: (name) => process.env[name],
  askSecret,
  asker: terminalAsker,
  color: process.stderr.isTTY && process.env['NO_COLOR'] === undefined,
});
