/** At which stage and which way it is measured, what is done with it, and of how much of the quilt it is told. */
import { partialWords } from './partialWords.ts';
import type { LexiconRow } from './row.ts';

export const MEASURE_WORDS: readonly LexiconRow[] = [
  {
    says: 'act:content',
    words: '(?:uses?|takes?|contains?)(?! the| it| a )',
    example: '20 blocks «use» 40 squares.',
    counterexample: 'Use a small ruler; take the time.',
  },
  {
    says: 'scope:part',
    words: partialWords('a part', 'each time', 'paired'),
    example: 'Make 12 geese, then 12 «more».',
    counterexample: 'Make 12 geese.',
  },
  {
    says: 'state:unfinished',
    words:
      'unfinished|including (?:the )?(?:outer )?seam allowances?|with (?:its|the|their|outer) (?:outer )?(?:seam allowances?|raw edges)|before (?:quilting|binding|you go on|adding|the (?:next|binding|border))|raw edges?(?! together| even)',
    example: 'The block is 12½" square «including seam allowances».',
    counterexample: 'The block finishes at 12" square.',
  },
  {
    says: 'state:measured',
    words:
      '(?:should|must|will|to|now|they|it|each|top|which|then|block|blocks|unit|center|centre|work|piece|quilt) (?:now |then |still |all |both |each )*(?:measures?|measuring)|(?:should|must|will|ought to|to) (?:now |then |still |all |both |each )*be|measures?(?! (?:the|your|it|twice|through))|comes to|(?:is|are|’s) now|(?<=(?:square|wide|long|deep) )now|now (?:measures?|is|has|have)',
    example: 'The block «should measure» 12½" square.',
    counterexample: 'Measure the quilt through the middle.',
  },
  {
    says: 'state:checked',
    words:
      '(?:should|must|will|ought to) (?:now |then |still |all |both |each )*(?:measure|be)|check (?:that|each|every|the|they|your)\\b[^.;,]{0,30} measures?|now measures?|(?:measures?|is|are|’s) now|(?<=(?:square|wide|long|deep) )now',
    example: 'The block «should measure» 12½" square.',
    counterexample: 'The block measures 12" in the finished quilt.',
  },
  {
    says: 'state:trimmed',
    words: 'trim(?:med)?\\b[^.;,]{0,24}? to|squared? (?:it |them |each |up )+to',
    example: '«Trim each unit to» 3½" square.',
    counterexample: 'Trim the corner.',
  },
  {
    says: 'state:finished',
    words:
      'finish(?:ed|es)(?! the| your| size of your| with| (?:quilt )?tops?)(?: (?:size|quilt|block))?|finish(?= at|\\W{0,3}\\d)|(?:will|to|they|blocks?|units?) finish|when finished|(?:when|once) (?:it is |they are )?sewn(?: in| on)?|in the (?:finished|quilt(?! top))|size of (?:the )?(?:quilt|blocks?)|measurements?(?=:? \\d)|(?:quilt|throw|topper|runner|hanging|overall) sizes?',
    example: 'The block «finishes» at 12" square.',
    counterexample: 'Finish the edge with binding.',
  },
  {
    says: 'state:cut',
    words:
      '(?<!from these )(?:sub-?|re-?)?cut(?:s|ting)?(?! apart| on the| along| in half| once| twice| away)',
    example: '«Cut» 12 squares.',
    counterexample: 'Press 12 squares.',
  },
  {
    says: 'axis:length',
    words:
      'long|in length|lengths?(?! of fabric| of the fabric)|down(?! (?:the|to|by|on|in))|from top to bottom',
    example: 'Cut the sides 48½" «long».',
    counterexample: 'Cut strips 2" wide.',
  },
  {
    says: 'axis:down',
    words: 'down(?! (?:the|to|by hand))',
    example: 'Six across and eight «down».',
    counterexample: 'Sew the binding down by hand.',
  },
  {
    says: 'axis:depth',
    words: 'deep|tall|high|height|depth',
    example: 'Cut a strip 8" «deep».',
    counterexample: 'Cut a strip 8" long.',
  },
  {
    says: 'axis:width',
    words:
      'wide|in width|across(?! the (?:width|fabric|full|seam))|width(?! of (?:the )?fabric)|from side to side',
    example: 'Cut strips 2" «wide».',
    counterexample: 'Cut strips across the fabric.',
  },
  {
    says: 'axis:per row',
    words:
      'rows? (?:of|with)(?! (?:the|an?|its|your|their|each|every)(?![\\p{L}]))|(?:in|to|per|for) (?:a|each|every|one|the) row|per row|each row (?:has|takes)|across(?= (?:and|by))',
    example: 'Sew 7 «rows of» 6 blocks.',
    counterexample: 'Sew 7 rows.',
  },
  {
    says: 'axis:both',
    words: '(?<=(?:["”″]|in|inch|inches|cm) ?)square(?!s)|each way|both ways|diameter',
    example: 'The block is 12½" «square».',
    counterexample: 'Cut a square.',
  },
  {
    says: 'edge:side',
    words:
      '(?:long |longer )?sides?(?! of (?:the|each|every|that) (?:\\w+ )?line| together| facing| triangles?| setting| up| (?:by|to) side)',
    example: 'Cut the «side» borders 48½" long.',
    counterexample: 'Sew right sides together.',
  },
  {
    says: 'edge:top',
    words:
      'top (?:and|\\/|&|or) (?:the )?bottom|tops? and bottoms?|(?<!from |both |at the |of the |together at the )(?:two |short |the )?ends(?! (?:up|of (?!the quilt)|together|meet|even|to|in|under|at|on))|short (?:ones|sides|borders)',
    example: 'Cut the «top and bottom» borders 40½" long.',
    counterexample: 'Sew the top on.',
  },
  {
    says: 'act:subcut',
    words:
      '(?:sub|re|cross)-?\\s?cut\\w*|from (?:these|them|this strip)|cut (?:them|these|this|it|the strips|the sets) into|, (?:then|into)',
    example: 'Cut 3 strips; «subcut» 24 squares.',
    counterexample: 'Cut 3 strips.',
  },
  {
    says: 'act:total',
    words:
      'at least|(?:a )?total of|to total|in total|reach(?:es)?|enough(?: for| to)?|in all|(?:you|we) (?:need|want|have|will need)|lengths? of|long enough|call it|to get|or more|(?<=\\bstrips )to(?= \\d)',
    example: 'Join the strips «to total» 240".',
    counterexample: 'Join the strips end to end.',
  },
  {
    says: 'act:show',
    words: 'shows?|showing|on the front|to the front|visible',
    example: 'The binding «shows» ¼" wide.',
    counterexample: 'The binding is cut 2¼" wide.',
  },
  {
    says: 'act:make',
    words:
      'makes?|making|gives?|yields?|produces?|you (?:need|should have|will have)|repeat|so you (?:have|get)',
    example: '«Make» 24 units.',
    counterexample: 'Cut 24 squares.',
  },
  {
    says: 'scope:each',
    words:
      '(?:for |in |of |to )?(?:each|every|one|a|per) (?:\\w+ )?(?:block|star|unit)(?! unit)|(?:each|every) (?:block|one) (?:has|needs|uses|takes)',
    example: '«For each block» you need four units.',
    counterexample: 'Make 20 blocks.',
  },
  {
    says: 'scope:laid out',
    words: 'lay out|arrange|(?:take|choose|gather)(?= )',
    example: '«Lay out» four units.',
    counterexample: 'Make 20 blocks.',
  },
  {
    says: 'scope:container',
    words:
      '(?:from|per|for|of|in) (?:each|every|one) (?:of (?:the |your |these )?(?:\\S+ )?)?(?:fat|strip|set|pair|fabric|colou?r|print|square|quarter|half|WOF|yard|row)\\w*|(?:each|every) (?:strip|pair|set)|(?:a|one) strip (?:gives|yields)|(?:to|from) (?:a|each|every|the|one) (?:full |whole )?strip|per (?:strip|fat|row|set)',
    example: 'Cut 4 squares «from each fat» quarter.',
    counterexample: 'Cut 4 squares from the fabric.',
  },
  {
    says: 'scope:total',
    words:
      '(?:in )?total|in all|altogether|you (?:need|should have)|all(?: the)?(?= \\d)|repeat|to make|makes?(?= \\()|make(?= \\d| \\w+teen| \\w+ty)',
    example: 'Make 24 units «in all».',
    counterexample: 'Each block takes four units.',
  },
];
