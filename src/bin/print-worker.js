/** Starts a thread that makes prints. */
import { loadProgram } from './load-program.js';

const { servePrints } = await loadProgram('commands/make/print-worker');
servePrints();
