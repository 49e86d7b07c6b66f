import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { extension, test, workspaceFolder, writeFile } from './harness.ts';

test('workbench runs', async () => {
  assert.match(vscode.version, /^1\./);
  assert.ok((await vscode.workspace.fs.stat(workspaceFolder())).type & vscode.FileType.Directory);
});

test('the workspace can be searched for files', async () => {
  const uri = await writeFile('searched/for.txt', 'found\n');
  const found = await vscode.workspace.findFiles('searched/*.txt');
  assert.deepEqual(found.map(String), [String(uri)]);
  await vscode.workspace.fs.delete(uri);
});

test('the extension under test is the one that was meant', async () => {
  const { extensionPath } = await extension();
  const expected = process.env.GARBOARD_TEST_EXTENSION_FOLDER;
  assert.ok(expected, 'the runner names the folder that the extension is to come from');
  assert.ok(extensionPath === expected || extensionPath.startsWith(`${expected}/`), `${extensionPath} is not in ${expected}`);
});
