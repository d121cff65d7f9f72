/** The one way to proofread a manuscript: the server, the command line and the tests all call it. */
import type { Pattern } from '../block/pattern.ts';
import { readPattern } from '../block/read.ts';
import { openLedger } from '../figures/ledger.ts';
import type { Finding } from '../findings/finding.ts';
import { type Manuscript, type ReadNumber, readManuscript } from '../manuscript/manuscript.ts';
import type { NumberText } from '../quantity/notation.ts';
import { assess } from './assess.ts';
import type { Earlier } from './earlier/earlier.ts';
import { findGaps } from './gaps.ts';
import { withPartners } from './partnerTies.ts';
import type { Account, AccountKind, Coverage, Proof, Tie } from './proof.ts';
import { type Readings, tieReadings } from './readTies.ts';
import { isReserved } from './reserve.ts';
import { selfChecks } from './selfChecks/index.ts';
import { SlipFinder } from './slips/slipFinder.ts';
import { Staleness } from './stale.ts';
import { checkStatements } from './statements.ts';
import { tieTags } from './tagTies.ts';
import { unclearFinding } from './unclear.ts';
import { takeFrom, type Use } from './uses.ts';

export interface Document {
  readonly source: string;
  /** Finds the files that `use` names; left out, none can be reached. */
  readonly use?: Use | undefined;
  /** Earlier states of the manuscript, the one first that matters most: what was right then and is not now is stale. */
  readonly before?: readonly Earlier[];
}

interface Assessed {
  readonly account: Account;
  readonly finding?: Finding | undefined;
}

export function proofread({ source, use, before = [] }: Document): Proof {
  const manuscript = readManuscript(source);
  const pattern = readPattern(manuscript.fences, use && takeFrom(use));
  const ledger = openLedger(pattern);
  const tags = tieTags(manuscript, pattern, ledger);
  // Without a block nobody has stated anything: what the house usually does contradicts no author.
  const readings = manuscript.fences.length > 0 ? tieReadings(manuscript, pattern, ledger) : NO_READINGS;
  const tagTies = withPartners(tags.ties, manuscript, pattern.house);
  const readTies = withPartners(readings.ties, manuscript, pattern.house);
  const staleness = new Staleness(before, manuscript, pattern, ledger);
  const slips = new SlipFinder(pattern, ledger);
  const { statements, findings: stated } = checkStatements(source, pattern, ledger, staleness, slips);
  const tied = new Set([...tagTies.keys(), ...readTies.keys()].map(({ written }) => written));
  const gaps = findGaps(manuscript);
  const found: Finding[] = [...pattern.findings, ...ledger.findings, ...tags.findings, ...stated, ...gaps];
  const accountOf = (number: ReadNumber, tie: Tie | undefined, rivals?: readonly Tie[]): Assessed => {
    const assessing = {
      pattern,
      ledger,
      source,
      habits: () => habitsAt(number, manuscript),
      staleness,
      slips,
    };
    if (!tie && rivals && !isReserved(number, false)) {
      const finding = unclearFinding(number, rivals, { ...assessing, slips: undefined });
      return { account: { ...untied(number), kind: 'wrong', code: finding.code }, finding };
    }
    if (!tie) return { account: untied(number) };
    const standing = { ...number, around: number.passage };
    const { figure, value, size } = tie;
    // Not the whole tie: its evidence is put into words only when somebody asks.
    const subject = { figure, value, size, show: ledger.show };
    const { kind, expected, finding, slip } = assess(standing, subject, assessing);
    const isList = number.group?.members.every((member) => tied.has(member)) === true;
    if (kind !== 'verified' && isReserved(number, isList)) return { account: untied(number) };
    return {
      account: { number, kind, tie, expected, code: finding?.code, slip, reason: undefined },
      finding,
    };
  };
  const tiedAccounts = manuscript.numbers.map((number): Account => {
    const tag = tagTies.get(number);
    const today = accountOf(number, tag ?? readTies.get(number), readings.unclear.get(number));
    // What was right as another figure before something changed states that figure still.
    const earlier = tag || today.account.kind === 'verified' ? undefined : staleness.tieOf(number);
    const before = earlier && accountOf(number, earlier);
    const { account, finding } = before?.account.kind === 'stale' ? before : today;
    if (finding) found.push(finding);
    return account;
  });
  const accounts = checkedAgainstItself(manuscript, pattern, tiedAccounts, found);
  return {
    manuscript,
    pattern,
    ledger,
    accounts,
    statements,
    findings: found.sort((a, b) => a.start - b.start || a.end - b.end),
    coverage: coverageOf(accounts),
  };
}

const NO_READINGS: Readings = { ties: new Map(), unclear: new Map() };

/** The accounts, in which numbers that no figure accounts for are wrong where others of the manuscript contradict them. */
function checkedAgainstItself(
  manuscript: Manuscript,
  pattern: Pattern,
  accounts: readonly Account[],
  found: Finding[],
): Account[] {
  const kinds = new Map(accounts.map(({ number, kind }) => [number, kind]));
  const isA = (kind: AccountKind) => (number: ReadNumber) => kinds.get(number) === kind;
  const wrong = selfChecks(manuscript, pattern, isA('unaccounted'), isA('verified'));
  found.push(...wrong.values());
  return accounts.map((account) => {
    const finding = wrong.get(account.number);
    return finding ? { ...account, kind: 'wrong', code: finding.code } : account;
  });
}

/** The numbers of its own passage first, then all others from the start. */
function habitsAt({ passage }: ReadNumber, { numbers }: Manuscript): NumberText[] {
  return [...passage.numbers, ...numbers].map(({ written }) => written);
}

function untied(number: ReadNumber): Account {
  const reason = number.notMeasurement;
  const kind: AccountKind = reason === undefined ? 'unaccounted' : 'not-measurement';
  return { number, kind, tie: undefined, expected: undefined, code: undefined, reason };
}

function coverageOf(
  accounts: readonly { readonly kind: AccountKind; readonly tie: Tie | undefined }[],
): Coverage {
  const count = (kind: AccountKind) => accounts.filter((account) => account.kind === kind).length;
  return {
    verified: count('verified'),
    wrong: count('wrong'),
    stale: count('stale'),
    short: count('short'),
    generous: count('generous'),
    unaccounted: count('unaccounted'),
    notMeasurement: count('not-measurement'),
  };
}
