/** Every command with its options, from the definitions that read the command line. */
import type { Command } from 'commander';
import { programFor } from '../main.ts';
import { asCode, markdownTable } from './markdown-table.ts';

function usage(command: Command): string {
  const places = command.registeredArguments.map((argument) => `<${argument.name()}>`);
  return ['tinwright', command.name(), ...places, '[options]'].join(' ');
}

function section(command: Command): string {
  const places = command.registeredArguments.map((argument) => [
    asCode(`<${argument.name()}>`),
    argument.description,
    argument.required ? 'yes' : '',
    '',
  ]);
  const options = command.options
    .filter(({ long }) => long !== '--version')
    .map(({ flags, description, mandatory, defaultValue }) => [
      asCode(flags),
      description,
      mandatory ? 'yes' : '',
      typeof defaultValue === 'string' ? asCode(defaultValue) : '',
    ]);
  const table = markdownTable(['option', 'what', 'needed', 'when left out'], [...places, ...options]);
  return `### ${command.name()}\n${command.description()}.\n\n\`${usage(command)}\`\n\n${table}`;
}

/** The part of the reference about commands, in Markdown. */
export function commandReference(): string {
  const silent = { say: () => undefined, tell: () => undefined, watched: false };
  const program = programFor(silent, () => undefined);
  return ['## Commands', ...program.commands.map(section)].join('\n\n');
}
