/** One stated number against one figure: its account, the right text, and the finding if it is not right. */
import type { Pattern } from '../block/pattern.ts';
import { placeWords } from '../block/placeWords.ts';
import type { Ledger } from '../figures/ledger.ts';
import { CODES, type Code } from '../findings/codes.ts';
import type { Edit, Finding, Fix, Range, Related } from '../findings/finding.ts';
import type { NumberText } from '../quantity/notation.ts';
import { nounEdit } from '../quantity/nouns.ts';
import { readNumberAt } from '../quantity/read.ts';
import { assumed } from './assumed.ts';
import { editsTo, expectedText } from './expected.ts';
import { inputsOf } from './inputs.ts';
import { amountOf, judge, type Stated, type Verdict } from './judge.ts';
import { message, type Subject } from './messages.ts';
import { saidElsewhere } from './origins.ts';
import type { AccountKind } from './proof.ts';
import type { FoundSlip, SlipFinder } from './slips/slipFinder.ts';
import type { Staleness } from './stale.ts';

/** A number as it stands in the source. */
export interface Standing extends Stated {
  readonly text: string;
  /** Its parts in the source, in order; usually one. */
  readonly ranges: readonly [Range, ...Range[]];
  /** The text that the number was read from, where `written` has its offsets, and how it maps to the source. */
  readonly around:
    | { readonly text: string; toSource(start: number, end: number): readonly Range[] }
    | undefined;
}

export interface Assessment {
  readonly kind: Extract<AccountKind, 'verified' | 'wrong' | 'stale' | 'short' | 'generous'>;
  readonly expected: string | undefined;
  readonly finding: Finding | undefined;
  /** The slip that gives just this number, where only one does. */
  readonly slip?: FoundSlip | undefined;
}

/** What a number is assessed in. */
export interface Assessing {
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  readonly source: string;
  /** Numbers that show how the author writes, the nearest first; those of the text around if left out. */
  readonly habits?: () => readonly NumberText[];
  /** What was right before something in the block changed. */
  readonly staleness?: Staleness | undefined;
  /** Tells why a number is wrong; left out, nobody asks. */
  readonly slips?: SlipFinder | undefined;
}

const CODE: Readonly<Record<Exclude<Verdict, 'verified'>, Code>> = {
  wrong: 'wrong-figure',
  short: 'short-figure',
  generous: 'generous-figure',
  'other kind': 'wrong-unit',
};

export function assess(
  standing: Standing,
  subject: Subject,
  { pattern, ledger, source, habits, staleness, slips }: Assessing,
): Assessment {
  const { figure, value } = subject;
  const verdict = judge(standing, figure, value, pattern.house);
  if (verdict === 'verified') return { kind: 'verified', expected: standing.text, finding: undefined };
  const written = expectedText(
    standing,
    standing.around?.text ?? standing.text,
    figure,
    value,
    pattern.house,
    habits?.(),
  );
  const expected = written ?? ledger.show.figure(value, figure.kind);
  const amount = amountOf(standing, figure.kind, pattern.house);
  const fixes = verdict === 'other kind' ? [] : fixesFor(standing, written, subject, source, verdict);
  const change =
    verdict === 'wrong' || verdict === 'short' ? staleness?.changeOf(standing, subject) : undefined;
  const slip = change ? undefined : slips?.likeliest({ ...subject, stated: standing, right: written });
  const code = change ? 'stale-figure' : CODE[verdict];
  return {
    kind: change ? 'stale' : verdict === 'other kind' ? 'wrong' : verdict,
    expected,
    slip,
    finding: {
      code,
      severity: CODES[code].severity,
      message: message(
        verdict,
        subject,
        standing.text,
        expected,
        change ?? amount,
        saidElsewhere(figure.id, sizeOf(subject, pattern), pattern, ledger),
        assumed(figure.id, sizeOf(subject, pattern), pattern, ledger),
        slip?.clause,
      ),
      start: standing.ranges[0].start,
      end: standing.ranges.at(-1)?.end ?? standing.ranges[0].end,
      related: decidedBy(subject, pattern, ledger),
      fixes,
    },
  };
}

/** The number in the author's own style, with the noun behind it in the number that it then must have. */
function fixesFor(
  standing: Standing,
  text: string | undefined,
  subject: Subject,
  source: string,
  verdict: Verdict,
): Fix[] {
  const edits = text === undefined ? undefined : editsTo(text, source, standing.ranges);
  if (text === undefined || !edits || !readsBack(text, standing)) return [];
  return [
    {
      title: `Change to ${text}`,
      preferred: verdict !== 'generous',
      edits: [...edits, ...plural(standing, subject)],
    },
  ];
}

/** Whether the new text is read as a number of its own where it will stand: not so behind the `0.5` of `0.5¾"`. */
function readsBack(text: string, { around, written }: Standing): boolean {
  const [before, behind] = around
    ? [around.text.slice(0, written.start), around.text.slice(written.end)]
    : ['', ''];
  return readNumberAt(before + text + behind, before.length)?.end === before.length + text.length;
}

function plural({ around, written }: Standing, { figure, value }: Subject): Edit[] {
  const edit = around && figure.kind === 'count' ? nounEdit(around.text, written, value.shown) : undefined;
  const [place, ...more] = edit && around ? around.toSource(edit.start, edit.end) : [];
  return edit && place && more.length === 0 ? [{ ...place, text: edit.text }] : [];
}

/** The entries of the block that the figure follows from, as far as the author wrote them. */
function decidedBy(subject: Subject, pattern: Pattern, ledger: Ledger): Related[] {
  return inputsOf(subject.figure.id, sizeOf(subject, pattern), ledger).flatMap((path) => {
    const range = pattern.place(path);
    if (!range) return [];
    const origin = pattern.origin(path);
    const of = origin ? ` of ${origin.file.name}` : '';
    return [
      {
        ...range,
        message: `It follows from ${placeWords(path, pattern)}${of}.`,
        ...(origin ? { origin } : {}),
      },
    ];
  });
}

function sizeOf({ size }: Subject, { sizes }: Pattern): string {
  return size ?? sizes[0]?.name ?? '';
}
