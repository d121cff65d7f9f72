/** A piece that is cut at one size and sewn at another. */
import type { Contradiction } from './contradiction.ts';
import type { Said, Text } from './said.ts';

const SEWN =
  /\b(?:trim\w*|finish\w*|unfinished|measur\w*|scraps?|pieced|larger|smaller|fold\w*|press\w* the|square up)\b/i;
const LEAD_IN =
  /^[*_]*from (?:the )?([\p{L}][\p{L}’'-]{2,20})(?: (?:print|fabric|solid|tonal|dot))?(?:,? cut)?:?[*_]*$/iu;

/**
 * "Sew a gold 3" square …", when every piece that is cut from the gold print has another size. Only squares that
 * stand right behind their colour count; a size that something is trimmed to, or measures, may be that of a unit.
 */
export function samePiece(text: Text): Contradiction[] {
  const cut = new Map<string, Said[]>();
  for (const said of text.phrases) {
    const colour = colourOf(said);
    if (colour && said.size.length > 0) cut.set(colour, [...(cut.get(colour) ?? []), said]);
  }
  const measured = text.phrases.filter(({ sentence, size }) => size.length > 0 && SEWN.test(sentence));
  return text.phrases.flatMap((said) => {
    const [a, b] = said.size;
    if (!a || colourOf(said) || SEWN.test(said.sentence)) return [];
    const colour = /([\p{L}’'-]+) $/u
      .exec(said.line.text.slice(0, said.phrase.size?.start ?? 0))?.[1]
      ?.toLowerCase();
    const pieces = cut.get(colour ?? '');
    const isSquare =
      !b &&
      /^["”″]?\s*squares?\b(?![- ](?:in|units?))/i.test(said.line.text.slice(said.phrase.size?.end ?? 0));
    if (!pieces || !isSquare || measured.some(({ size }) => size[0]?.value.equals(a.value))) return [];
    if (pieces.some(({ size }) => size.some(({ value }) => value.equals(a.value)))) return [];
    const squares = pieces.filter(({ own, size }) => size.length === 1 && /\bsquares?\b/i.test(own));
    const [one, ...more] = squares;
    const [side] = one?.size ?? [];
    if (!one || !side || more.length > 0 || side.value.sub(a.value).abs().compare(1) > 0) return [];
    return [
      {
        code: 'sizes-disagree' as const,
        message: `The ${colour} squares are cut ${side.text}, but here a ${colour} square of ${a.text} is sewn.`,
        at: a,
        against: [{ told: side, says: `The ${colour} squares are cut ${side.text} here.` }],
      },
    ];
  });
}

function colourOf({ line: { line } }: Said): string | undefined {
  const [near] = line.layers.filter(
    ({ where }) => where === 'lead-in' || where === 'list' || where === 'heading',
  );
  return LEAD_IN.exec(near?.text.trim() ?? '')?.[1]?.toLowerCase();
}
