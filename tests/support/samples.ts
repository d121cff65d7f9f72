/** What the sample patterns use. */
import { readFileSync } from 'node:fs';
import { filesBeside } from '../../core/report/reference/example.ts';

const house = readFileSync(new URL('../../shared/samples/house.md', import.meta.url), 'utf8');

/** Finds the house file of the sample line. */
export const useOfSamples = filesBeside({ 'house.md': house });
