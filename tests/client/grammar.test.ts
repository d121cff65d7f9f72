/**
 * The highlighting of measure blocks, checked with the TextMate engine and the Markdown and YAML grammars that
 * editors use (npm package shiki, which ships both).
 */
import { createHighlighter, type LanguageRegistration } from 'shiki';
import { beforeAll, describe, expect, it } from 'vitest';
import grammar from '../../client/grammar/measure-block.tmLanguage.json' with { type: 'json' };
import manifest from '../../package.json' with { type: 'json' };

let scopesOf: (text: string, word: string) => string[];

beforeAll(async () => {
  const [contribution] = manifest.contributes.grammars;
  const injection = {
    ...(grammar as unknown as LanguageRegistration),
    name: 'measure-block',
    injectTo: contribution?.injectTo ?? [],
    embeddedLangs: ['yaml'],
  };
  const highlighter = await createHighlighter({
    themes: ['github-light'],
    langs: ['yaml', injection, 'markdown'],
  });
  scopesOf = (text, word) => {
    const tokens = highlighter.codeToTokensBase(text, {
      lang: 'markdown',
      theme: 'github-light',
      includeExplanation: 'scopeName',
    });
    const parts = tokens.map((line) => line.flatMap(({ explanation }) => explanation ?? []));
    const [line, part] =
      parts
        .flatMap((line) => line.map((part) => [line.map(({ content }) => content).join(''), part] as const))
        .find(
          ([whole, { content }]) => whole.includes(word) && content.trim() && word.startsWith(content.trim()),
        ) ?? [];
    if (!line || !part) throw new Error(`no token of “${word}”`);
    return part.scopes.map(({ scopeName }) => scopeName);
  };
});

const block = (fence: string, info = 'measure') =>
  `Before\n\n${fence}${info}\nfinished: circle 24"\n# a note\n${fence}\n\nafter: all`;

describe('A measure block', () => {
  it.each(['```', '````', '~~~'])('is YAML inside its fence %s', (fence) => {
    const text = block(fence);

    expect(scopesOf(text, 'finished')).toEqual(
      expect.arrayContaining(['meta.embedded.block.measure', 'entity.name.tag.yaml']),
    );
    expect(scopesOf(text, 'measure')).toContain('fenced_code.block.language.markdown');
  });

  it('ends with its fence', () => {
    expect(scopesOf(block('```'), 'after: all')).not.toContain('meta.embedded.block.measure');
  });

  it('is no other block', () => {
    const other = scopesOf(block('```', 'measurement'), 'finished: circle 24"');

    expect(other).not.toContain('meta.embedded.block.measure');
  });

  it('is found in a list too', () => {
    const text = '- Binding\n\n  ```measure\n  finished: circle 24"\n  ```\n\n  after: all\n';

    expect(scopesOf(text, 'finished')).toContain('entity.name.tag.yaml');
    expect(scopesOf(text, 'after: all')).not.toContain('meta.embedded.block.measure');
  });
});
