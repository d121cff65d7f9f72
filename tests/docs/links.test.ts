/** Every link of the README, of DEVELOPERS.md, of the changelog and of the reference leads somewhere. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Nodes, Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { committedPages } from './reference.ts';

const repository = join(import.meta.dirname, '../..');
/** The nodes of each document, which is read once: the links of many lead into the same few. */
const PARSED = new Map<string, readonly Nodes[]>();

const documents = [
  'README.md',
  'DEVELOPERS.md',
  'CHANGELOG.md',
  ...committedPages().map(({ path }) => `shared/reference/${path}`),
];

describe.each(documents)('%s', (document) => {
  const links = nodesOf(document).flatMap((node) => ('url' in node ? [node.url] : []));
  const within = links.filter((url) => !/^[a-z]+:/.test(url));

  it('links to nothing outside of the project', () => {
    expect(links).toEqual(within);
  });

  it('links to files, pictures and headings that are there', () => {
    const lost = within.filter((url) => !leadsSomewhere(document, url));
    expect(lost).toEqual([]);
  });
});

describe('The links', () => {
  it('are looked for in headings as hosts name them', () => {
    expect(leadsSomewhere('README.md', 'shared/reference/measure-block.md#layout-sashing')).toBe(true);
    expect(leadsSomewhere('README.md', 'shared/reference/measure-block.md#layout:-sashing')).toBe(false);
    expect(leadsSomewhere('README.md', 'shared/reference/blocks.md')).toBe(false);
    expect(leadsSomewhere('shared/reference/findings/wrong-unit.md', '../findings.md')).toBe(true);
  });
});

function leadsSomewhere(document: string, url: string): boolean {
  const [path, fragment] = url.split('#');
  const target = path ? join(dirname(document), path) : document;
  if (!existsSync(join(repository, target))) return false;
  if (fragment === undefined) return true;
  return statSync(join(repository, target)).isFile() && fragmentsOf(target).includes(fragment);
}

/** As GitHub and the preview of VS Code make them: lower case, without punctuation, a hyphen for each space. */
function fragmentsOf(document: string): string[] {
  return nodesOf(document).flatMap((node) =>
    node.type === 'heading'
      ? [
          textOf(node)
            .toLowerCase()
            .replace(/[^\p{L}\p{N}\p{M}_\- ]/gu, '')
            .replaceAll(' ', '-'),
        ]
      : [],
  );
}

function nodesOf(document: string): readonly Nodes[] {
  const known = PARSED.get(document);
  if (known) return known;
  const source = readFileSync(join(repository, document), 'utf8');
  const root: Root = unified().use(remarkParse).use(remarkGfm).parse(source);
  const nodes = below(root);
  PARSED.set(document, nodes);
  return nodes;
}

function below(node: Nodes): Nodes[] {
  return [node, ...('children' in node ? node.children.flatMap(below) : [])];
}

function textOf(node: Nodes): string {
  return below(node)
    .map((one) => ('value' in one ? one.value : ''))
    .join('');
}
