/** The command line: its commands, options and help. */
import { Command, InvalidArgumentError, Option } from 'commander';
import { VERSION } from '../product.ts';

const FORMATS = ['text', 'json'] as const;

/** @param finish is told the exit status */
export function createProgram(finish: (status: number) => void): Command {
  const program = new Command('measure-twice')
    .description('Proofreads the arithmetic of quilting patterns written in Markdown.')
    .version(VERSION)
    .showHelpAfterError('(Add --help to see what there is.)')
    .exitOverride();

  program
    .command('proof')
    .description('Proofread manuscripts: recompute every figure and check every number.')
    .argument('[path...]', 'files, and folders whose Markdown files are all read', ['.'])
    .addOption(format())
    .option('--out <file>', 'write the report into this file')
    .option('--fix', 'correct every mistake that has one clear fix', false)
    .option('--strict', 'also complain about numbers that no figure accounts for', false)
    .option('--quiet', 'say nothing beyond mistakes and warnings', false)
    .addHelpText('after', EXIT_STATUS)
    .action(async (paths, options) => {
      const { proofCommand } = await import('./proofCommand.ts');
      finish(await proofCommand(paths, options));
    });

  program
    .command('read')
    .description('Show every number of a manuscript with what it was read as, and why.')
    .argument('<file>', 'the manuscript')
    .addOption(format())
    .action(async (file, options) => {
      const { readCommand } = await import('./readCommand.ts');
      await readCommand(file, options);
      finish(0);
    });

  program
    .command('serve')
    .description('Run the language server for an editor.')
    .option('--stdio', 'talk over standard input and output (the only way there is)', true)
    // Editors add it; the connection reads it.
    .addOption(new Option('--clientProcessId <id>').hideHelp())
    .action(async () => {
      const { serveCommand } = await import('./serveCommand.ts');
      serveCommand();
    });

  return program;
}

function format(): Option {
  return new Option('--format <format>', 'how the report is written: text or json')
    .default('text')
    .argParser((value: string) => {
      const known = FORMATS.find((name) => name === value);
      if (known) return known;
      if (value === 'sarif' || value === 'html') {
        throw new InvalidArgumentError(`This version cannot write ${value} yet; it writes text or json.`);
      }
      throw new InvalidArgumentError('Choose text or json.');
    });
}

const EXIT_STATUS = `
The exit status is 0 when no mistake and no warning was found, 1 when some were, and 2 when the program
could not run: then nothing was written.`;
