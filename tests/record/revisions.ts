/** Revisions of manuscripts that tests know everything about: which numbers were changed, which came and which went. */
import fc from 'fast-check';
import { applyEdits, type Edit } from '../../core/findings/finding.ts';
import { readManuscript } from '../../core/manuscript/manuscript.ts';

export interface Revision {
  readonly before: string;
  readonly after: string;
  /** `7 → 9`, sorted. */
  readonly changed: readonly string[];
  readonly added: readonly string[];
  readonly removed: readonly string[];
}

/** Paragraphs that no pattern holds, each with the numbers that measure something in it. */
const NEW_PARAGRAPHS: readonly (readonly [text: string, numbers: readonly string[]])[] = [
  ['Thank you for choosing one of our patterns, and may it keep someone warm.', []],
  ['Starch the yardage lightly, let it dry flat overnight, and square up its ragged end by 3".', ['3"']],
  ['Testers recommend hanging the finished piece from a wooden batten 41½" in length.', ['41½"']],
];

const seeds = fc.record({
  numbers: fc.array(
    fc.record({ at: fc.double({ min: 0, max: 0.999, noNaN: true }), more: fc.integer({ min: 1, max: 9 }) }),
    {
      maxLength: 6,
    },
  ),
  moved: fc.option(
    fc.tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), fc.double({ min: 0, max: 0.999, noNaN: true })),
  ),
  deleted: fc.option(fc.double({ min: 0, max: 0.999, noNaN: true })),
  inserted: fc.option(
    fc.tuple(
      fc.integer({ min: 0, max: NEW_PARAGRAPHS.length - 1 }),
      fc.double({ min: 0, max: 0.999, noNaN: true }),
    ),
  ),
});

/** Numbers changed in place, a paragraph moved, one deleted and one added. */
export function revisions(manuscripts: readonly string[]): fc.Arbitrary<Revision> {
  return fc.tuple(fc.constantFrom(...manuscripts), seeds).map(([before, seed]) => {
    const numbers = measured(before).filter(({ text }) => /^\d/.test(text));
    const chosen = new Map(
      seed.numbers.map(({ at, more }) => [numbers[Math.floor(at * numbers.length)], more]),
    );
    const edits = [...chosen].flatMap(([number, more]): Edit[] => {
      if (!number) return [];
      // The whole part grows; `7½"` becomes `9½"`.
      const whole = /^\d+/.exec(number.text)?.[0] ?? '';
      const { start } = number.ranges[0];
      return [{ start, end: start + whole.length, text: String(Number(whole) + more) }];
    });
    const blocks = blocksOf(applyEdits(before, edits));
    const old = blocksOf(before);
    const movable = blocks.flatMap((block, index) => (isMovable(block) ? [index] : []));
    const pick = (at: number) => movable[Math.floor(at * movable.length)] ?? 0;
    const deleted = seed.deleted === null ? undefined : pick(seed.deleted);
    const order = blocks.map((_, index) => index).filter((index) => index !== deleted);
    if (seed.moved) {
      const [from, to] = seed.moved.map(pick) as [number, number];
      const [place, target] = [order.indexOf(from), order.indexOf(to)];
      if (place >= 0 && target >= 0) order.splice(target, 0, ...order.splice(place, 1));
    }
    const texts = order.map((index) => blocks[index] ?? '');
    const [inserted] = seed.inserted ? [NEW_PARAGRAPHS[seed.inserted[0]]] : [];
    if (seed.inserted && inserted)
      // Nothing stands before front matter: it would be text then.
      texts.splice(Math.max(1, order.indexOf(pick(seed.inserted[1])) + 1), 0, inserted[0]);
    const within = (index: number, offset: number) => {
      const start = old.slice(0, index).join('\n\n').length + (index > 0 ? 2 : 0);
      return start <= offset && offset < start + (old[index] ?? '').length;
    };
    const isGone = (offset: number) => deleted !== undefined && within(deleted, offset);
    return {
      before,
      after: texts.join('\n\n'),
      changed: [...chosen]
        .flatMap(([number, more]) => {
          if (!number || isGone(number.ranges[0].start)) return [];
          const whole = /^\d+/.exec(number.text)?.[0] ?? '';
          return [`${number.text} → ${Number(whole) + more}${number.text.slice(whole.length)}`];
        })
        .sort(),
      added: [...(inserted?.[1] ?? [])].sort(),
      removed: measured(before)
        .filter(({ ranges }) => isGone(ranges[0].start))
        .map(({ text }) => text)
        .sort(),
    };
  });
}

function measured(source: string) {
  return readManuscript(source).numbers.filter(
    ({ notMeasurement, ranges }) => notMeasurement === undefined && ranges.length === 1,
  );
}

/** What blank lines part, but not those inside the measure block. */
function blocksOf(source: string): string[] {
  const blocks: string[] = [];
  for (const block of source.split('\n\n')) {
    const last = blocks.at(-1);
    if (last !== undefined && (last.match(/^```/gm)?.length ?? 0) % 2 === 1)
      blocks[blocks.length - 1] = `${last}\n\n${block}`;
    else blocks.push(block);
  }
  return blocks;
}

/** A paragraph or a list: headings, tables and the block itself hold the pattern together. */
function isMovable(block: string): boolean {
  return !/^(?:#|```|\||<!--)/m.test(block) && block.trim() !== '';
}
