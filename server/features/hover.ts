/** The working behind a number, a stated value or an entry of the block. */
import { MarkupKind } from 'vscode-languageserver';
import { explain } from '../../core/report/explanation.ts';
import { toMarkdown, toPlainText } from '../../core/report/explanationText.ts';
import type { Feature } from '../context.ts';
import { guarded } from '../guard.ts';
import { toRange } from '../positions.ts';

export const hover: Feature = {
  capabilities: () => ({ hoverProvider: true }),
  register({ connection, documents, client }) {
    connection.onHover(({ textDocument, position }, token) =>
      guarded(connection, 'The explanation', null, async () => {
        const proofreading = await documents.proofreading(textDocument.uri, token);
        if (!proofreading?.proof) return null;
        const { document, proof } = proofreading;
        const explanation = explain(proof, document.offsetAt(position));
        if (!explanation) return null;
        const write = client.hoverFormat === MarkupKind.Markdown ? toMarkdown : toPlainText;
        const contents = { kind: client.hoverFormat, value: write(explanation) };
        return { contents, range: toRange(document, explanation.range) };
      }),
    );
  },
};
