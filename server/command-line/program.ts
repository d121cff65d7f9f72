/** The command line: its commands, options and help. */
import { Command, InvalidArgumentError, Option } from 'commander';
import { VERSION } from '../product.ts';
import { SHIPPED_REFERENCE } from './shippedReference.ts';
import { sizeProgram } from './sizeProgram.ts';

const FORMATS = ['text', 'json', 'sarif', 'html'] as const;

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
    .addOption(format(FORMATS))
    .option('--out <file>', 'write the report into this file')
    .addOption(reference())
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
    .addOption(format(['text', 'json']))
    .action(async (file, options) => {
      const { readCommand } = await import('./readCommand.ts');
      await readCommand(file, options);
      finish(0);
    });

  program.addCommand(sizeProgram(finish));

  program
    .command('import')
    .description('Turn a .docx, .html or .txt file into a manuscript in Markdown.')
    .argument('<file>', 'the file of a word processor, a web page or plain text')
    .option('--out <file>', 'write the manuscript into this file')
    .option('--force', 'write over a file that is there already', false)
    .addHelpText('after', IMPORT_NOTES)
    .action(async (file, options) => {
      const { importCommand } = await import('./importCommand.ts');
      await importCommand(file, options);
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

function format<Name extends (typeof FORMATS)[number]>(names: readonly Name[]): Option {
  return new Option('--format <format>', `how the report is written: ${listed(names)}`)
    .default('text')
    .argParser((value: string) => {
      const known = names.find((name) => name === value);
      if (known) return known;
      throw new InvalidArgumentError(`Choose ${listed(names)}.`);
    });
}

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

function reference(): Option {
  return new Option(
    '--reference <address>',
    'where the pages about the findings stand on the web, for links in a sarif report',
  )
    .default(SHIPPED_REFERENCE, 'those that came with the program')
    .argParser((value: string) => {
      if (!URL.canParse(value)) throw new InvalidArgumentError('Give a whole address, such as https://….');
      return value.endsWith('/') ? value : `${value}/`;
    });
}

const EXIT_STATUS = `
The exit status is 0 when no mistake and no warning was found, 1 when some were, and 2 when the program
could not run: then nothing was written.`;

const IMPORT_NOTES = `
Tables and fractions are kept. A fraction that was damaged is mended where only one can be meant; every repair,
every doubt and everything that is left out is told on standard error.`;
