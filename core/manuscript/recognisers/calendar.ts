/** The names of days and months, and how a range of hours is written: the source of regular expressions. */

export const MONTH =
  '(?:Jan(?:uary)?|Feb(?:ruary)?|Mar(?:ch)?|Apr(?:il)?|May|June?|July?|Aug(?:ust)?|Sept?(?:ember)?|Oct(?:ober)?|Nov(?:ember)?|Dec(?:ember)?)';
export const DAY = '(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)days?';
export const UNTIL = '\\s?(?:to|until|till|[-–—])\\s?';
/** Hours, perhaps with minutes. */
export const CLOCK = '(?:[01]?\\d|2[0-3])(?:[.:][0-5]\\d)?';
