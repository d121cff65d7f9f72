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
    .command('draft')
    .description('Draft a measure block from what a manuscript without one says.')
    .argument('<file>', 'the manuscript')
    .option('--write', 'write the block into the manuscript, behind its title', false)
    .addHelpText('after', DRAFT_STATUS)
    .action(async (file, options) => {
      const { draftCommand } = await import('./draftCommand.ts');
      finish(await draftCommand(file, options));
    });

  program
    .command('units')
    .description('Add to every length the same length in the other system of units, or take these away.')
    .argument('<path>', 'a manuscript, or a folder with several')
    .addOption(new Option('--add <system>', 'what to add').choices(['metric', 'inch']))
    .option('--remove', 'take the equivalents away again', false)
    .option('--dry-run', 'show what would change, and write nothing', false)
    .addHelpText('after', UNITS_NOTES)
    .action(async (path, options) => {
      const { unitsCommand } = await import('./unitsCommand.ts');
      finish(await unitsCommand(path, options));
    });

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
    .command('sign-off')
    .description('Put a name to a manuscript as it stands, in a record beside it.')
    .argument('<file>', 'the manuscript')
    .requiredOption('--by <name>', 'who signs it off', signer)
    .option('--as-it-stands', 'sign it off with the mistakes and warnings that it has', false)
    .addHelpText('after', SIGN_OFF_STATUS)
    .action(async (file, options) => {
      const { signOffCommand } = await import('./signOffCommand.ts');
      finish(await signOffCommand(file, options));
    });

  program
    .command('corrections')
    .description(
      'List for customers which numbers have changed since the last sign-off, or since a revision.',
    )
    .argument('<path>', 'a manuscript, or a folder with several')
    .option('--since <revision>', 'compare with a revision in git, such as a tag, instead')
    .addOption(format(['markdown', 'html']))
    .option('--out <file>', 'write the list into this file')
    .action(async (path, options) => {
      const { correctionsCommand } = await import('./correctionsCommand.ts');
      await correctionsCommand(path, options);
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

/** The first of the names is taken where none is given. */
function format<Name extends string>(names: readonly [Name, ...Name[]]): Option {
  return new Option('--format <format>', `how it is written: ${listed(names)}`)
    .default(names[0])
    .argParser((value: string) => {
      const known = names.find((name) => name === value);
      if (known) return known;
      throw new InvalidArgumentError(`Choose ${listed(names)}.`);
    });
}

/** A name of one line. */
function signer(value: string): string {
  const name = value.replace(/\s+/g, ' ').trim();
  if (name === '') throw new InvalidArgumentError('Say who signs it off.');
  return name;
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

const DRAFT_STATUS = `
What the manuscript leaves open, or tells in two ways, is told on standard error. The exit status is 0 when nothing is
left open, 1 when something is, and 2 when the program could not run: then nothing was written.`;

const UNITS_NOTES = `
Lengths are rounded to the step that the house names under “convert to”, or else to half centimetres and eighths of
an inch. Each place that is left to you is told with its reason.

The exit status is 0 when every length has its equivalent, 1 when some are left to write, and 2 when nothing could be
done: then nothing was written.`;

const IMPORT_NOTES = `
Tables and fractions are kept. A fraction that was damaged is mended where only one can be meant; every repair,
every doubt and everything that is left out is told on standard error.`;

const SIGN_OFF_STATUS = `
The exit status is 0 when it was signed off, 1 when it was not because of its mistakes or warnings, and 2 when the
program could not run: then nothing was written.`;
