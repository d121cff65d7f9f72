/** The findings of one manuscript as results. */
import type { Result, Fix as SarifFix } from 'sarif';
import type { Fix } from '../../findings/finding.ts';
import type { Proof } from '../../proof/proof.ts';
import { accountOf } from '../accountOf.ts';
import type { Proofread } from '../proofread.ts';
import type { ReportedFinding } from '../unaccounted.ts';
import { Fingerprints } from './fingerprints.ts';
import { Places } from './places.ts';
import { LEVELS, ruleIndex } from './rules.ts';

export function results({ path, proof, findings }: Proofread, index: number): Result[] {
  const { source } = proof.manuscript;
  const places = new Places(path, index, source);
  const fingerprints = new Fingerprints();
  return findings.map((finding): Result => {
    const { code, severity, message, related, fixes } = finding;
    const passage = fingerprints.next(code, source.slice(finding.start, finding.end), places.lineOf(finding));
    return {
      ruleId: code,
      ruleIndex: ruleIndex(code),
      level: LEVELS[severity],
      message: { text: message },
      locations: [{ physicalLocation: places.location(finding) }],
      ...(related.length > 0 && {
        relatedLocations: related.map((one, id) => ({
          id,
          physicalLocation: places.location(one),
          message: { text: one.message },
        })),
      }),
      ...(fixes.length > 0 && { fixes: fixes.map((fix) => toFix(fix, places)) }),
      partialFingerprints: { 'measureTwicePassage/v1': passage },
      ...propertiesOf(proof, finding),
    };
  });
}

function toFix({ title, edits }: Fix, places: Places): SarifFix {
  return {
    description: { text: title },
    artifactChanges: [
      {
        artifactLocation: places.artifact,
        replacements: edits.map((edit) => ({
          deletedRegion: places.region(edit),
          insertedContent: { text: edit.text },
        })),
      },
    ],
  };
}

/** What the number states and should be, for programs that count. */
function propertiesOf(proof: Proof, finding: ReportedFinding): Pick<Result, 'properties'> {
  const account = accountOf(proof, finding);
  if (!account) return {};
  const { number, tie, expected } = account;
  return {
    properties: {
      stated: number.text,
      ...(expected !== undefined && { expected }),
      ...(tie && { figure: tie.figure.id, ...(tie.size !== null && { size: tie.size }) }),
    },
  };
}
