/** A word processor's file as HTML, read by mammoth, which keeps what a text means and forgets how it looks. */
import mammoth from 'mammoth';

/** Styles in which measure blocks and other code stand, one paragraph a line. */
const STYLES = ['Source Code', 'HTML Preformatted'].map(
  (name) => `p[style-name='${name}'] => pre:separator('\\n')`,
);

/** @throws when it is no such file */
export async function wordFileToHtml(bytes: Uint8Array): Promise<string> {
  const { value } = await mammoth.convertToHtml(
    { buffer: Buffer.from(bytes) },
    {
      styleMap: STYLES,
      externalFileAccess: false,
      // Pictures are left out, and counted where all that is left out is counted.
      convertImage: mammoth.images.imgElement(async () => ({ src: '' })),
    },
  );
  return value;
}
