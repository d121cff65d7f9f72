import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../core/manuscript/manuscript.ts';
import { readAnnotated } from './annotated.ts';

const CORPUS = new URL('./corpus/', import.meta.url);
const names = readdirSync(CORPUS).filter((name) => name.endsWith('.md'));
const annotated = (name: string) => readAnnotated(readFileSync(new URL(name, CORPUS), 'utf8'));

describe('The reader of manuscripts', () => {
  it.each(names)(
    'finds in %s the numbers that are annotated, and no other that may measure something',
    (name) => {
      const { source, expected } = annotated(name);
      const { numbers } = readManuscript(source);
      const line = (start: number) => source.slice(0, start).split('\n').length;
      const found = numbers.map(({ ranges: [{ start }], text, notMeasurement }) => ({
        start,
        shown: `line ${line(start)}: ${text}`,
        notMeasurement,
      }));
      const starts = {
        found: found.map(({ start }) => start),
        annotated: expected.map(({ start }) => start),
      };
      const missing = expected.filter(({ start }) => !starts.found.includes(start));
      const more = found.filter(
        ({ start, notMeasurement }) => notMeasurement === undefined && !starts.annotated.includes(start),
      );
      expect(missing.map(({ start, text }) => `line ${line(start)}: ${text}`)).toEqual([]);
      expect(more.map(({ shown }) => shown)).toEqual([]);
    },
  );
});
