#!/usr/bin/env node
/** Starts the program. */
import { loadProgram } from './load-program.js';

const { run } = await loadProgram('commands/main');
process.exitCode = await run(process.argv.slice(2));
