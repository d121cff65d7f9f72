/**
 * What a text can speak of, and what a figure wants to be spoken of with: the common tongue of manuscript and ledger.
 *
 * A concept is `class:value`. Within a class the values rule each other out: what is said of the binding is not said
 * of the backing.
 */
export type ConceptClass =
  /** The part of the quilt: `part:binding`. */
  | 'part'
  /** Which border, counted from the inside: `border:2`. */
  | 'border'
  /** A fabric by its label: `fabric:A`. */
  | 'fabric'
  /** A block, unit, piece or own figure of this pattern: `name:block.Ripple`. */
  | 'name'
  /** The shape that is counted or measured: `form:strip`. */
  | 'form'
  /** At which stage it is measured: `state:finished`. */
  | 'state'
  /** Which way it is measured: `axis:length`. */
  | 'axis'
  /** At which edges of the quilt it lies: `edge:side`. */
  | 'edge'
  /** What is done: `act:cut`. */
  | 'act'
  /** Of one block, or of the whole quilt: `scope:each`. */
  | 'scope'
  /** One of the pattern's sizes: `size:throw`. */
  | 'size';

export type Concept = `${ConceptClass}:${string}`;

export function classOf(concept: Concept): ConceptClass {
  return concept.slice(0, concept.indexOf(':')) as ConceptClass;
}
