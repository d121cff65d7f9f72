/** The author's own figures. */
import type { Pattern } from '../../block/pattern.ts';
import type { BlockPath } from '../../block/place.ts';
import { suggestion } from '../../block/words.ts';
import { ONE } from '../../quantity/rational.ts';
import { Real } from '../../quantity/real.ts';
import { toInches } from '../../quantity/units.ts';
import { type Definition, type Derived, FigureError, type Objection, type Room } from '../definition.ts';
import type { Derivation } from '../derivation.ts';
import { type Dimensioned, ExpressionError, evaluate, type Names, UnknownName } from '../expression.ts';
import type { Ledger } from '../ledger.ts';
import { sentence } from '../sentence.ts';

export const ownRoom: Room = {
  define: ({ entries }) => Object.keys(entries.figures ?? {}).map(define),
  check: (pattern, ledger) =>
    Object.keys(pattern.entries.figures ?? {}).flatMap((name) => odd(name, pattern, ledger)),
};

/** A result that nobody can cut or count. One that other figures of the author use may be anything. */
function odd(name: string, pattern: Pattern, ledger: Ledger): Objection[] {
  const stated = pattern.entries.figures ?? {};
  // A figure that could not be computed may have gone on from this one.
  const isUsed = Object.keys(stated).some((other) => {
    const values = ledger.figure(other)?.values;
    return !values || [...values.values()].some(({ uses }) => uses.includes(name));
  });
  const figure = ledger.figure(name);
  if (!figure || isUsed) return [];
  for (const size of pattern.sizes) {
    const value = figure.values.get(size.name);
    if (!value) continue;
    const path: BlockPath = ['figures', name, ...(stated[name]?.pathAt(size) ?? [])];
    const shown = ledger.show.value(value.need, figure.kind);
    const forSize = size.name === '' ? '' : ` for the size “${size.name}”`;
    if (value.need.sign() < 0) {
      const message = `“${name}” comes to ${shown}${forSize}, which is less than nothing.`;
      return [{ code: 'negative-figure', path, message }];
    }
    if (figure.kind === 'count' && value.need.exact?.d !== 1n) {
      const message = `“${name}” comes to ${shown}${forSize}, which is not a whole number: ceil(…) rounds it up, floor(…) down.`;
      return [{ code: 'broken-count', path, message }];
    }
  }
  return [];
}

function define(name: string): Definition {
  return {
    id: name,
    title: `The figure “${name}”`,
    kind: 'length',
    rule: 'exact',
    derive: (at) => derive(at, name),
  };
}

function derive(at: Derivation, name: string): Derived | undefined {
  const text = at.entries.figures?.[name];
  if (text === undefined) return undefined;
  const path = at.inputs.find((input) => input[0] === 'figures' && input[1] === name) ?? ['figures', name];
  try {
    const result = evaluate(text, namesOf(at));
    if (!result) return undefined;
    const because = `${result.worked} = ${at.show.dimensioned(result)}`;
    if (result.dimension !== 0 && result.dimension !== 1) {
      const message = 'This is neither a length nor a count; perhaps two lengths are multiplied.';
      throw new FigureError({ code: 'bad-expression', path, message });
    }
    const kind = result.dimension === 0 ? 'count' : 'length';
    return {
      need: result.value,
      kind,
      steps: result.worked === text ? [sentence(because)] : [`${text}: ${because}.`],
      because,
    };
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error;
    const unknown = error instanceof UnknownName;
    const hint = unknown ? suggestion(error.found, at.ids) : '';
    throw new FigureError({
      code: unknown ? 'unknown-figure' : 'bad-expression',
      path,
      message: error.message + hint,
      within: error.range,
    });
  }
}

function namesOf(at: Derivation): Names {
  return {
    idAt: (text, offset) => longestIdAt(at.ids, text, offset),
    value: (id): Dimensioned | undefined => {
      const figure = at.figure(id);
      return figure && { value: figure.need, dimension: at.kindOf(id) === 'count' ? 0 : 1 };
    },
    show: (value) => at.show.dimensioned(value),
    whole: Real.of(at.house.system === 'inch' ? ONE : toInches(ONE, 'cm')),
  };
}

/** Ids may hold spaces and hyphens, so the longest one that ends at the end of a word is meant. */
function longestIdAt(ids: readonly string[], text: string, offset: number): string | undefined {
  const fits = (id: string) =>
    text.startsWith(id, offset) && !/[\p{L}\p{N}_.-]/u.test(text[offset + id.length] ?? '');
  return ids.filter(fits).sort((a, b) => b.length - a.length)[0];
}
