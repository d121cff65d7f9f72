import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { textListing } from '../../core/report/listing.ts';
import { PLAIN } from '../../core/report/paint.ts';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const readme = read('README.md');

describe('the README', () => {
  it('gives two commands, and the checks run exactly the one that passes the tests', () => {
    const commands = [...readme.matchAll(/^```sh\n(.+)\n```$/gm)].map(([, command]) => command);
    expect(commands).toEqual(['npm ci && npm run samples', 'npm ci && npm test']);
    expect(read('.ci/run')).toContain(`bash -c '${commands[1]}'`);
  });

  it('shows a message that the program really gives', () => {
    const example = /^````markdown\n([\s\S]*?)^````$/m.exec(readme)?.[1] ?? '';
    const said = /^ {2}> (.+)$/m.exec(readme)?.[1];
    expect(proofread({ source: example }).findings.map(({ message }) => message)).toEqual([said]);
  });

  it('shows what the program really reads in a manuscript without tags', () => {
    const section = /^## It reads what you write\n([\s\S]*?)^## In VS Code$/m.exec(readme)?.[1] ?? '';
    const example = /^````markdown\n([\s\S]*?)^````$/m.exec(section)?.[1] ?? '';
    const said = /^> (.+)$/m.exec(section)?.[1];
    const shown = /^```text\n([\s\S]*?)\n```$/m.exec(section)?.[1];
    const proof = proofread({ source: example });

    expect(example).not.toContain('<!--');
    expect(proof.findings.map(({ message }) => message)).toEqual([said]);
    expect(textListing('skerry.md', proof, { paint: PLAIN, width: 120 }).split('\n').slice(0, -3)).toEqual(
      shown?.split('\n'),
    );
  });
});
