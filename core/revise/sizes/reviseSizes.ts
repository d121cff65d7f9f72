/** Adds, drops, renames or reorders the sizes of a pattern: in its block, its tables, its lists and its sentences. */
import type { Ledger } from '../../figures/ledger.ts';
import { applyEdits, type Edit, type Range } from '../../findings/finding.ts';
import { GAP_MARKS, gapFor } from '../../findings/gap.ts';
import { expectedText } from '../../proof/expected.ts';
import type { Proof } from '../../proof/proof.ts';
import { proofread } from '../../proof/proofread.ts';
import { readNumberAt } from '../../quantity/read.ts';
import { type Read, type Refusal, type Revision, withoutOverlaps } from '../revision.ts';
import { reviseBlock, type StatedValue } from './block.ts';
import { planChange, type SizeChange, type SizeRequest } from './change.ts';
import { reviseColumns } from './columns.ts';
import { valuesByPath } from './entries.ts';
import { reviseNames } from './names.ts';
import { reviseNumbers } from './numbers.ts';
import { type Outline, outlineOf } from './outline.ts';
import { renameSize } from './rename.ts';
import { reviseSiblings } from './siblings.ts';
import { stretchesOf } from './stretches.ts';
import { RevisedText } from './text.ts';

/** @returns why the request cannot be met, in a sentence, or the edits that meet it */
export function reviseSizes(
  source: string,
  request: SizeRequest,
  read: Read = (text) => proofread({ source: text }),
): Revision | Refusal {
  const proof = read(source);
  const change = planChange(proof.pattern, request);
  if ('refusal' in change) return change;
  if (change.kind === 'rename') return renameSize(proof, change);
  const values = valuesByPath(proof.pattern, change.kind === 'add' ? change.values : {});
  if ('refusal' in values) return values;
  const block = (stated: StatedValue) => reviseBlock(source, proof.pattern, change, values, stated);
  // The figures of the block as it will be.
  const { ledger } = read(applyEdits(source, withoutOverlaps(block(() => undefined))));
  const text = new RevisedText(proof, change, ledger);
  const revised = reviseText(text, outlineOf(source));
  const edits = [...block(statedValue(proof, change, ledger)), ...revised.edits];
  return { edits: withoutOverlaps(edits), open: revised.open };
}

/** What a statement of the block must say for the new size. */
function statedValue({ pattern }: Proof, change: SizeChange, ledger: Ledger): StatedValue {
  return (id, like) => {
    const figure = ledger.figure(id);
    const value = change.kind === 'add' ? figure?.values.get(change.name) : undefined;
    const written = readNumberAt(like, 0);
    if (!figure || !value || !written) return undefined;
    const stated = { value: written.value, unit: written.unit, written };
    return expectedText(stated, like, figure, value, pattern.house);
  };
}

function reviseText(text: RevisedText, outline: Outline): Revision {
  const siblings = reviseSiblings(outline, text);
  const edits: Edit[] = [...siblings.edits];
  const open: Range[] = [];
  const { manuscript } = text.proof;
  const isTaken = (at: Range) => siblings.taken.some(({ start, end }) => start < at.end && end > at.start);
  for (const table of outline.tables) if (!isTaken(table)) edits.push(...reviseColumns(table, text));
  for (const stretch of stretchesOf(manuscript)) {
    const isInColumn = text.words.only(stretch.cell?.columnHeader ?? '') !== undefined;
    if (isInColumn || isTaken(stretch)) continue;
    const numbers = reviseNumbers(stretch, text);
    const members = numbers.series.flatMap((series) => series.members);
    const names = reviseNames(stretch, text, members);
    edits.push(...droppedGaps(stretch, members, text));
    edits.push(...numbers.edits, ...names.edits);
    open.push(...names.open);
  }
  const { change } = text;
  const message =
    change.kind === 'drop'
      ? `This sentence still speaks of the size “${change.name}”.`
      : 'This sentence speaks of each size; see whether it is still true.';
  return { edits, open: open.map((range) => ({ ...range, message })) };
}

/** The mark behind a sentence that never told of the dropped size; in a series it goes with its member. */
function droppedGaps(
  { start, end }: Range,
  members: readonly Range[],
  { change, source }: RevisedText,
): Edit[] {
  if (change.kind !== 'drop') return [];
  return [...source.slice(start, end).matchAll(GAP_MARKS)].flatMap(({ index, 0: mark }): Edit[] => {
    const at = start + index;
    if (mark !== gapFor(change.name) || members.some((member) => member.start <= at && at < member.end))
      return [];
    const end = at + mark.length;
    // `[crib: …]/5/7`, which looks like a date.
    if (source[end] === '/') return [{ start: at, end: end + 1, text: '' }];
    return [{ start: source[at - 1] === ' ' ? at - 1 : at, end, text: '' }];
  });
}
