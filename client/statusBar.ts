/** What the status bar says about the manuscript in front of the author. */
import type { CoverageInWords } from '../shared/messages.ts';

export interface StatusBarText {
  readonly text: string;
  readonly tooltip: string;
  /** For screen readers, which cannot see the sign. */
  readonly label: string;
  readonly warns: boolean;
}

export function statusBarText({ label, sentence, mistakes, signature }: CoverageInWords): StatusBarText {
  const warns = mistakes > 0;
  const said = signature === undefined ? sentence : `${sentence}\n${signature}`;
  return {
    text: `$(${warns ? 'warning' : 'check'}) ${label}`,
    tooltip: `${said}\nClick to proofread this manuscript again.`,
    label: `Measure Twice: ${said}`,
    warns,
  };
}
