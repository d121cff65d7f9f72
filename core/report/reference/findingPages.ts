/** One page for every finding, with what the program really says about the example, and the list of all of them. */
import type { CodePage } from '../../findings/codes.ts';
import { applyEdits, type Fix, type Severity } from '../../findings/finding.ts';
import { FINDING_WORDS, findingPath } from '../findingWords.ts';
import { Lines } from '../lines.ts';
import { plain } from '../plainMarkdown.ts';
import { toReport } from '../proofread.ts';
import type { ReportedFinding } from '../unaccounted.ts';
import { proofreadExample } from './example.ts';
import { code, fenced, type Page, page, present, table } from './markdown.ts';
import { SEVERITIES } from './severities.ts';

export function findingPages(): Page[] {
  return [index(), ...Object.entries(FINDING_WORDS).map(([code, words]) => findingPage(code, words))];
}

function index(): Page {
  const severities = Object.keys(SEVERITIES) as Severity[];
  return page(
    'findings.md',
    '# What Measure Twice finds',
    'Every finding has a code, which stands beside its message in an editor. Each code has a page that tells what it ' +
      'means, shows an example, and says what to do.',
    ...severities.flatMap((severity) => {
      const rows = Object.entries(FINDING_WORDS).filter(([, words]) => words.severity === severity);
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

function findingPage(name: string, words: CodePage): Page {
  const { severity, title, meaning, example, before, beside, remedy } = words;
  const { findings } = toReport('', proofreadExample(words), true);
  return page(
    findingPath(name),
    `# ${title}`,
    `**${SEVERITIES[severity].name}** (${code(name)})`,
    meaning,
    '## An example',
    ...(before === undefined ? [] : ['At first:', fenced('markdown', before), 'Now:']),
    fenced('markdown', example),
    ...Object.entries(beside ?? {}).flatMap(([file, text]) => [
      `Beside it, in the file ${code(file)}:`,
      fenced('markdown', text),
    ]),
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
