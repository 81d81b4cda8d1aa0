// npm run bosswright: what can be done with joints and workbooks without a spreadsheet.
import { versionText } from '../core/version';
import type { Main } from '../cli/ended';
import { UserFault } from '../cli/user-fault';

interface Command {
  readonly does: string;
  /** Loaded when it is asked for: each brings what it needs. */
  readonly load: () => Promise<{ readonly main: Main; readonly USAGE: string }>;
}

const COMMANDS = new Map<string, Command>(
  Object.entries({
    table: { does: 'every row of inputs with its results', load: () => import('./table') },
    check: {
      does: 'lists the rows that do not pass, with reason and remedy; exits with 1 if one fails or is not checked',
      load: () => import('./check'),
    },
    card: { does: 'every value of one row with unit, formula, state and source', load: () => import('./card') },
    figure: { does: 'one row in section, as SVG, PNG or DXF', load: () => import('./figure') },
    parameters: { does: 'the lengths and angles of one row for a CAD program, as CSV or JSON', load: () => import('./parameters') },
    map: { does: 'one row over two of its inputs', load: () => import('./map') },
    sensitivity: { does: 'what moves one output of one row', load: () => import('./sensitivity') },
    simulate: { does: 'yield of one row, every size drawn at random within its limits', load: () => import('./simulate') },
    handover: { does: 'a copy of a workbook for those without the add-in', load: () => import('../handover/cli') },
    compare: { does: 'lists what came back changed', load: () => import('../handover/compare-cli') },
    verify: { does: 'whether a served folder is whole', load: () => import('../release/verify') },
  }),
);

const HELP = `bosswright COMMAND …

${[...COMMANDS].map(([name, { does }]) => `  ${name.padEnd(13)}${does}`).join('\n')}

bosswright COMMAND --help names the options; bosswright --version says which release it is.`;

const isHelp = (word: string): boolean => word === '--help' || word === '-h';

export const main: Main = async ([name = '--help', ...args], print) => {
  if (name === '--version') return print(versionText());
  const [about] = args;
  if (name === 'help' && about !== undefined) return main([about, '--help'], print);
  if (isHelp(name) || name === 'help') return print(HELP);
  const command = COMMANDS.get(name);
  if (command === undefined) throw new UserFault(`there is no command ${name}\n\n${HELP}`);
  const { main: run, USAGE } = await command.load();
  return args.some(isHelp) ? print(USAGE) : run(args, print);
};
