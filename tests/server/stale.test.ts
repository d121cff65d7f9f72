import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { startInProcess } from './inProcess.ts';

const uri = 'file:///patterns/wall.md';
const text = (strip: string, printed: string) =>
  `\`\`\`measure\nfinished: 36" x 48"\nbinding: { strip: ${strip} }\n\`\`\`\n\nCut strips ${printed} <!-- = binding.strip --> wide.\n`;

/** An editor in which a manuscript is opened and then changed: the codes and messages after the last text. */
async function typed(opened: string, ...changes: string[]) {
  const client = startInProcess({ proofread });
  await client.initialize();
  await client.open(uri, opened);
  await client.pushed(uri, 1);
  for (const [index, change] of changes.entries()) {
    await client.change(uri, { text: change });
    await client.pushed(uri, index + 2);
  }
  const diagnostics = await client.pushed(uri, changes.length + 1);
  return diagnostics.map(({ code, message }) => [code, message]);
}

const UNTIL = (from: string, to: string, right: string, printed: string) =>
  `The width of the binding strip is ${right}, not ${printed}: it was right until “strip” of the binding changed from ${from} to ${to}.`;

describe('A manuscript that changes while it is open', () => {
  it('has stale numbers where they were right when it was opened', async () => {
    expect(await typed(text('2 1/4"', '2¼"'), text('2 1/2"', '2¼"'))).toEqual([
      ['stale-figure', UNTIL('2 1/4"', '2 1/2"', '2½"', '2¼"')],
    ]);
  });

  it('has them still after more was changed, and none when the change is taken back', async () => {
    const [opened, between, last] = ['2 1/4"', '2 1/2"', '3"'].map((strip) => text(strip, '2¼"')) as [
      string,
      string,
      string,
    ];
    expect(await typed(opened, between, last)).toEqual([
      ['stale-figure', UNTIL('2 1/4"', '3"', '3"', '2¼"')],
    ]);
    expect(await typed(opened, between, opened)).toEqual([]);
  });

  it('tells the later change where the earlier one was carried through', async () => {
    const mended = [text('2 1/4"', '2¼"'), text('2 1/2"', '2¼"'), text('2 1/2"', '2½"')] as const;
    expect(await typed(...mended)).toEqual([]);
    expect(await typed(...mended, text('3"', '2½"'))).toEqual([
      ['stale-figure', UNTIL('2 1/2"', '3"', '3"', '2½"')],
    ]);
  });

  it('has wrong numbers where they never were right, and forgets what was when it is closed', async () => {
    expect(await typed(text('2 1/4"', '2"'), text('2 1/2"', '2"'))).toEqual([
      ['wrong-figure', expect.stringContaining('not 2"')],
    ]);

    const client = startInProcess({ proofread });
    await client.initialize();
    await client.open(uri, text('2 1/4"', '2¼"'));
    await client.pushed(uri, 1);
    await client.close(uri);
    await client.pushed(uri, undefined);
    client.published.length = 0;
    await client.open(uri, text('2 1/2"', '2¼"'));
    expect((await client.pushed(uri, 1)).map(({ code }) => code)).toEqual(['wrong-figure']);
  });
});
