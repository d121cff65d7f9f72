/** Which part of the quilt is meant. */
import type { LexiconRow } from './row.ts';

export const PART_WORDS: readonly LexiconRow[] = [
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
      'usable|WOF(?= =)|fabric (?:is|was|measures)|once the selv(?:a|ed)ges|(?:fabric|yardage|cloth|everything|all) (?:that is )?(?:at least )?(?=\\S+ (?:wide|inches wide|between|selvage))|wide fabric|fabric widths?|between the selv(?:a|ed)ges|selv(?:a|ed)ges? (?:removed|off|trimmed|are)|after trimming|widths? of (?:the )?fabric(?= =)|(?:fabric|cloth|yardage),? \\(?(?:all )?\\d\\S* (?:wide|inches wide)|of which (?:we use|you (?:can )?use)?|can be used|(?:I|we) (?:figure|count|reckon) on(?=[^.;]{0,30} (?:fabric|width))|of width',
    example: 'All yardage assumes 40" of «usable» width.',
    counterexample: 'Cut 5 strips by the width of fabric.',
  },
  {
    says: 'part:seam',
    words:
      'seam(?:s|lines?)?(?: allowances?)?|on (?:each|either|both) sides? of (?:the|each|every|that|this) (?:drawn |marked |pencil(?:led)? |diagonal )?(?:line|diagonal)s?|(?:from|away from|outside|beside|beyond|off|past|above|either side of)(?! corner to) (?:(?:the|each|every|both|your|a) )?(?:drawn |marked |sewn |sewing |stitched |inner )?(?:lines?|points?|stitching|seams?|it|corners?)|presser foot|to the left and (?:to the )?right of',
    example: 'Sew with a ¼" «seam allowance».',
    counterexample: 'Sew ten strips together.',
  },
  {
    says: 'part:joining',
    words:
      '(?:extra|more|allow\\w*)? ?(?:for|to) (?:the )?(?:corners?,? and|(?:\\p{L}+ )?joins?|joining|mitred? corners|mitering|mitring|overlap|closing|finishing the ends)|for corners',
    example: 'Add 12" «for joining».',
    counterexample: 'Join the strips.',
  },
  {
    says: 'part:overhang',
    words:
      '(?:larger|bigger|more|wider|extra|beyond|to spare|excess|margin|past|overhang)\\b[^.;]{0,40}?\\b(?:(?:on )?(?:each|every|all|either|both)(?: four| the)? (?:sides?|edges?|way)|all (?:the way )?round|all around|top)|on (?:each|every|all) (?:four )?sides?(?= of the (?:quilt|top))|of (?:the )?(?:backing|batting|wadding)[^.;]{0,30} on (?:all|each|every) (?:four )?sides?|(?:larger|bigger) than (?:the|your) (?:quilt )?top|overhang|excess (?:on |per )?(?:each |every |all )?sides?|(?<=(?:["”″]|in|inch|inches|cm) )(?:to spare )?(?:all (?:the way )?(?:a)?round|all around)',
    example: 'Cut the backing 4" «larger than the top on every side».',
    counterexample: 'Sew a border to each side.',
  },
];
