/** One page for every finding, with what the program really says about the example, and the list of all of them. */
import { CODES, type CodePage } from '../../findings/codes.ts';
import { applyEdits, type Fix, type Severity } from '../../findings/finding.ts';
import { earlierState } from '../../proof/earlier/earlier.ts';
import type { Proof } from '../../proof/proof.ts';
import { proofread } from '../../proof/proofread.ts';
import { Lines } from '../lines.ts';
import { plain } from '../plainMarkdown.ts';
import { toReport } from '../proofread.ts';
import { type ReportedFinding, UNACCOUNTED } from '../unaccounted.ts';
import { code, fenced, type Page, page, present, table } from './markdown.ts';
import { SEVERITIES } from './severities.ts';

/** A number that no figure accounts for is a finding only where someone asks for it, so its page stands here. */
const UNACCOUNTED_PAGE: CodePage = {
  severity: 'warning',
  title: 'A number that nobody has checked',
  meaning:
    'The number measures something, but nothing in the measure block says what it should be, or the words around it do ' +
    'not say clearly enough what it is. It is shown only ' +
    'where you ask for it: on the command line with `--strict`, and in the editor with the setting ' +
    '`measureTwice.unaccounted`, where it is a hint.',
  example: '```measure\nfinished: 36" x 48"\n```\n\nCut two sashes 14½" long.',
  remedy:
    'In an editor, the quick fixes of the number offer the figures that its sentence may speak of; or write the tag ' +
    'yourself, `<!-- = figure -->`, or add the entry that fixes the number. If you have checked it, leave it, or put ' +
    '`<!-- measure skip -->` behind it, which leaves this one number alone. Between `<!-- measure off -->` and ' +
    '`<!-- measure on -->` no number is looked at.',
};

const PAGES: Readonly<Record<string, CodePage>> = { ...CODES, [UNACCOUNTED]: UNACCOUNTED_PAGE };

/** Where the page of a finding stands in the reference, by its code. */
export function findingPath(code: string): string {
  return `findings/${code}.md`;
}

export function findingPages(): Page[] {
  return [index(), ...Object.entries(PAGES).map(([code, words]) => findingPage(code, words))];
}

function index(): Page {
  const severities = Object.keys(SEVERITIES) as Severity[];
  return page(
    'findings.md',
    '# What Measure Twice finds',
    'Every finding has a code, which stands beside its message in an editor. Each code has a page that tells what it ' +
      'means, shows an example, and says what to do.',
    ...severities.flatMap((severity) => {
      const rows = Object.entries(PAGES).filter(([, words]) => words.severity === severity);
      const { several, meaning } = SEVERITIES[severity];
      return [
        `## ${several}`,
        meaning,
        table(
          ['Finding', 'Code'],
          rows.map(([name, { title }]) => [`[${plain(title)}](${findingPath(name)})`, code(name)]),
        ),
      ];
    }),
  );
}

/** What the program makes of an example, after it has seen its earlier text where there is one. */
export function proofExample({ example, before }: Pick<CodePage, 'example' | 'before'>): Proof {
  const earlier = before === undefined ? [] : [earlierState(proofread({ source: before }))];
  return proofread({ source: example, before: earlier });
}

function findingPage(name: string, words: CodePage): Page {
  const { severity, title, meaning, example, before, remedy } = words;
  const { findings } = toReport('', proofExample(words), true);
  return page(
    findingPath(name),
    `# ${title}`,
    `**${SEVERITIES[severity].name}** (${code(name)})`,
    meaning,
    '## An example',
    ...(before === undefined ? [] : ['At first:', fenced('markdown', before), 'Now:']),
    fenced('markdown', example),
    '## What the program says',
    ...findings.filter((one) => one.code === name).flatMap((finding) => spoken(finding, example)),
    '## What to do',
    remedy,
    '[All findings](../findings.md)',
  );
}

/** The message and its place, and what the fix makes of the line. */
function spoken(finding: ReportedFinding, source: string): string[] {
  const { start, end, message, fixes } = finding;
  const { line } = new Lines(source).position(start);
  const marked = source.slice(start, end).trim();
  const place =
    marked === '' || marked.includes('\n') ? `In line ${line}:` : `In line ${line}, at ${code(marked)}:`;
  return present([place, `> ${plain(message)}`, ...fixes.flatMap((fix) => offered(fix, source))]);
}

function offered({ title, edits }: Fix, source: string): string[] {
  const [first] = edits;
  if (!first) return [];
  const after = new Lines(applyEdits(source, edits));
  return [
    `It offers the fix **${plain(title)}**, and then the line reads:`,
    fenced('markdown', after.text(after.position(first.start).line)),
  ];
}
