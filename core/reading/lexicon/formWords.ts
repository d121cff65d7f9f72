/** What is counted or measured: its shape, or that it is none of the pattern. */
import type { LexiconRow } from './row.ts';

export const FORM_WORDS: readonly LexiconRow[] = [
  {
    says: 'form:strip',
    words:
      'strips?(?! sets?)|WOF|width[- ]of[- ]fabric(?! =)|selv(?:a|ed)ge[- ]to[- ]selv(?:a|ed)ge|widths?(?= of (?:the )?fabric)',
    example: 'Cut 7 «strips».',
    counterexample: 'Sew 7 strip sets.',
  },
  {
    says: 'form:square',
    words:
      '(?:squares|sqs?|(?<=\\| \\d\\S*(?: \\S{1,3})?(?:["”″]| in| cm)? )square(?=,|;| \\||$)|(?<=\\b(?:a|an|each|every|one|the|another|this) (?:[\\p{L}\\p{N}-]+ ){0,3}\\d\\S*(?:["”″]|-inch| inch|cm| cm|in) )square(?= |[,.;]|$)|(?<!["”″] ?|\\bin |inch |inches |cm )square)(?! in a square| it| up| them|-)(?<!half-square|quarter-square|half square|quarter square|triangle-squares?|triangle squares?)',
    example: 'Cut 12 «squares».',
    counterexample: 'Make 12 half-square triangles.',
  },
  {
    says: 'form:rectangle',
    words: 'rectangles?|bricks?|oblongs?',
    example: 'Cut 12 «rectangles».',
    counterexample: 'Cut 12 squares.',
  },
  {
    says: 'form:triangle',
    words:
      '(?<!half-square |quarter-square |half square |quarter square |half-rectangle )triangles?(?!-squares?)',
    example: 'This gives 24 «triangles».',
    counterexample: 'Make 24 half-square triangles.',
  },
  {
    says: 'form:unit',
    words: 'units?|pairs? of squares|sets? of squares',
    example: 'Make 24 «units».',
    counterexample: 'Make 24 blocks.',
  },
  {
    says: 'form:fat quarter',
    words:
      'fat (?:quarters?|eighths?)|FQs?|F8s?|(?:charm|layer[- ]cake) squares?|(?:jelly[- ]roll|precut) strips?',
    example: 'You need 10 «fat quarters».',
    counterexample: 'You need 10 blocks.',
  },
  {
    says: 'form:row',
    words: '(?<!sash |sashing |sashes )rows?',
    example: 'Sew 7 «rows».',
    counterexample: 'Sew 7 blocks.',
  },
  {
    says: 'form:diagonal row',
    words: 'diagonal rows?',
    example: 'Sew the blocks into 5 «diagonal rows».',
    counterexample: 'Sew the blocks into 5 rows.',
  },
  {
    says: 'form:them',
    words:
      '(?:those|these) are(?! cut)|(?<!out )of (?:them|(?:these|those)(?=[.,;:)]| (?:and|to|on|in|for|with|from|at|are|is|go|into|per)(?![\\p{L}])|$))',
    example: 'Lay two «of them» on opposite corners.',
    counterexample: 'Take 2 of these units.',
  },
  {
    says: 'form:column',
    words: 'columns?',
    example: 'Sew 5 «columns».',
    counterexample: 'Sew 5 rows.',
  },
  {
    says: 'form:panel',
    words:
      '(?:equal )?(?:panels?|lengths?(?=,? (?:of (?:\\d|backing|fabric)|\\d|each))|lengths?(?= and| for))',
    example: 'Join two «panels».',
    counterexample: 'Join two strips.',
  },
  {
    says: 'form:piece',
    words: 'pieces?(?! of)',
    example: 'Cut the backing into two «pieces».',
    counterexample: 'Cut a piece of ribbon.',
  },
  {
    says: 'form:spare',
    words: '(?:will be |are |is )?(?:left over|leftover|to spare|extra|spare)(?! (?:on|all|for|wide)|-wide)',
    example: 'You need ten triangles; two are «left over».',
    counterexample: 'Cut two triangles over the line.',
  },
  {
    says: 'form:yardage',
    words: 'yards?|yardage|yds?|met(?:re|er)s?',
    example: 'Fabric A, «yards» of it.',
    counterexample: 'Fabric A, strips of it.',
  },
  {
    says: 'form:segment',
    words: 'segments?|slices?|cross-?cuts?',
    example: 'Cut 24 «segments».',
    counterexample: 'Cut 24 strips.',
  },
  {
    says: 'form:set',
    words: 'strip[- ]sets?|sets?(?! of squares)',
    example: 'Make 4 «strip sets».',
    counterexample: 'Make 4 units.',
  },
  {
    says: 'form:gap',
    words: 'apart|spacing|intervals?|increments?',
    example: 'Quilt lines 2" «apart».',
    counterexample: 'Cut strips 2" wide.',
  },
  {
    says: 'form:tail',
    words:
      'fold(?:ed)?\\b[^.;]{0,40} to(?= )|tails?|opening|gap|inch(?:es)? short|from the (?:edge|end|start|raw edge)s?|away from the edge',
    example: 'Leave an 8" «tail».',
    counterexample: 'Leave the seam.',
  },
  {
    says: 'form:pass',
    words: 'pass(?:es)?|times(?= around| and)|rounds?(?= of the tube)',
    example: 'It goes around in five «passes».',
    counterexample: 'Sew it on in five places.',
  },
  {
    says: 'form:bias',
    words: 'bias(?! square)|of bias',
    example: 'You have 124" «of bias».',
    counterexample: 'You have 124" of ribbon.',
  },
  {
    says: 'form:edge',
    words: '(?<!raw )edges?(?! (?:of each|even|together|to edge))|around|circumference|perimeter',
    example: 'The «edge» is 180".',
    counterexample: 'Lay them edges even.',
  },
];
