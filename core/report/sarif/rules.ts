/** Every kind of finding as a rule, with its help and its page. */
import type { ReportingDescriptor, Result } from 'sarif';
import type { CodePage } from '../../findings/codes.ts';
import type { Severity } from '../../findings/finding.ts';
import { FINDING_WORDS, findingAddress } from '../findingWords.ts';
import { fenced } from '../reference/markdown.ts';

export const LEVELS: Readonly<Record<Severity, Result.level>> = {
  error: 'error',
  warning: 'warning',
  hint: 'note',
};

const CODES = Object.keys(FINDING_WORDS);

/** Where the rule of a code stands among all rules. */
export function ruleIndex(code: string): number {
  return CODES.indexOf(code);
}

/** Code hosts sort by this word of their own, which knows no notes. */
const PROBLEM = { error: 'error', warning: 'warning', hint: 'recommendation' } as const;

export function rules(reference: string): ReportingDescriptor[] {
  return Object.entries(FINDING_WORDS).map(([code, words]) => {
    const { severity, title, meaning } = words;
    return {
      id: code,
      name: pascal(code),
      shortDescription: { text: `${title}.` },
      fullDescription: { text: withoutMarks(meaning), markdown: meaning },
      help: help(words),
      helpUri: findingAddress(code, reference),
      defaultConfiguration: { level: LEVELS[severity] },
      properties: { tags: ['quilting', 'arithmetic'], 'problem.severity': PROBLEM[severity] },
    };
  });
}

function help({ meaning, example, remedy }: CodePage): ReportingDescriptor['help'] {
  return {
    text: withoutMarks(`${meaning}\n\nWhat to do: ${remedy}`),
    markdown: `${meaning}\n\n**An example**\n\n${fenced('markdown', example)}\n\n**What to do**\n\n${remedy}`,
  };
}

/** The only marks of Markdown in the words about findings are those of code. */
function withoutMarks(text: string): string {
  return text.replaceAll('`', '');
}

/** `wrong-figure` as `WrongFigure`: how SARIF wants names of rules that a person reads. */
function pascal(code: string): string {
  return code.replace(/(?:^|-)([a-z])/g, (_, letter: string) => letter.toUpperCase());
}
