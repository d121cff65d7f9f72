/** Every figure that the manuscript states, with its value in each size and the way to it. */
import type { Element } from 'hast';
import { h } from 'hastscript';
import type { Proof, Tie } from '../../proof/proof.ts';
import { type Explanation, explain, explainNumber } from '../explanation.ts';
import { groupBy } from '../groupBy.ts';
import { Lines } from '../lines.ts';
import { placeOf } from '../place.ts';
import { table } from './table.ts';

interface Stated {
  readonly figure: string;
  readonly text: string;
  readonly line: number;
  readonly explanation: Explanation;
}

/** @returns `undefined` where no number states a figure */
export function workings(proof: Proof): Element[] | undefined {
  const figures = [...groupBy(statedIn(proof), ({ figure }) => figure).values()];
  return figures.length === 0 ? undefined : figures.map(working);
}

/** In sentences and in the block, in the order of their places. */
function statedIn(proof: Proof): Stated[] {
  const { source } = proof.manuscript;
  const lines = new Lines(source);
  const stated = (tie: Tie, text: string, start: number, explanation: Explanation | undefined) =>
    explanation ? [{ figure: tie.figure.id, text, line: lines.position(start).line, explanation }] : [];
  return [
    ...proof.accounts.flatMap((account) => {
      const { tie, number } = account;
      return tie ? stated(tie, number.text, placeOf(number).start, explainNumber(proof, account)) : [];
    }),
    ...proof.statements.flatMap(({ tie, start, end }) =>
      stated(tie, source.slice(start, end), start, explain(proof, start)),
    ),
  ].sort((a, b) => a.line - b.line);
}

function working(stated: readonly [Stated, ...Stated[]]): Element {
  const [{ explanation }] = stated;
  const { sizes, rows } = explanation.table;
  const least = rows[0]?.atLeast ? 'at least ' : '';
  const valueAt = (index: number) => `${least}${rows[0]?.values[index] ?? '–'}`;
  const title = explanation.title;
  if (sizes.length < 2) {
    return h('div.figure', [
      h('h4', `${title}: ${valueAt(0)}`),
      h('p.stated', `Stated as ${statedAs(stated)}.`),
      ...stepList(explanation.working),
    ]);
  }
  const bySize = groupBy(stated, ({ explanation }) => explanation.workingOf);
  const lines = sizes.flatMap((size, index) => {
    const here = bySize.get(size);
    return here ? [[size, valueAt(index), statedAs(here), stepList(here[0].explanation.working)]] : [];
  });
  return h('div.figure', [h('h4', title), table(['Size', 'Figure', 'Stated as', 'Working'], lines)]);
}

function stepList(steps: readonly string[]): Element[] {
  if (steps.length < 2) return steps.map((step) => h('p', step));
  return [
    h(
      'ol.steps',
      steps.map((step) => h('li', step)),
    ),
  ];
}

/** `7 in lines 12, 40; 9 in line 14` */
function statedAs(stated: readonly Stated[]): string {
  const texts = [...groupBy(stated, ({ text }) => text.replace(/\s+/g, ' '))];
  return texts
    .map(([text, places]) => {
      const lines = [...new Set(places.map(({ line }) => line))];
      return `${text} in ${lines.length === 1 ? 'line' : 'lines'} ${lines.join(', ')}`;
    })
    .join('; ');
}
