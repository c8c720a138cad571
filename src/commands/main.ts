/**
 * The command line: which command was meant, and its exit code. Each command's own code is loaded only when
 * it is asked for, so that `--help` and `mix` do not wait for the site generator or the PDF library.
 */
import { Command, CommanderError } from 'commander';
import { EXIT } from './exit-codes.ts';
import { usualContent } from './folders.ts';
import { processTerminal, type Terminal } from './terminal.ts';
import { unexpectedText } from './unexpected.ts';
import { programVersion } from './version.ts';

type Outcome = (code: number) => void;

/** Runs one command line (without `node` and the script) and returns its exit code; never throws. */
export async function run(args: string[], terminal: Terminal = processTerminal()): Promise<number> {
  let code: number = EXIT.done;
  const program = programFor(terminal, (exit) => {
    code = exit;
  });
  try {
    await program.parseAsync(args, { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.usage;
    terminal.tell(unexpectedText(error));
    return EXIT.unexpected;
  }
}

/** The commands and their options; `end` gets the exit code of the one that ran. */
export function programFor(terminal: Terminal, end: Outcome): Command {
  const program = new Command('tinwright')
    .description('Batter, whole eggs, charts and print for people who bake celebration cakes by the tin.')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.say(text.trimEnd()),
      writeErr: (text) => terminal.tell(text.trimEnd()),
    })
    .showHelpAfterError('(add --help for the options)')
    .version(programVersion(), '-V, --version', 'print the version');
  addBuild(program, terminal, end);
  addCheck(program, terminal, end);
  addMix(program, terminal, end);
  addPortions(program, terminal, end);
  addServe(program, terminal, end);
  addNew(program, terminal, end);
  addBundle(program, terminal, end);
  return program;
}

/** A command with what all of them share: settings inherited, a version, the two folders. */
function command(program: Command, name: string, description: string): Command {
  return program
    .command(name)
    .description(description)
    .version(programVersion(), '-V, --version', 'print the version')
    .option('--content <dir>', 'folder with the content files', usualContent())
    .option('--output <dir>', 'folder that the build writes into', 'output');
}

/** For commands that make prints. */
const withCache = (own: Command): Command =>
  own
    .option('--cache <dir>', 'folder that finished prints are kept in for the next build (.cache/prints)')
    .option('--no-cache', 'make every print afresh, and keep none');

function addBuild(program: Command, terminal: Terminal, end: Outcome): void {
  withCache(command(program, 'build', 'make the site, the PDFs and the data files'))
    .option('--only <parts>', 'some of site,print,data; the others stay as they are')
    .option('--quiet', 'say nothing but errors', false)
    .action(async (options) => end(await (await import('./build-command.ts')).runBuild(options, terminal)));
}

function addCheck(program: Command, terminal: Terminal, end: Outcome): void {
  command(program, 'check', 'read the content files, print every error and warning, write nothing')
    .option('--json', 'as JSON, for editors and scripts', false)
    .action(async (options) => end(await (await import('./check-command.ts')).runCheck(options, terminal)));
}

function addMix(program: Command, terminal: Terminal, end: Outcome): void {
  command(program, 'mix', 'this much batter and these eggs, for these tins together')
    .requiredOption('--recipe <id>', 'the recipe')
    .requiredOption('--tins <spec>', "the tins: '2 x round-6' or '2 x round 6in x 3in, 1 x square 8in x 3in'")
    .option('--flavour <ids>', 'one flavour or several, comma-separated, applied in order')
    .option('--height <length>', "finished height, like 60mm or 2 1/2in; the recipe's own when left out")
    .option('--egg-size <size>', "the eggs to hand, like 'UK large'; the kitchen's when left out")
    .option('--json', 'as JSON, for scripts', false)
    .action(async (options) => end(await (await import('./mix-command.ts')).runMix(options, terminal)));
}

function addPortions(program: Command, terminal: Terminal, end: Outcome): void {
  command(program, 'portions', 'which of the kitchen’s tins, stacked, serve so many')
    .requiredOption('--for <n>', 'portions wanted')
    .option('--size <id>', 'dessert or finger', 'dessert')
    .option(
      '--recipe <id>',
      'the recipe that batter and eggs are told for; the one most ordered when left out',
    )
    .option('--keep-top', 'the top tier is kept for another day and not counted', false)
    .option('--json', 'as JSON, for scripts', false)
    .action(async (options) =>
      end(await (await import('./portions-command.ts')).runPortions(options, terminal)),
    );
}

function addServe(program: Command, terminal: Terminal, end: Outcome): void {
  withCache(
    command(program, 'serve', 'build, show the site on this computer only, rebuild as files are saved'),
  )
    .option('--port <n>', 'port on 127.0.0.1', '8417')
    .action(async (options) => end(await (await import('./serve-command.ts')).runServe(options, terminal)));
}

function addNew(program: Command, terminal: Terminal, end: Outcome): void {
  program
    .command('new')
    .description('write a kitchen of your own, ready to build, from a few questions')
    .version(programVersion(), '-V, --version', 'print the version')
    .argument('<dir>', 'folder for its files: empty, or not there yet')
    .option('--yes', 'take the usual answers, ask nothing', false)
    .action(async (dir, options) =>
      end(await (await import('./new-command.ts')).runNew(dir, options, terminal)),
    );
}

function addBundle(program: Command, terminal: Terminal, end: Outcome): void {
  command(
    program,
    'bundle',
    'make the prints afresh, and put those that can be handed on into one zip with its imprint',
  )
    .option('--to <file>', 'the zip; named after kitchen and edition when left out')
    .option('--number <n>', 'number of the edition', '1')
    .option('--style <id>', 'in a further house style, by its id')
    .action(async (options) => end(await (await import('./bundle-command.ts')).runBundle(options, terminal)));
}
