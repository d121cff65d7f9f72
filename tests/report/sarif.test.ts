/**
 * The SARIF report, held against the schema of SARIF 2.1.0 as the package `@microsoft/jest-sarif` ships it, and against
 * the standard's text for what a schema cannot say.
 */

import { createRequire } from 'node:module';
import Ajv from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import type { Run } from 'sarif';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { FINDING_WORDS } from '../../core/report/findingWords.ts';
import { toReport } from '../../core/report/proofread.ts';
import { sarifReport } from '../../core/report/sarif/log.ts';

const TOOL = { name: 'Measure Twice', version: '1.2.3', reference: 'https://pages.example/reference/' };

const schema = createRequire(import.meta.url)('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');
const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
addFormats(ajv);
const validate = ajv.compile(schema);

function report(manuscripts: Readonly<Record<string, string>>, strict = false) {
  const documents = Object.entries(manuscripts).map(([path, source]) =>
    toReport(path, proofread({ source }), strict),
  );
  // As it is written: what is undefined is not there.
  return JSON.parse(JSON.stringify(sarifReport(documents, TOOL))) as { runs: [Run] };
}

const QUILT = [
  '```measure',
  'finished: 36" x 48"',
  'binding: { strip: 2 1/4", grain: straight }',
  '```',
  '',
].join('\n');
const SHORT = `${QUILT}\nCut 4 <!-- = binding.strips --> strips.\n`;

describe('The SARIF report', () => {
  it('is valid for the example of every finding, and for none', () => {
    const examples = Object.entries(FINDING_WORDS).map(([code, { example }]) => [`${code}.md`, example]);
    for (const log of [report(Object.fromEntries(examples), true), report({}), report({ 'a.md': 'No.' })]) {
      validate(log);
      expect(validate.errors).toBeNull();
    }
  });

  it('is not called valid when it is not', () => {
    expect(validate({ ...report({}), version: '2.0.0' })).toBe(false);
  });

  it('tells of a finding its rule, its level, its place, where else to look, and the fix', () => {
    const { results } = report({ 'my quilts/½.md': SHORT }).runs[0];
    const place = { uri: 'my%20quilts/%C2%BD.md', uriBaseId: '%SRCROOT%', index: 0 };
    const number = {
      startLine: 6,
      startColumn: 5,
      endLine: 6,
      endColumn: 6,
      charOffset: SHORT.indexOf('4 <'),
      charLength: 1,
    };

    expect(results).toEqual([
      {
        ruleId: 'short-figure',
        ruleIndex: Object.keys(FINDING_WORDS).indexOf('short-figure'),
        level: 'error',
        message: { text: expect.stringContaining('at least 5, not 4') },
        locations: [{ physicalLocation: { artifactLocation: place, region: number } }],
        relatedLocations: [
          ...['grain', 'strip'].map((entry, id) => ({
            id,
            physicalLocation: { artifactLocation: place, region: expect.objectContaining({ startLine: 3 }) },
            message: { text: `It follows from “${entry}” of the binding.` },
          })),
          {
            id: 2,
            physicalLocation: { artifactLocation: place, region: expect.objectContaining({ startLine: 2 }) },
            message: { text: 'It follows from “finished”.' },
          },
        ],
        fixes: [
          {
            description: { text: 'Change to 5' },
            artifactChanges: [
              {
                artifactLocation: place,
                replacements: [{ deletedRegion: number, insertedContent: { text: '5' } }],
              },
            ],
          },
        ],
        partialFingerprints: { 'measureTwicePassage/v1': expect.stringMatching(/^[0-9a-f]{16}$/) },
        properties: { stated: '4', expected: '5', figure: 'binding.strips' },
      },
    ]);
  });

  it('gives fixes that make the text which the program itself makes', () => {
    const source = `\ufeff${SHORT.replaceAll('\n', '\r\n')}`;
    const fix = report({ 'a.md': source }).runs[0].results?.[0]?.fixes?.[0];
    // A byte order mark is no part of the text in SARIF.
    const edits = fix?.artifactChanges[0]?.replacements.map(({ deletedRegion, insertedContent }) => ({
      start: deletedRegion.charOffset ?? 0,
      end: (deletedRegion.charOffset ?? 0) + (deletedRegion.charLength ?? 0),
      text: insertedContent?.text ?? '',
    }));

    expect(applyEdits(source.slice(1), edits ?? [])).toBe(source.slice(1).replace('Cut 4 <', 'Cut 5 <'));
  });

  it('counts columns in UTF-16 code units, and says so', () => {
    const run = report({ 'a.md': SHORT.replace('Cut', '🧵') }).runs[0];

    expect(run.columnKind).toBe('utf16CodeUnits');
    expect(run.results?.[0]?.locations?.[0]?.physicalLocation?.region).toMatchObject({ startColumn: 4 });
  });

  it('has a rule with help and a page for every kind of finding', () => {
    const rules = report({}).runs[0].tool.driver.rules ?? [];

    expect(rules.map(({ id }) => id)).toEqual(Object.keys(FINDING_WORDS));
    expect(rules[0]).toEqual({
      id: 'wrong-figure',
      name: 'WrongFigure',
      shortDescription: { text: 'A number contradicts the figure that it states.' },
      fullDescription: { text: expect.any(String), markdown: expect.any(String) },
      help: {
        text: expect.stringContaining('What to do: Take the fix'),
        markdown: expect.stringContaining('````markdown\n```measure\nfinished'),
      },
      helpUri: 'https://pages.example/reference/findings/wrong-figure.md',
      defaultConfiguration: { level: 'error' },
      properties: { tags: ['quilting', 'arithmetic'], 'problem.severity': 'error' },
    });
    expect(rules.filter(({ help }) => help?.text.includes('`'))).toEqual([]);
  });

  it('shows hints as notes, and unchecked numbers to the strict as warnings', () => {
    const source = `${QUILT}\nBinding: 2 yd <!-- = binding.yardage -->.\n\nCut two sashes 14½" long.\n`;
    const levels = report({ 'a.md': source }, true).runs[0].results?.map(({ ruleId, level }) => [
      ruleId,
      level,
    ]);

    expect(levels).toEqual(
      expect.arrayContaining([
        ['generous-figure', 'note'],
        ['unaccounted', 'warning'],
      ]),
    );
  });

  it('names each manuscript once, also one without a finding, and a file elsewhere by its whole address', () => {
    const run = report({
      'a.md': SHORT,
      'b.md': QUILT,
      '../c.md': QUILT,
      'D:/quilts/d.md': QUILT,
      '/e.md': '',
    }).runs[0];

    expect(run.artifacts?.map(({ location }) => location)).toEqual([
      { uri: 'a.md', uriBaseId: '%SRCROOT%' },
      { uri: 'b.md', uriBaseId: '%SRCROOT%' },
      { uri: '../c.md', uriBaseId: '%SRCROOT%' },
      { uri: 'file:///D:/quilts/d.md' },
      { uri: 'file:///e.md' },
    ]);
  });
});

describe('The fingerprint of a finding', () => {
  const marks = (source: string) =>
    report({ 'a.md': source }).runs[0].results?.map(({ partialFingerprints }) => partialFingerprints);

  it('stays when its line moves, or is indented otherwise', () => {
    const moved = SHORT.replace('\nCut', '\nA new sentence.\n\n- Cut');
    const deeper = SHORT.replace('\nCut', '\nAnother sentence.\n\n-  Cut');

    expect(marks(`# Title\n\n${SHORT}`)).toEqual(marks(SHORT));
    expect(marks(moved)?.length).toBe(1);
    expect(marks(deeper)).toEqual(marks(moved));
  });

  it('changes with the words of its line', () => {
    expect(marks(SHORT.replace('strips.', 'strips of it.'))).not.toEqual(marks(SHORT));
  });

  it('tells two findings on lines that read the same apart', () => {
    const twice = marks(`${SHORT}\n${SHORT.slice(QUILT.length)}`);

    expect(twice?.length).toBe(2);
    expect(twice?.[0]).toEqual(marks(SHORT)?.[0]);
    expect(twice?.[1]).not.toEqual(twice?.[0]);
  });
});
