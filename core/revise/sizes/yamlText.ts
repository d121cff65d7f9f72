/** Words as they must stand in a block of YAML to mean themselves. */

const PLAIN_IN_BLOCK = /^[\p{L}\p{N}…½¼¾⅓⅔⅛⅜⅝⅞.(](?:(?!: |:$| #)[^\n\r])*$/u;
const ENDS_IN_BRACES = /[,[\]{}]/;

/** @param inBraces whether it stands in `{ … }` or `[ … ]`, where a comma ends a value */
export function yamlText(text: string, inBraces: boolean): string {
  const isPlain =
    PLAIN_IN_BLOCK.test(text) && !text.endsWith(' ') && !(inBraces && ENDS_IN_BRACES.test(text));
  return isPlain ? text : `'${text.replaceAll("'", "''")}'`;
}
