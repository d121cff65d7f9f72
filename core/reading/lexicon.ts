/**
 * The words of the trade that say what a number is about. A row is a concept, the words for it, and two sentences: one
 * in which « » stand around the words, and the likest one in which they are not meant. Every row is tested.
 */
import type { Concept } from './concept.ts';

export interface LexiconRow {
  readonly says: Concept;
  /** The source of a regular expression, matched as whole words in any letter case. */
  readonly words: string;
  readonly example: string;
  readonly counterexample: string;
}

/** The classes are in the order in which a sentence names them: what, which shape, how measured. */
export const LEXICON: readonly LexiconRow[] = [
  {
    says: 'part:binding',
    words: 'binding|bind(?! off)',
    example: 'Join the «binding» strips.',
    counterexample: 'Join the border strips.',
  },
  {
    says: 'part:backing',
    words: 'backing(?! seams?)|(?:for the|(?<!to )the) back(?! of (?:each|every|all|the (?!quilt))| and| in)',
    example: 'Cut the «backing» into two panels.',
    counterexample: 'Draw a line on the back of each square.',
  },
  {
    says: 'part:batting',
    words: 'batting|wadding',
    example: 'The «wadding» is 48" × 60".',
    counterexample: 'The padding is 48" × 60".',
  },
  {
    says: 'part:border',
    words: 'borders?',
    example: 'Sew the «borders» on.',
    counterexample: 'Sew the binding on.',
  },
  {
    says: 'part:cornerstones',
    words: 'cornerstones?|(?:sashing )?posts?|sashing squares?|crossings?',
    example: 'Cut 12 «cornerstones».',
    counterexample: 'Cut 12 corners.',
  },
  {
    says: 'part:sashing',
    words: 'sash(?:ing|es)?(?! squares?| posts?)',
    example: 'Place the «sashing» between the blocks.',
    counterexample: 'Cut 12 sashing squares.',
  },
  {
    says: 'part:setting side',
    words: '(?:side(?: setting)?|setting|edge|filler) (?:and (?:corner|side) )?triangles?',
    example: 'Cut twice diagonally for the «side triangles».',
    counterexample: 'Sew the side borders on.',
  },
  {
    says: 'part:setting corner',
    words: 'corner(?: setting)? triangles?|(?:the|for|four|4) corners(?! of)',
    example: 'Add the «corner triangles» last.',
    counterexample: 'Add the cornerstones last.',
  },
  {
    says: 'part:corner squares',
    words: 'corner squares?',
    example: 'Sew the «corner squares» to the ends.',
    counterexample: 'Sew the corner triangles on.',
  },
  {
    says: 'part:sleeve',
    words: '(?:hanging )?sleeve|rod pocket',
    example: 'Hem the ends of the «hanging sleeve».',
    counterexample: 'Roll up your sleeves.',
  },
  {
    says: 'part:piping',
    words: 'piping|cording',
    example: 'Baste the «piping» to the edge.',
    counterexample: 'Baste the layers.',
  },
  {
    says: 'part:scallops',
    words: 'scallops?',
    example: 'Mark 28 «scallops».',
    counterexample: 'Mark 28 lines.',
  },
  {
    says: 'part:centre',
    words: '(?:quilt )?(?:centre|center)(?! squares?)|blocks? (?:section|area)',
    example: 'The quilt «center» measures 48½" square.',
    counterexample: 'Cut a center square.',
  },
  {
    says: 'part:top',
    words:
      '(?:quilt[- ]|finished |whole )?tops?(?! (?:and|to|or|\\/|&|of|edges?|borders?|strips?|rows?|left|right|row|hems?)\\b)(?:(?<!the (?:side|bottom) and top))|flimsy',
    example: 'The «quilt top» should measure 60½" square.',
    counterexample: 'Sew the top and bottom borders.',
  },
  {
    says: 'part:quilt',
    words:
      '(?:finished|quilt|overall) (?:sizes?|measurements?)(?! of (?:the )?blocks?)|the (?:circle|oval)|(?:finished )?(?:quilt|topper|throw|runner|hanging|wall quilt|placemats?|mats?|cushion|pillow|cover|coverlet)(?! (?:top|cent(?:re|er)|sandwich|as desired|assembly|blocks?))',
    example: 'The finished «quilt» is 60" square.',
    counterexample: 'Layer and quilt as desired, then square up the quilt top.',
  },
  {
    says: 'part:block',
    words: 'blocks?',
    example: 'Make 20 «blocks».',
    counterexample: 'Make 20 units.',
  },
  {
    says: 'part:selvage',
    words:
      'usable|WOF(?= =)|fabric (?:is|was|measures)|once the selv[ae]dges|(?:fabric|yardage|cloth|everything|all) (?:that is )?(?:at least )?(?=\\S+ (?:wide|inches wide|between|selvage))|wide fabric|fabric widths?|between the selv[ae]dges|selv[ae]dges? (?:removed|off|trimmed|are)|after trimming|widths? of (?:the )?fabric(?= =)',
    example: 'All yardage assumes 40" of «usable» width.',
    counterexample: 'Cut 5 strips by the width of fabric.',
  },
  {
    says: 'part:seam',
    words:
      'seam(?:s|lines?)?(?: allowances?)?|on (?:each|either|both) sides? of (?:the|each|every|that|this) (?:drawn |marked |pencil(?:led)? |diagonal )?(?:line|diagonal)s?|(?:from|away from|outside|beside|beyond|off|past|above|either side of) (?:(?:the|each|every|both|your|a) )?(?:drawn |marked |sewn |sewing |stitched |inner )?(?:lines?|points?|stitching|seams?|it|corners?)|presser foot',
    example: 'Sew with a ¼" «seam allowance».',
    counterexample: 'Sew ten strips together.',
  },
  {
    says: 'part:joining',
    words:
      '(?:extra|more|allow\\w*)? ?(?:for|to) (?:the )?(?:corners? and|joins?|joining|mitred? corners|mitering|mitring|overlap|closing|finishing the ends)|for corners',
    example: 'Add 12" «for joining».',
    counterexample: 'Join the strips.',
  },
  {
    says: 'part:overhang',
    words:
      '(?:larger|bigger|more|wider|extra|beyond|to spare|excess|margin|past|overhang)\\b[^.;]{0,40}?\\b(?:(?:on )?(?:each|every|all|either|both)(?: four| the)? (?:sides?|edges?|way)|all (?:the way )?round|all around|top)|on (?:each|every|all) (?:four )?sides?(?= of the (?:quilt|top))|(?:larger|bigger) than (?:the|your) (?:quilt )?top|overhang|(?<=["”″]|in|inch|inches|cm) (?:to spare )?(?:all (?:the way )?(?:a)?round|all around)',
    example: 'Cut the backing 4" «larger than the top on every side».',
    counterexample: 'Sew a border to each side.',
  },
  {
    says: 'form:strip',
    words:
      'strips?(?! sets?)|WOF|width[- ]of[- ]fabric(?! =)|selv[ae]ge[- ]to[- ]selv[ae]ge|widths?(?= of (?:the )?fabric)',
    example: 'Cut 7 «strips».',
    counterexample: 'Sew 7 strip sets.',
  },
  {
    says: 'form:square',
    words:
      '(?:squares|(?<!["”″] ?|\\bin |inch |inches |cm )square)(?! in a square| it| up| them|-)(?<!half-square|quarter-square|half square|quarter square|triangle-squares?|triangle squares?)',
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
    says: 'act:content',
    words: '(?:uses?|takes?|contains?)(?! the| it| a )',
    example: '20 blocks «use» 40 squares.',
    counterexample: 'Use a small ruler; take the time.',
  },
  {
    says: 'scope:part',
    words:
      'another|more|the rest|the (?:first|last|other|remaining)|at a time|each day|pairs?|left(?! over| to| of| side| and)',
    example: 'Make 12 geese, then 12 «more».',
    counterexample: 'Make 12 geese.',
  },
  {
    says: 'form:row',
    words: 'rows?',
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
      '(?:those|these) are(?! cut)|of (?:them|these|those)(?! (?:strips?|squares?|units?|blocks?|rectangles?|sets?))',
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
    words: '(?:equal )?(?:panels?|lengths?(?= (?:of (?:\\d|backing|fabric)|\\d|each))|lengths?(?= and| for))',
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
    words: '(?:will be |are |is )?(?:left over|leftover|to spare|extra|spare)(?! (?:on|all|for))',
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
    says: 'state:unfinished',
    words:
      'unfinished|including (?:the )?(?:outer )?seam allowances?|with (?:its|the|their|outer) (?:outer )?(?:seam allowances?|raw edges)|before (?:quilting|binding|you go on|adding|the (?:next|binding|border))|raw edges?(?! together| even)',
    example: 'The block is 12½" square «including seam allowances».',
    counterexample: 'The block finishes at 12" square.',
  },
  {
    says: 'state:measured',
    words:
      '(?:should|must|will|to|now|they|it|each|top|which|then|block|blocks|unit|center|centre|work|piece|quilt) (?:now |then |still |all |both |each )*(?:measures?|measuring)|(?:should|must|will|to) (?:now |then |still |all |both |each )*be|measures?(?! (?:the|your|it|twice|through))|comes to|(?:is|are|’s) now|(?<=square|wide|long|deep) now|now (?:measures?|is|has|have)',
    example: 'The block «should measure» 12½" square.',
    counterexample: 'Measure the quilt through the middle.',
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
      'finish(?:ed|es)(?! the| your| size of your| with)(?: (?:size|quilt|block))?|finish(?= at|\\W{0,3}\\d)|(?:will|to|they|blocks?|units?) finish|when finished|in the finished|size of (?:the )?(?:quilt|blocks?)|(?:quilt|throw|topper|runner|hanging|overall) sizes?',
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
    words: 'long|in length|lengths?(?! of fabric| of the fabric)|down',
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
    words: 'wide|in width|across(?! the (?:width|fabric|full|seam))|width(?! of (?:the )?fabric)',
    example: 'Cut strips 2" «wide».',
    counterexample: 'Cut strips across the fabric.',
  },
  {
    says: 'axis:per row',
    words:
      'rows? (?:of|with)|(?:in|to|per|for) (?:a|each|every|one|the) row|per row|each row (?:has|takes)|across(?= (?:and|by))',
    example: 'Sew 7 «rows of» 6 blocks.',
    counterexample: 'Sew 7 rows.',
  },
  {
    says: 'axis:both',
    words: '(?<=["”″]|in|inch|inches|cm) ?square(?!s)|each way|both ways|diameter',
    example: 'The block is 12½" «square».',
    counterexample: 'Cut a square.',
  },
  {
    says: 'axis:side',
    words:
      '(?:long |longer )?sides?(?! of (?:the|each|every|that) (?:\\w+ )?line| together| facing| triangles?| setting| up| by side)',
    example: 'Cut the «side» borders 48½" long.',
    counterexample: 'Sew right sides together.',
  },
  {
    says: 'axis:top',
    words:
      'top (?:and|\\/|&|or) (?:the )?bottom|tops? and bottoms?|ends(?= of the quilt)|short (?:ones|sides|borders)',
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
      'at least|(?:a )?total of|to total|in total|reach(?:es)?|enough(?: for| to)?|in all|(?:you|we) (?:need|want|have|will need)|lengths? of|long enough|call it',
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
    words: 'edges?(?! (?:of each|even|together|to edge))|around|circumference|perimeter',
    example: 'The «edge» is 180".',
    counterexample: 'Lay them edges even.',
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
      '(?:for |in |of |to )?(?:each|every|one|a|per) (?:\\w+ )?(?:block|star|unit)(?! unit)|(?:each|every) (?:block|one) (?:has|needs|uses|takes)|lay out|arrange|(?:take|choose|gather)(?= )',
    example: '«For each block» you need four units.',
    counterexample: 'Make 20 blocks.',
  },
  {
    says: 'scope:container',
    words:
      '(?:from|per|for|of|in) (?:each|every|one) (?:of the )?(?:fat|strip|set|pair|fabric|colou?r|print|square|quarter|half|WOF|yard|row)\\w*|(?:each|every) (?:strip|pair|set)|(?:a|one) strip (?:gives|yields)|per (?:strip|fat|row|set)',
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
