/** Numbers that only find something: telephones, houses, post codes, web addresses, articles, standards. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger, runAround } from '../sights.ts';

const STREET =
  '(?:Street|St|Road|Rd|Lane|Ln|Avenue|Ave|Drive|Dr|Terrace|Crescent|Gardens|Boulevard|Blvd|Highway|Hwy|Parade|Quay|Mews|Hill|Way)';

export const ADDRESSES = [
  {
    reason: 'telephone number',
    before: /\b(?:tel|telephone|phone|call|ring|fax|mobile|text)\b[^\p{L}]{0,24}$/iu,
    when: ({ number, text }) =>
      number.unit === undefined && number.value.compare(100) >= 0 && !countsPieces(text, number.end),
    example: 'Telephone: 7946 «0958».',
    counterexample: 'Call the «4» corner squares A.',
  },
  {
    reason: 'telephone number',
    around:
      /(?:\+\d{1,3}(?:[\s.-]?\(?\d{1,5}\)?){2,5}|\(\d{2,5}\)\s?\d{3,4}[\s.-]?\d{3,4}|(?<![\d.,/-])0\d{2,4}(?:[\s-]\d{3,8}){1,2}|(?<![\d.,/-])0\d(?:[\s.]\d\d){4})(?!\d)/g,
    example: 'Enquiries to Winifred, 01632 «960147».',
    counterexample: 'Enquiries from Winifred, 1632 «960» squares.',
  },
  {
    reason: 'telephone number',
    when: ({ number, text }) => /^(?:\+?\d[-.])?(?:\d{3}[-.])?\d{3}[-.]\d{4}$/.test(runAround(text, number)),
    example: 'Questions? 555-«0142».',
    counterexample: 'Cut 30-«6»" squares.',
  },
  {
    reason: 'web address',
    around:
      /(?:[\w.+-]+@[\w-]+\.[\w.-]*\w|(?<![\w.])[\w-]*[A-Za-z][\w-]*\.(?:com|org|net|shop|blog|info|example|co\.uk|com\.au|co\.nz|ca|de|uk|au|nz)\b(?:\/[\w./?=&%-]*)?|[@#]\p{L}[\p{L}\d_.]*)/gu,
    example: 'More at gullrock.example/share/«207».',
    counterexample: 'Gull, rock and kelp blocks/share/«20» each.',
  },
  {
    reason: 'address',
    before: /(?:^|[,:;(|·•]\s?|\n|\b(?:at|to|in|visit)\s)$/i,
    behind: new RegExp(`^[a-d]?,?\\s(?:\\p{Lu}[\\p{L}'’-]+\\s){1,3}${STREET}\\b\\.?(?!\\s\\p{Ll})`, 'u'),
    when: ({ number }) => isBareInteger(number, 1, 9999),
    example: 'By post: Gull Rock, «14» Harbour Street.',
    counterexample: 'By dusk: Gull Rock, «14» Harbour Street blocks.',
  },
  {
    reason: 'address',
    before: /\b(?:P\.?\s?O\.?\s?Box|RD|RR)\s$/,
    when: ({ number }) => number.unit === undefined,
    example: 'Write to PO Box «207».',
    counterexample: 'Fill the box: «207» squares.',
  },
  {
    reason: 'post code',
    around:
      /\b(?:[A-Z]{1,2}\d[A-Z\d]?\s\d[A-Z]{2}|(?:[A-Z]{2}|NSW|VIC|QLD|TAS|ACT)\s(?:\d{5}(?:-\d{4})?|\d{4}))(?![\w"”″])/g,
    when: ({ number, text }) => !countsPieces(text, number.end),
    example: 'Write to us in Hay NSW «2711».',
    counterexample: 'Write to us for the SW «2711» squares.',
  },
  {
    reason: 'article number',
    before:
      /\b(?:sku|item|style|art(?:icle)?|isbn|issn|ean|upc|ref|reference|dye\slot|catalogue|cat)\b\.?\s?(?:(?:no|number)\.?:?\s?|#\s?|:\s?)?[\w-]{0,20}$/i,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Plum, style «4011».',
    counterexample: 'In country style «40» blocks look best.',
  },
  {
    reason: 'article number',
    when: ({ number, text }) =>
      number.unit === undefined &&
      /^\d{5,}(?:-\d+)*$/.test(runAround(text, number)) &&
      !countsPieces(text, number.end),
    example: 'Plum, 40118-«22».',
    counterexample: 'Cut «12000» hexagons.',
  },
  {
    reason: 'article number',
    when: ({ number, text }) =>
      number.unit === undefined &&
      /^\d{4}-\d{2,4}$/.test(runAround(text, number)) &&
      !countsPieces(text, number.end),
    example: 'Linen | «7720»-33 | ⅜ yard',
    counterexample: 'Linen: «7720» squares',
  },
  {
    reason: 'number of a standard',
    before: /\b(?:ISO|EN|BS|ASTM|DIN|AS\/NZS|CFR)\s?[A-Z]?[\d\s:-]{0,8}$/,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'The filling is tested to EN «71»-3.',
    counterexample: 'The filling of pattern EN takes «71» tufts.',
  },
] as const satisfies readonly Recogniser[];
