import { describe, expect, it } from 'vitest';
import type { Range } from '../../core/findings/finding.ts';
import { readManuscript } from '../../core/manuscript/manuscript.ts';
import { judge } from '../../core/proof/judge.ts';
import { readNumberAt } from '../../core/quantity/read.ts';
import { ASIDE, CORPUS, OPEN } from '../support/manuscripts.ts';
import { patternOf } from '../support/pattern.ts';
import { annotatedIn, type Expected } from './annotated.ts';

const corpus = annotatedIn(CORPUS);
/** Manuscripts that must be right themselves, however well they are read. */
const unseen = [OPEN, ASIDE].flatMap(annotatedIn);

function lineAt(source: string, offset: number): number {
  return source.slice(0, offset).split('\n').length;
}

/** The text of the measure blocks, found without our reader of Markdown. */
function blocksOf(source: string): string[] {
  return [...source.matchAll(/^```measure\n(.*?)^```$/gms)].map(([, text = '']) => text);
}

/** Why a figure does not verify a number, in every size that it is annotated for; nothing when it does. */
function disagreements(
  { text, figures }: Expected,
  { pattern, ledger }: ReturnType<typeof patternOf>,
): string[] {
  const written = readNumberAt(text, 0);
  if (written?.end !== text.length) return ['it is not read as one number'];
  const stated = { value: written.value, unit: written.unit, written };
  return figures.flatMap(({ id, size }) => {
    const figure = ledger.figure(id);
    if (!figure) return [`there is no figure ${id}`];
    const sizes = size === undefined ? pattern.sizes.map(({ name }) => name) : [size];
    return sizes.flatMap((name) => {
      const value = figure.values.get(name);
      if (!value) return [`${id} has no value for “${name}”`];
      const verdict = judge(stated, figure, value, pattern.house);
      return verdict === 'verified'
        ? []
        : [`${verdict}: ${id} is ${ledger.show.figure(value, figure.kind)} ${name}`];
    });
  });
}

describe('The annotated manuscripts', () => {
  it.each([...corpus, ...unseen])(
    'have in $name a block without a finding, and each number agrees with the figures named',
    ({ source, expected }) => {
      const opened = patternOf(...blocksOf(source));
      expect([...opened.pattern.findings, ...opened.ledger.findings].map(({ message }) => message)).toEqual(
        [],
      );
      const problems = expected.flatMap((each) =>
        disagreements(each, opened).map((why) => `line ${lineAt(source, each.start)}: ${each.text}: ${why}`),
      );
      expect(problems).toEqual([]);
    },
  );

  it.each([...corpus, ...unseen])(
    'leave in $name no number that may measure something without a note',
    ({ source, expected }) => {
      const isNoted = ({ start, end }: Range) =>
        expected.some((each) => each.start < end && start < each.end);
      const silent = readManuscript(source).numbers.filter(
        ({ ranges, notMeasurement }) => !notMeasurement && !ranges.some(isNoted),
      );
      expect(silent.map(({ text, ranges }) => `line ${lineAt(source, ranges[0].start)}: ${text}`)).toEqual(
        [],
      );
    },
  );
});

describe('The reader of manuscripts', () => {
  it.each(corpus)(
    'tells in $name every number that measures something from those that measure nothing',
    ({ source, expected }) => {
      const shown = (start: number, text: string) => `line ${lineAt(source, start)}: ${text}`;
      const read = new Map(readManuscript(source).numbers.map((number) => [number.ranges[0].start, number]));
      const measuring = new Set(
        expected.filter(({ account }) => account !== 'not-measurement').map(({ start }) => start),
      );
      const missing = expected.filter(({ start }) => !read.has(start));
      const dropped = [...read].filter(
        ([start, { notMeasurement }]) => notMeasurement && measuring.has(start),
      );
      const more = [...read].filter(
        ([start, { notMeasurement }]) => !notMeasurement && !measuring.has(start),
      );
      expect({
        missing: missing.map(({ start, text }) => shown(start, text)),
        dropped: dropped.map(
          ([start, { text, notMeasurement }]) => `${shown(start, text)} (${notMeasurement})`,
        ),
        more: more.map(([start, { text }]) => shown(start, text)),
      }).toEqual({ missing: [], dropped: [], more: [] });
    },
  );
});
