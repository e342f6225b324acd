import { readFileSync } from 'node:fs';
import { readArgs } from './args.js';
import { CannotDo } from './cannot-do.js';
import type { Command, ExitCode } from './command.js';
import { checkCommand } from './commands/check.js';
import { convertCommand } from './commands/convert.js';
import { decideCommand } from './commands/decide.js';
import { explainCommand } from './commands/explain.js';
import { learnCommand } from './commands/learn.js';
import { mapCommand } from './commands/map.js';
import { pageCommand } from './commands/page.js';
import { quoteCommand } from './commands/quote.js';
import { rankCommand } from './commands/rank.js';
import { routeCommand } from './commands/route.js';
import { seasonCommand } from './commands/season.js';
import { townCommand } from './commands/town.js';
import { waterCommand } from './commands/water.js';
import { commandHelp, wholeHelp } from './help.js';
import type { Io } from './io.js';
import { nearest } from './nearest.js';
import { lineWidth } from './page.js';
import { printable } from './print/printable.js';

const commands: Readonly<Record<string, Command>> = {
  check: checkCommand,
  rank: rankCommand,
  explain: explainCommand,
  learn: learnCommand,
  water: waterCommand,
  route: routeCommand,
  decide: decideCommand,
  quote: quoteCommand,
  season: seasonCommand,
  town: townCommand,
  convert: convertCommand,
  page: pageCommand,
  map: mapCommand,
};

function version(): string {
  const description = readFileSync(new URL('../package.json', import.meta.url), 'utf8');
  return (JSON.parse(description) as { version: string }).version;
}

function commandNamed(name: string): Command {
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command !== undefined) return command;
  const close = nearest(name, Object.keys(commands), 1)[0];
  const hint = close === undefined ? '' : ` Did you mean ${close}?`;
  throw new CannotDo(`there is no command '${name}'.${hint} There is: ${Object.keys(commands).join(', ')}`);
}

async function dispatch(argv: readonly string[], io: Io): Promise<ExitCode> {
  const [name, ...words] = argv;
  const width = lineWidth(io.isTTY, io);
  if (name === undefined) {
    io.stderr.write(wholeHelp(commands, width));
    return 2;
  }
  if (name === '--help' || name === '-h' || name === 'help') {
    const [asked] = words;
    io.stdout.write(
      asked === undefined ? wholeHelp(commands, width) : commandHelp(commandNamed(asked), width),
    );
    return 0;
  }
  if (name === '--version') {
    io.stdout.write(`${version()}\n`);
    return 0;
  }
  const command = commandNamed(name);
  const args = readArgs(words, command.options);
  if (args.flag('help')) {
    io.stdout.write(commandHelp(command, width));
    return 0;
  }
  return await command.run(args, io);
}

/** Runs the command line and gives the exit code. Whatever goes wrong is one plain line on stderr. */
export async function run(argv: readonly string[], io: Io): Promise<ExitCode> {
  try {
    return await dispatch(argv, io);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const fault = error instanceof CannotDo ? '' : 'something went wrong inside: ';
    io.stderr.write(`rootreach: ${fault}${printable(message)}\n`);
    return 2;
  }
}
