/** Markdown as a word processor's file, written by the general library `docx`, for tests that read it back. */
import {
  AlignmentType,
  Document,
  ExternalHyperlink,
  HeadingLevel,
  LevelFormat,
  Packer,
  Paragraph,
  type ParagraphChild,
  Table,
  TableCell,
  TableRow,
  TextRun,
} from 'docx';
import type { ListItem, PhrasingContent, Root, RootContent, Table as TableNode } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

const HEADINGS = Object.values(HeadingLevel).filter((level) => level.startsWith('Heading'));
const NUMBERS = 'numbers';

/** Comments and measure blocks have no place in such a file and are left out. */
export async function wordFileOf(markdown: string): Promise<Uint8Array> {
  const tree: Root = unified().use(remarkParse).use(remarkGfm).parse(markdown);
  const writer = new Writer();
  const children = tree.children.flatMap((node) => writer.block(node));
  const document = new Document({
    numbering: {
      config: [
        {
          reference: NUMBERS,
          levels: [0, 1, 2].map((level) => ({
            level,
            format: LevelFormat.DECIMAL,
            text: `%${level + 1}.`,
            alignment: AlignmentType.START,
          })),
        },
      ],
    },
    sections: [{ children }],
  });
  return new Uint8Array(await Packer.toBuffer(document));
}

class Writer {
  /** Each numbered list counts for itself. */
  #lists = 0;

  block(node: RootContent): (Paragraph | Table)[] {
    switch (node.type) {
      case 'heading': {
        const heading = HEADINGS[node.depth - 1];
        return [new Paragraph({ children: runs(node.children), ...(heading && { heading }) })];
      }
      case 'paragraph':
        return [new Paragraph({ children: runs(node.children) })];
      case 'list': {
        const instance = this.#lists++;
        return node.children.flatMap((item) => this.#item(item, node.ordered === true, instance, 0));
      }
      case 'blockquote':
        return node.children.flatMap((child) => this.block(child));
      case 'table':
        return [tableOf(node)];
      default:
        return [];
    }
  }

  #item({ children }: ListItem, isOrdered: boolean, instance: number, level: number): (Paragraph | Table)[] {
    return children.flatMap((child) => {
      if (child.type === 'list') {
        const inner = this.#lists++;
        return child.children.flatMap((item) => this.#item(item, child.ordered === true, inner, level + 1));
      }
      if (child.type !== 'paragraph') return this.block(child);
      const place = isOrdered
        ? { numbering: { reference: NUMBERS, level, instance } }
        : { bullet: { level } };
      return [new Paragraph({ children: runs(child.children), ...place })];
    });
  }
}

function tableOf({ children }: TableNode): Table {
  return new Table({
    rows: children.map(
      (row, index) =>
        new TableRow({
          tableHeader: index === 0,
          children: row.children.map(
            (cell) => new TableCell({ children: [new Paragraph({ children: runs(cell.children) })] }),
          ),
        }),
    ),
  });
}

interface Style {
  readonly bold?: true;
  readonly italics?: true;
}

function runs(nodes: readonly PhrasingContent[], style: Style = {}): ParagraphChild[] {
  return nodes.flatMap((node): ParagraphChild[] => {
    switch (node.type) {
      case 'text':
        return [new TextRun({ text: node.value.replace(/\n/g, ' '), ...style })];
      case 'inlineCode':
        return [new TextRun({ text: node.value, ...style })];
      case 'strong':
        return runs(node.children, { ...style, bold: true });
      case 'emphasis':
        return runs(node.children, { ...style, italics: true });
      case 'delete':
        return runs(node.children, style);
      case 'link':
        return [new ExternalHyperlink({ link: node.url, children: runs(node.children, style) })];
      case 'break':
        return [new TextRun({ break: 1, ...style })];
      default:
        return [];
    }
  });
}
