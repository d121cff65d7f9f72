/** The same count in words and in digits: twelve (12) squares. */
import type { Contradiction } from './contradiction.ts';
import { isPlain, type Text, type Told } from './said.ts';

export function wordsAndDigits({ lines }: Text): Contradiction[] {
  const found: Contradiction[] = [];
  for (const { amounts, text } of lines)
    for (const { sides } of amounts)
      for (const { spots, twins } of sides) {
        const [own, more] = [spots[0], spots[1]];
        const [twin, others] = [twins[0], twins[1]];
        if (!own || more || !twin || others || own.number.unit || twin.number.unit) continue;
        if (!/^\s*\)/.test(text.slice(twin.end)) || own.number.value.equals(twin.number.value)) continue;
        // "Row one (5)", "blocks two (6)": a name, not a count.
        if (
          /\b(?:rows?|steps?|borders?|units?|blocks?|fabrics?|colou?rs?|day|week|part|size|number|no\.)\s*$/i.test(
            text.slice(0, own.start),
          )
        )
          continue;
        if (!isPlain(own.number) || !isPlain(twin.number)) continue;
        const [first, second] = [tell(own.number), tell(twin.number)];
        found.push({
          code: 'counts-disagree',
          message: `${capital(first.text)} and ${second.text} stand for the same count, but are different numbers.`,
          at: second,
          against: [{ told: first, says: `The same count is ${first.text} here.` }],
        });
      }
  return found;
}

function tell(number: Told['number']): Told {
  return { number, value: number.value, text: number.text };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
