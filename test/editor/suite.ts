import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { extension, test, workspaceFolder } from './harness.ts';

test('workbench runs', async () => {
  assert.match(vscode.version, /^1\./);
  assert.ok((await vscode.workspace.fs.stat(workspaceFolder())).type & vscode.FileType.Directory);
});

test('the extension under test is the one that was meant', async () => {
  const { extensionPath } = await extension();
  const expected = process.env.GARBOARD_TEST_EXTENSION_FOLDER;
  assert.ok(expected, 'the runner names the folder that the extension is to come from');
  assert.ok(extensionPath === expected || extensionPath.startsWith(`${expected}/`), `${extensionPath} is not in ${expected}`);
});
import { applyAction, codeActions, completions, diagnosticsOf, hover, labelOf, openFile, tab, writeFile } from './harness.ts';
test('dummy', async () => {
  const uri = await writeFile('sub/x.survey', 'a\nthis is wrong\n');
  const e = await openFile('sub/x.survey');
  const d = await diagnosticsOf(uri);
  const a = await codeActions(uri, d[0]!.range);
  await applyAction(a[0]!);
  await diagnosticsOf(uri, (x) => x.length === 0);
  assert.equal(e.document.getText(), 'a\nthis is right\n');
  assert.ok((await completions(uri, new vscode.Position(0, 0))).some((i) => labelOf(i) === 'vessel'));
  assert.equal(await hover(uri, new vscode.Position(0, 0)), 'Hovered **here**');
  await vscode.commands.executeCommand('garboard.hello');
  await tab((l) => l === 'Got hi');
});
test('fails on purpose', async () => { await openFile('sub/x.survey'); assert.equal(1, 2); });
test('hangs', () => new Promise(() => {}), 3000);
