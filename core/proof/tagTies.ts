/** Ties by tag: the comment behind a number says which figure it states. */
import type { Pattern } from '../block/pattern.ts';
import { listed, suggestion } from '../block/words.ts';
import type { Figure } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';
import { CODES, type Code } from '../findings/codes.ts';
import type { Finding, Range } from '../findings/finding.ts';
import { GAP_MARKS } from '../findings/gap.ts';
import type { Manuscript, Passage, ReadNumber, TagComment } from '../manuscript/manuscript.ts';
import type { Tag } from '../manuscript/tags.ts';
import { isExcused, noSuchFigure } from './excuse.ts';
import type { Tie } from './proof.ts';
import { type SizeChoice, sizesOf } from './sizeOf.ts';

export interface TagTies {
  readonly ties: ReadonlyMap<ReadNumber, Tie>;
  readonly findings: readonly Finding[];
}

export function tieTags(manuscript: Manuscript, pattern: Pattern, ledger: Ledger): TagTies {
  const reading = new TagReading(pattern, ledger);
  for (const passage of manuscript.passages) reading.passage(passage);
  return reading;
}

export const TAGGED = 'a tag behind the number names it';

class TagReading implements TagTies {
  readonly ties = new Map<ReadNumber, Tie>();
  readonly findings: Finding[] = [];
  readonly #pattern: Pattern;
  readonly #ledger: Ledger;

  constructor(pattern: Pattern, ledger: Ledger) {
    this.#pattern = pattern;
    this.#ledger = ledger;
  }

  /** A tag speaks of the numbers before it, back to the tag before that one; it may stand before a number's unit. */
  passage(passage: Passage): void {
    let from = 0;
    for (const tag of passage.tags) {
      const before = passage.numbers.filter(
        ({ written }) => written.start >= from && numeralEnd(written) <= tag.at,
      );
      if ('problem' in tag.meaning) this.#report('bad-tag', tag, tag.meaning.problem);
      else if ('skip' in tag.meaning) this.#skip(tag, before);
      // A list in which a number is still missing is told at the gap.
      else if (passage.text.slice(from, tag.at).search(GAP_MARKS) < 0)
        this.#tag(tag, tag.meaning, passage, before);
      from = tag.at;
    }
  }

  #skip(comment: TagComment, before: readonly ReadNumber[]): void {
    if (before.length === 0) this.#report('stray-tag', comment, 'No number stands before this tag.');
  }

  #tag(comment: TagComment, tag: Tag, passage: Passage, before: readonly ReadNumber[]): void {
    const numbers = before.filter(({ notMeasurement }) => notMeasurement === undefined);
    const candidates = numbers.length > 0 ? numbers : before;
    if (candidates.length < tag.figures.length) {
      const message =
        tag.figures.length === 1
          ? 'No number stands before this tag.'
          : 'Fewer numbers stand before this tag than it names.';
      this.#report('stray-tag', comment, message);
      return;
    }
    const figures = tag.figures.map((id, index) => this.#figure(id, tag.idRanges[index] ?? comment));
    if (tag.size !== undefined && !this.#pattern.sizes.some(({ name }) => name === tag.size)) {
      if (this.#pattern.broken.at(['sizes'])) return;
      this.#report('unknown-size', tag.sizeRange ?? comment, this.#noSuchSize(tag.size));
      return;
    }
    for (const [index, figure] of figures.entries()) {
      if (!figure) continue;
      const chosen = sizesOf(figure, tag, index, candidates, passage, this.#pattern);
      if ('missing' in chosen) {
        this.#sizeNeeded(comment, figure);
        return;
      }
      for (const choice of chosen.choices) this.#tie(figure, choice);
    }
  }

  #tie(figure: Figure, { number, size, evidence }: SizeChoice): void {
    const value = figure.values.get(
      size ?? this.#pattern.sizes.find(({ name }) => figure.values.has(name))?.name ?? '',
    );
    if (value) this.ties.set(number, { figure, size, value, evidence: [TAGGED, ...evidence] });
  }

  #figure(id: string, range: Range): Figure | undefined {
    const figure = this.#ledger.figure(id);
    if (!figure && !isExcused(id, this.#pattern, this.#ledger))
      this.#report('unknown-figure', range, noSuchFigure(id, this.#pattern, this.#ledger));
    return figure;
  }

  #noSuchSize(size: string): string {
    const names = this.#pattern.sizes.map(({ name }) => name);
    if (names[0] === '') return 'The pattern has one size only, so the tag needs none.';
    return `The pattern has no size “${size}”.${suggestion(size, names) || ` Its sizes are ${listed(names, 'and')}.`}`;
  }

  #sizeNeeded(comment: TagComment, { title }: Figure): void {
    const [first] = this.#pattern.sizes;
    const message = `${title} differs between the sizes; say which one is meant, for example “@ ${first?.name}”.`;
    const insert = comment.end - '-->'.length;
    const fixes = this.#pattern.sizes.map(({ name }) => ({
      title: `This is the size “${name}”`,
      preferred: false,
      edits: [{ start: insert, end: insert, text: `@ ${name} ` }],
    }));
    this.findings.push(finding('size-needed', comment, message, fixes));
  }

  #report(code: Code, range: Range, message: string): void {
    this.findings.push(finding(code, range, message));
  }
}

function numeralEnd({ end, notation: { gap, mark } }: ReadNumber['written']): number {
  return end - gap.length - mark.length;
}

function finding(code: Code, { start, end }: Range, message: string, fixes: Finding['fixes'] = []): Finding {
  return { code, severity: CODES[code].severity, message, start, end, related: [], fixes };
}
