/** What a report is written from: manuscripts, each with its name, its proof and the findings to show. */
import type { Proof } from '../proof/proof.ts';
import type { Covering } from '../record/covers.ts';
import { type ReportedFinding, unaccountedFindings } from './unaccounted.ts';

export interface Proofread {
  /** As the reader knows the file: relative to where the program runs, with forward slashes. */
  readonly path: string;
  readonly proof: Proof;
  /** In the order of their places. */
  readonly findings: readonly ReportedFinding[];
  /** What the last signature still covers; left out where nobody has signed. */
  readonly covering?: Covering | undefined;
}

/** @param strict whether numbers that no figure accounts for count as findings */
export function toReport(path: string, proof: Proof, strict: boolean, covering?: Covering): Proofread {
  const unaccounted = strict ? unaccountedFindings(proof, 'warning') : [];
  const findings = [...proof.findings, ...unaccounted].sort((a, b) => a.start - b.start);
  return { path, proof, findings, covering };
}

/** Whether someone must look at these manuscripts again; hints ask for nothing. */
export function needsWork(documents: readonly Proofread[]): boolean {
  return documents.some(({ findings }) => findings.some(({ severity }) => severity !== 'hint'));
}
