/** Text of the author or of a message as Markdown, in which it must not turn into emphasis, links or HTML. */
export function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>|~#&]/g, '\\$&').replace(/\s+/g, ' ');
}
