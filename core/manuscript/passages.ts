/** The syntax tree -> passages, fences and comments, in reading order. */
import type { Code, FootnoteDefinition, Heading, Html, List, Root, RootContent, Table } from 'mdast';
import { readFence } from './fences.ts';
import { readHtml } from './html.ts';
import { type InlineText, placeOf, readInline, type Sheet } from './inline.ts';
import type { CellPlace, Comment, Context, Fence, Passage, ReadNumber, TagComment } from './manuscript.ts';
import { sourceRanges, TextMap } from './textMap.ts';

/** A passage before its numbers are read. */
export interface OpenPassage extends Passage {
  readonly tags: TagComment[];
  readonly numbers: ReadNumber[];
}

export interface Sections {
  readonly passages: readonly OpenPassage[];
  readonly fences: readonly Fence[];
  readonly comments: readonly Comment[];
}

export function readPassages(tree: Root, sheet: Sheet): Sections {
  const walk = new Walk(sheet);
  walk.blocks(tree.children, TOP);
  return walk;
}

/** The whole source as one passage, for what cannot be read as Markdown. */
export function readPlainText({ source, shift }: Sheet): Sections {
  const map = new TextMap();
  map.copy(source, shift, source.length);
  return { passages: [toPassage('paragraph', { map, comments: [] }, TOP, shift)], fences: [], comments: [] };
}

const TOP: Context = { headings: [], list: [], quoteDepth: 0, footnote: undefined, cell: undefined };

function toPassage(
  kind: Passage['kind'],
  { map, comments }: InlineText,
  context: Context,
  start: number,
): OpenPassage {
  const places = { offsets: map.offsets(start), ends: map.ends() };
  return {
    kind,
    text: map.text,
    ...places,
    context,
    tags: comments.filter(isTag),
    numbers: [],
    toSource: (from, to) => sourceRanges(places, from, to),
  };
}

type Block = RootContent;

class Walk implements Sections {
  readonly passages: OpenPassage[] = [];
  readonly fences: Fence[] = [];
  readonly comments: Comment[] = [];
  readonly #sheet: Sheet;

  constructor(sheet: Sheet) {
    this.#sheet = sheet;
  }

  /** Blocks side by side. A heading stands over those behind it, as far as its container reaches. */
  blocks(blocks: readonly Block[], around: Context): void {
    let context = around;
    let last: { passage: OpenPassage; block: Block } | undefined;
    for (const block of blocks) {
      let before: OpenPassage | undefined;
      switch (block.type) {
        case 'paragraph':
          before = this.#passage('paragraph', readInline(block.children, this.#sheet), context, block);
          break;
        case 'heading': {
          const headings = context.headings.filter(({ depth }) => depth < block.depth);
          before = this.#heading(block, { ...context, headings });
          context = { ...context, headings: [...headings, { depth: block.depth, text: before.text }] };
          break;
        }
        case 'html':
          before = this.#html(
            block,
            context,
            last && this.#touch(last.block, block) ? last.passage : undefined,
          );
          break;
        default:
          this.#container(block, context);
      }
      last = before && { passage: before, block };
    }
  }

  #container(block: Block, context: Context): void {
    switch (block.type) {
      case 'blockquote':
        this.blocks(block.children, { ...context, quoteDepth: context.quoteDepth + 1 });
        break;
      case 'list':
        this.#list(block, context);
        break;
      case 'footnoteDefinition':
        this.#footnote(block, context);
        break;
      case 'table':
        this.#table(block, context);
        break;
      case 'code':
        this.#code(block);
        break;
      default: // front matter, rules and link definitions show no text
    }
  }

  #list({ children, ordered, start }: List, context: Context): void {
    for (const [index, item] of children.entries()) {
      const number = ordered ? (start ?? 1) + index : undefined;
      this.blocks(item.children, { ...context, list: [...context.list, { number, index }] });
    }
  }

  #footnote({ children, identifier, label }: FootnoteDefinition, context: Context): void {
    this.blocks(children, { ...context, footnote: label ?? identifier });
  }

  #heading(block: Heading, context: Context): OpenPassage {
    return this.#passage('heading', readInline(block.children, this.#sheet), context, block);
  }

  #table(table: Table, context: Context): void {
    const rows = table.children.map((row) =>
      row.children.map((cell) => readInline(cell.children, this.#sheet)),
    );
    const heads = (rows[0] ?? []).map(({ map }) => map.text.trim());
    for (const [row, cells] of rows.entries()) {
      const rowHeader = cells[0]?.map.text.trim() ?? '';
      for (const [column, cell] of cells.entries()) {
        const place: CellPlace = { row, column, columnHeader: heads[column] ?? '', rowHeader };
        const node = table.children[row]?.children[column];
        this.#passage('cell', cell, { ...context, cell: place }, node ?? table);
      }
    }
  }

  #code(block: Code): void {
    if (block.lang === 'measure') this.fences.push(readFence(block, this.#sheet));
  }

  /** Whether the second block stands on the line right behind the first. */
  #touch(first: Block, second: Block): boolean {
    const between = this.#sheet.source.slice(
      placeOf(first, this.#sheet).end,
      placeOf(second, this.#sheet).start,
    );
    return (between.match(/\r\n|\n|\r/g)?.length ?? 0) <= 1;
  }

  /** The text inside the markup; comments in front of it belong to the passage right before. */
  #html(block: Html, context: Context, before: OpenPassage | undefined): OpenPassage | undefined {
    const { map, comments } = readHtml(block, this.#sheet);
    const leading = map.text.length - map.text.trimStart().length;
    const isLeading = ({ at = 0 }: Comment) => at <= leading;
    for (const comment of comments.filter(isLeading)) {
      const placed = { ...comment, at: before?.text.length };
      this.comments.push(placed);
      if (before && isTag(placed)) before.tags.push(placed);
    }
    if (map.text.trim() === '') return before;
    const inside = { map, comments: comments.filter((comment) => !isLeading(comment)) };
    return this.#passage('paragraph', inside, context, block);
  }

  #passage(
    kind: Passage['kind'],
    inline: InlineText,
    context: Context,
    node: Parameters<typeof placeOf>[0],
  ): OpenPassage {
    const passage = toPassage(kind, inline, context, placeOf(node, this.#sheet).start);
    this.passages.push(passage);
    this.comments.push(...inline.comments);
    return passage;
  }
}

function isTag(comment: Comment): comment is TagComment {
  return comment.at !== undefined && !('turn' in comment.meaning);
}
