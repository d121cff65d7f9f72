/** What the sample patterns use. */
import { filesBeside } from '../../core/report/reference/example.ts';
import { sample } from './manuscripts.ts';

/** Finds the house file of the sample line. */
export const useOfSamples = filesBeside({ 'house.md': sample('house.md') });
