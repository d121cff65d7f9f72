/** Hears of files that change outside of the editor, and of those that the author renames or deletes in it. */
import {
  DidChangeWatchedFilesNotification,
  FileChangeType,
  type FileOperationRegistrationOptions,
  type ServerCapabilities,
} from 'vscode-languageserver';
import type { BaseContext } from '../context.ts';
import { guarded, sent } from '../guard.ts';
import type { Workspace } from './workspace.ts';

const MARKDOWN = '**/*.{md,markdown}';
/** What Git ignores is no manuscript of the workspace. */
const IGNORE_FILE = '.gitignore';

/** A folder that moves takes its manuscripts along, and no watcher tells of each. */
const MOVED: FileOperationRegistrationOptions = {
  filters: [
    { scheme: 'file', pattern: { glob: '**', matches: 'folder' } },
    { scheme: 'file', pattern: { glob: MARKDOWN, matches: 'file' } },
  ],
};

export const FILE_OPERATIONS: NonNullable<ServerCapabilities['workspace']> = {
  fileOperations: { didRename: MOVED, didDelete: MOVED },
};

export function watch({ connection, client, onInitialized }: BaseContext, workspace: Workspace): void {
  const relist = () => guarded(connection, 'Looking for files', undefined, () => workspace.relist());
  connection.workspace.onDidRenameFiles(relist);
  connection.workspace.onDidDeleteFiles(relist);
  connection.onDidChangeWatchedFiles(({ changes }) =>
    guarded(connection, 'Looking at changed files', undefined, async () => {
      const isChange = ({ type, uri }: (typeof changes)[number]) =>
        type === FileChangeType.Changed && !uri.endsWith(IGNORE_FILE);
      for (const { uri } of changes.filter(isChange)) await workspace.changed(uri);
      const others = changes.filter((change) => !isChange(change));
      if (others.length === 0) return;
      await workspace.relist();
      // A file that is ignored may be used all the same.
      for (const { uri } of others) if (!(await workspace.isListed(uri))) await workspace.changed(uri);
    }),
  );
  if (!client.watchedFilesRegistration) return;
  onInitialized(() => {
    const watchers = [{ globPattern: MARKDOWN }, { globPattern: `**/${IGNORE_FILE}` }];
    const registration = connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
    sent(connection, 'Registering for changed files', registration);
  });
}
