/** Raw HTML between paragraphs -> the text that a browser shows, and the comments inside. */
import type { Html } from 'mdast';
import { commentIn, type InlineText, placeOf, type Sheet } from './inline.ts';
import { addRaw, OBJECT } from './lines.ts';
import type { Comment } from './manuscript.ts';
import { TextMap } from './textMap.ts';

/** Elements that begin a line of their own. */
const LINES =
  /^<\/?(?:address|br|blockquote|dd|details|div|dl|dt|figcaption|figure|h[1-6]|hr|li|ol|p|pre|section|summary|table|td|th|tr|ul)\b/;
/** Elements whose content nobody reads. */
const HIDDEN = /^<(script|style|textarea|template)\b/;

export function readHtml(node: Html, sheet: Sheet): InlineText {
  const { start, end } = placeOf(node, sheet);
  const raw = new TextMap();
  addRaw(raw, sheet.source, start, end, node.value, '\n');
  return readMarkup(raw);
}

function readMarkup(raw: TextMap): InlineText {
  const map = new TextMap();
  const comments: Comment[] = [];
  const markup = raw.text;
  const lower = markup.toLowerCase();
  for (let at = 0; at < markup.length; ) {
    const open = nextTag(markup, at);
    map.addEncoded(markup, at, open, false, raw);
    const close = endOfTag(markup, open);
    const tag = lower.slice(open, Math.min(close, open + LONGEST_NAME));
    const { start, end } = raw.range(open, close);
    if (tag.startsWith('<!--')) {
      const comment = commentIn(raw, open, close, map.length);
      if (comment) comments.push(comment);
    } else if (LINES.test(tag)) map.add('\n', start, end);
    else if (tag.startsWith('<img')) map.add(OBJECT, start, end);
    at = pastHidden(lower, tag, close);
  }
  return { map, comments };
}

const TAG = /<[A-Za-z/!?]/g;
const LONGEST_NAME = 12;

function nextTag(markup: string, from: number): number {
  TAG.lastIndex = from;
  return TAG.exec(markup)?.index ?? markup.length;
}

/** Behind the comment or tag that opens here. */
function endOfTag(markup: string, open: number): number {
  const closing = markup.startsWith('<!--', open) ? '-->' : '>';
  const close = markup.indexOf(closing, open);
  return close < 0 ? markup.length : close + closing.length;
}

function pastHidden(lower: string, tag: string, close: number): number {
  const name = HIDDEN.exec(tag)?.[1];
  const end = name === undefined ? close : lower.indexOf(`</${name}`, close);
  return end < 0 ? lower.length : end;
}
