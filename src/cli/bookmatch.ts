#!/usr/bin/env node
import process from 'node:process';
import { run } from './main.js';

process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  error: (text) => process.stderr.write(text),
  today: () => new Date().toLocaleDateString('sv-SE'),
  color: process.stderr.isTTY && process.env['NO_COLOR'] === undefined,
});
