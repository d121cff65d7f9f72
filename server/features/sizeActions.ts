/** Refactorings at the name of a size: add one beside it, drop it, put it before the one in front of it. */
import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { gapFor } from '../../core/findings/gap.ts';
import type { Proof } from '../../core/proof/proof.ts';
import type { Read } from '../../core/revise/revision.ts';
import type { SizeRequest } from '../../core/revise/sizes/change.ts';
import { reviseSizes } from '../../core/revise/sizes/reviseSizes.ts';
import { sizeAt } from '../../core/revise/sizes/sizeAt.ts';
import type { ClientAbilities } from '../abilities.ts';
import { toWorkspaceEdit } from '../workspaceEdits.ts';

/** What the new size is called until its author renames it. */
const NEW_SIZE = 'new size';

interface Offer {
  readonly title: string;
  readonly request: SizeRequest;
}

/** @param read proofreads a text that stands where the document stands */
export function sizeActions(
  document: TextDocument,
  proof: Proof,
  offset: number,
  read: Read,
  client: ClientAbilities,
): CodeAction[] {
  const place = sizeAt(proof, offset);
  if (!place) return [];
  return offers(place.size, proof).flatMap(({ title, request }) => {
    const revision = reviseSizes(document.getText(), request, read);
    if ('refusal' in revision) return [];
    const [computed, marked] = ['computed', 'left to write'].map((annotation, index) => ({
      annotation,
      edits: revision.edits.filter(({ text }) => isGap(text) === (index === 1)),
    }));
    const groups = [computed, marked].flatMap((group) => (group && group.edits.length > 0 ? [group] : []));
    const annotations = {
      computed: { label: title, needsConfirmation: false },
      'left to write': { label: 'Left to write', description: 'A mark stands here until you write it.' },
    };
    const edit = toWorkspaceEdit([{ document, isOpen: true, groups }], annotations, client);
    return [{ title, kind: CodeActionKind.RefactorRewrite, edit }];
  });
}

function isGap(text: string): boolean {
  return text.includes(gapFor(NEW_SIZE)) || text.includes(`${NEW_SIZE}: …`);
}

function offers(size: string, { pattern }: Proof): Offer[] {
  const names = pattern.sizes.map(({ name }) => name);
  const at = names.indexOf(size);
  const before = names[at - 1];
  return [
    { title: `Add a size behind “${size}”`, request: { kind: 'add', name: NEW_SIZE, after: size } },
    { title: `Drop the size “${size}”`, request: { kind: 'drop', name: size } },
    ...(before === undefined
      ? []
      : [
          {
            title: `Put the size “${size}” before “${before}”`,
            request: { kind: 'order', names: names.with(at - 1, size).with(at, before) } as const,
          },
        ]),
  ];
}
