import remarkParse from 'remark-parse';
import remarkStringify from 'remark-stringify';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { type RemarkOptions, remarkPlugin } from '../../core/report/remark.ts';

const plugin = remarkPlugin('https://shipped.example/reference/');

async function messages(source: string, options: RemarkOptions = {}) {
  const file = await unified().use(remarkParse).use(plugin, options).use(remarkStringify).process(source);
  return file.messages;
}

const QUILT = '```measure\nfinished: 36" x 48"\nbinding: { strip: 2 1/4", grain: straight }\n```\n\n';

describe('The plugin of remark', () => {
  it('gives each message its place, its rule, its page, what stands there and what should', async () => {
    const [message, ...others] = await messages(`${QUILT}Bind 160" <!-- = finished.edge --> of edge.\n`);

    expect(others).toEqual([]);
    expect(message).toMatchObject({
      reason: expect.stringContaining('168", not 160"'),
      source: 'measure-twice',
      ruleId: 'wrong-figure',
      url: 'https://shipped.example/reference/findings/wrong-figure.md',
      actual: '160"',
      expected: ['168"'],
      line: 6,
      column: 6,
      fatal: false,
    });
    expect(message?.place).toMatchObject({ end: { line: 6, column: 10 } });
  });

  it('tells hints as information, and what nobody has checked to those who ask', async () => {
    const source = `${QUILT}Binding: 2 yd <!-- = binding.yardage -->. Cut sashes 14½" long.\n`;

    expect((await messages(source)).map(({ ruleId, fatal }) => [ruleId, fatal])).toEqual([
      ['generous-figure', undefined],
    ]);
    expect((await messages(source, { strict: true })).map(({ ruleId, fatal }) => [ruleId, fatal])).toEqual([
      ['generous-figure', undefined],
      ['unaccounted', false],
    ]);
  });

  it('links to pages elsewhere when it is told where', async () => {
    const [message] = await messages('```measure\nfinished: 36 x 48\n```\n', {
      reference: 'https://pages.example',
    });

    expect(message?.url).toBe('https://pages.example/findings/bad-value.md');
  });

  it('changes nothing', async () => {
    const source = 'Cut 5 strips.\n';
    const file = await unified().use(remarkParse).use(plugin).use(remarkStringify).process(source);

    expect(String(file)).toBe(source);
  });
});
