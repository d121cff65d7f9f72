/** `measure-twice size`: its commands, options and help. */
import { Command, InvalidArgumentError } from 'commander';
import type { SizeRequest } from '../../core/revise/sizes/change.ts';

interface Options {
  readonly after?: string;
  readonly first?: boolean;
  readonly set?: Readonly<Record<string, string>>;
  readonly dryRun: boolean;
}

/** @param finish is told the exit status */
export function sizeProgram(finish: (status: number) => void): Command {
  const size = new Command('size').description(
    'Add, drop, rename or reorder the sizes of a pattern: in its block, its tables, its lists and its sentences.',
  );
  const command = (usage: string, description: string) =>
    size
      .command(usage)
      .description(description)
      .argument('<file>', 'the manuscript')
      .option('--dry-run', 'show what would change, and write nothing', false);
  const run = async (file: string, request: SizeRequest, { dryRun }: Options) => {
    const { sizeCommand } = await import('./sizeCommand.ts');
    finish(await sizeCommand(file, request, dryRun));
  };

  command('add', 'Add a size: its numbers are computed, and what cannot be computed is marked.')
    .argument('<name>', 'the name of the new size')
    .option('--after <size>', 'the size that it follows; left out, the last one')
    .option('--first', 'put it before all others')
    .option(
      '--set <entry=value>',
      'a value of the block for the new size, as in --set "layout=9 x 11"',
      collect,
    )
    .addHelpText('after', LEFT)
    .action((file: string, name: string, options: Options) => {
      const after = options.first ? null : options.after;
      return run(file, { kind: 'add', name, after, values: options.set }, options);
    });
  command('drop', 'Drop a size with its columns, its numbers and its sentences.')
    .argument('<name>', 'the size')
    .action((file: string, name: string, options: Options) => run(file, { kind: 'drop', name }, options));
  command('rename', 'Give a size another name, wherever it stands.')
    .argument('<name>', 'the size')
    .argument('<new name>', 'its new name')
    .action((file: string, name: string, to: string, options: Options) =>
      run(file, { kind: 'rename', name, to }, options),
    );
  command('order', 'Put the sizes in another order, in lists and tables too.')
    .argument('<names...>', 'all sizes, in their new order')
    .action((file: string, names: string[], options: Options) =>
      run(file, { kind: 'order', names }, options),
    );
  return size;
}

function collect(text: string, before: Readonly<Record<string, string>> = {}): Record<string, string> {
  const [, entry, value] = /^([^=]+)=(.+)$/s.exec(text) ?? [];
  if (entry === undefined || value === undefined)
    throw new InvalidArgumentError('Write the entry, an equals sign and the value: layout=9 x 11.');
  return { ...before, [entry.trim()]: value.trim() };
}

const LEFT = `
The exit status is 0 when the new size is complete, 1 when something is left to write, and 2 when nothing could
be done: then nothing was written.`;
