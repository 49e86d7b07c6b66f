import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import {
  applyAction, codeActions, codeOf, completions, diagnosticsOf, extension, hover, labelOf, openFile, rangeOf, replaceText, tab, test, untilTrue, uriOf, workspaceFolder, writeFile,
} from './harness.ts';

const unfit = `survey "1" pre-purchase { attended 2026-10-06 ashore "yard" }
vessel "Dunlin" { water: salt }
system skin "Openings" {
    through-hull TH1 "Sink drain" { size: 1-1/2 in  metal: gunmetal  below-waterline: 14 in }
    seacock SC1 "Sink valve" { size: 1-1/2 in  metal: gunmetal  pattern: flanged-seacock  spigot: 1-1/2 in }
    hose H1 "Sink hose" { bore: 1-1/4 in  reinforcement: wire }
    sink S1 { rim-above-waterline: 1 ft }

    run R1 "Sink drain": TH1 -> SC1 -> H1 -> S1
}
`;

const fit = 'hose-and-spigot-differ';
const hasFit = (all: vscode.Diagnostic[]) => all.some((d) => codeOf(d) === fit);

async function opened(name: string, text: string): Promise<vscode.TextEditor> {
  await writeFile(name, text);
  return openFile(name);
}

function at(document: vscode.TextDocument, passage: string, into = 1, occurrence = 1): vscode.Position {
  return document.positionAt(document.offsetAt(rangeOf(document, passage, occurrence).start) + into);
}

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

test('problems show with figures and follow the text', async () => {
  const { document } = await opened('fit.survey', unfit);
  assert.equal(document.languageId, 'garboard');
  const found = (await diagnosticsOf(document.uri, hasFit)).find((d) => codeOf(d) === fit);
  assert.match(found?.message ?? '', /1-1\/4 in/);
  assert.match(found?.message ?? '', /6\.35 mm/);
  assert.equal(found?.severity, vscode.DiagnosticSeverity.Error);
  await replaceText(document, unfit.replace('bore: 1-1/4 in', 'bore: 38 mm'));
  await diagnosticsOf(document.uri, (all) => !hasFit(all));
});

test('a finding drafted by the quick-fix answers its problem, and one undo takes it back', async () => {
  const { document } = await opened('draft.survey', unfit);
  const problem = (await diagnosticsOf(document.uri, hasFit)).find((d) => codeOf(d) === fit);
  assert.ok(problem);
  const actions = await codeActions(document.uri, problem.range, vscode.CodeActionKind.QuickFix);
  const draft = actions.find((a) => a.title.startsWith('Draft a finding'));
  assert.ok(draft, actions.map((a) => a.title).join(', '));
  await applyAction(draft);
  await diagnosticsOf(document.uri, (all) => !hasFit(all));
  assert.match(document.getText(), /finding F1 ".*" on H1, SC1 \{/);
  assert.match(document.getText(), /answers: hose-and-spigot-differ/);
  await vscode.commands.executeCommand('undo');
  assert.equal(document.getText(), unfit);
  await diagnosticsOf(document.uri, hasFit);
});

test('an adapter is put into the run and declared', async () => {
  const { document } = await opened('adapter.survey', unfit);
  const problem = (await diagnosticsOf(document.uri, hasFit)).find((d) => codeOf(d) === fit);
  assert.ok(problem);
  const actions = await codeActions(document.uri, problem.range, vscode.CodeActionKind.QuickFix);
  const insert = actions.find((a) => /stepped adapter/i.test(a.title));
  assert.ok(insert, actions.map((a) => a.title).join(', '));
  await applyAction(insert);
  assert.match(document.getText(), /stepped-adapter (\w+) \{ ends: /);
  assert.match(document.getText(), /SC1 -> \w+ -> H1/);
  await diagnosticsOf(document.uri, (all) => !hasFit(all));
});

test('an acceptance waits for its reason', async () => {
  const { document } = await opened('accept.survey', unfit);
  const problem = (await diagnosticsOf(document.uri, hasFit)).find((d) => codeOf(d) === fit);
  assert.ok(problem);
  const accept = (await codeActions(document.uri, problem.range, vscode.CodeActionKind.QuickFix)).find((a) => a.title.startsWith('Accept'));
  assert.ok(accept);
  await applyAction(accept);
  await diagnosticsOf(document.uri, (all) => !hasFit(all) && all.some((d) => codeOf(d) === 'reason-missing'));
  const editor = vscode.window.activeTextEditor;
  assert.ok(editor?.selection.isEmpty);
  const here = editor.selection.active;
  await editor.edit((edit) => edit.insert(here, 'Seen to hold; renewed at the next haul-out.'));
  await diagnosticsOf(document.uri, (all) => !all.some((d) => d.severity === vscode.DiagnosticSeverity.Error));
});

test('all open problems of a file become findings by one command', async () => {
  const { document } = await opened('all.survey', unfit.replace('pattern: flanged-seacock', 'pattern: gate-valve  works: seized'));
  await diagnosticsOf(document.uri, hasFit);
  await vscode.commands.executeCommand('garboard.draftAllFindings');
  await diagnosticsOf(document.uri, (all) => !all.some((d) => d.severity === vscode.DiagnosticSeverity.Error));
  assert.ok((document.getText().match(/^ {4}finding F\d/gm) ?? []).length > 1);
});

test('completion offers kinds, properties, words, materials, ids and photographs', async () => {
  const text = unfit.replace('    sink S1', '    \n    sink S1').replace('reinforcement: wire }', 'reinforcement: wire  condition:  \n    }');
  const { document } = await opened('complete.survey', text);
  await diagnosticsOf(document.uri);
  const offered = async (position: vscode.Position) => (await completions(document.uri, position)).map(labelOf);
  const blank = rangeOf(document, '    \n    sink').start.translate(0, 4);
  assert.ok((await offered(blank)).includes('seacock'));
  assert.ok((await offered(at(document, 'condition: ', 11))).includes('perished'));
  assert.ok((await offered(at(document, 'metal: gunmetal', 7))).includes('silicon-bronze'));
  assert.ok((await offered(at(document, '-> H1', 3))).includes('S1'));
  const inside = at(document, '  reinforcement', 1);
  assert.ok((await offered(inside)).some((label) => label.startsWith('clamps')));
});

test('hover tells both unit systems and what the catalogue says', async () => {
  const { document } = await opened('hover.survey', unfit);
  await diagnosticsOf(document.uri);
  assert.match(await hover(document.uri, at(document, '1-1/4 in')), /31\.8 mm/);
  assert.match(await hover(document.uri, at(document, 'gunmetal')), /gunmetal/i);
  assert.match(await hover(document.uri, at(document, 'TH1 "Sink')), /Through-hull/i);
});

test('go to definition, references and rename know every place of an id', async () => {
  const text = unfit.replace('\n}\n', '\n\n    finding F1 "Old hose" on H1 {\n        seen: "The hose has a bore of {H1.bore}."\n    }\n}\n');
  const { document } = await opened('names.survey', text);
  await diagnosticsOf(document.uri);
  const use = at(document, '-> H1', 4);
  const definitions = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>('vscode.executeDefinitionProvider', document.uri, use);
  assert.ok(definitions.length > 0);
  const references = await vscode.commands.executeCommand<vscode.Location[]>('vscode.executeReferenceProvider', document.uri, use);
  assert.equal(references.length, 4);
  const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>('vscode.executeDocumentRenameProvider', document.uri, use, 'H7');
  assert.ok(await vscode.workspace.applyEdit(edit));
  assert.equal(document.getText(), text.replaceAll('H1 "Sink hose"', 'H7 "Sink hose"').replace('-> H1 ->', '-> H7 ->').replace('on H1 {', 'on H7 {').replace('{H1.bore}', '{H7.bore}'));
});

test('outline, folding, semantic tokens, inlay hints, links and lenses answer', async () => {
  const { document } = await openFile('marram/openings.survey');
  await untilTrue(async () => (await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', document.uri))?.length, 'the outline');
  const whole = new vscode.Range(0, 0, document.lineCount, 0);
  assert.ok((await vscode.commands.executeCommand<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', document.uri)).length > 10);
  const tokens = await untilTrue(async () => vscode.commands.executeCommand<vscode.SemanticTokens | undefined>('vscode.provideDocumentSemanticTokens', document.uri), 'semantic tokens');
  assert.ok(tokens.data.length > 500);
  assert.ok((await vscode.commands.executeCommand<vscode.InlayHint[]>('vscode.executeInlayHintProvider', document.uri, whole)).length > 20);
  const links = await vscode.commands.executeCommand<vscode.DocumentLink[]>('vscode.executeLinkProvider', document.uri);
  assert.ok(links.some((link) => link.target?.path.endsWith('.jpg')));
  assert.ok((await vscode.commands.executeCommand<vscode.CodeLens[]>('vscode.executeCodeLensProvider', document.uri, 50)).length > 0);
});

test('formatting lays a file out and then leaves it alone', async () => {
  const { document } = await opened('format.survey', unfit.replaceAll('    ', ' ').replace('size: 1-1/2 in  metal', 'size:1-1/2 in metal'));
  await diagnosticsOf(document.uri);
  await vscode.commands.executeCommand('editor.action.formatDocument');
  assert.equal(document.getText(), unfit);
  const again = await vscode.commands.executeCommand<vscode.TextEdit[] | undefined>('vscode.executeFormatDocumentProvider', document.uri, { tabSize: 4, insertSpaces: true });
  assert.equal(again?.length ?? 0, 0);
});

test('the report opens beside the text and is written as a file', async () => {
  await openFile('marram/marram.survey');
  await untilTrue(async () => (await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', uriOf('marram/marram.survey')))?.length, 'the outline');
  await vscode.commands.executeCommand('garboard.preview');
  await tab((label) => label.startsWith('Report'));
  await openFile('marram/marram.survey');
  void vscode.commands.executeCommand('garboard.writeReport');
  const written = await untilTrue(async () => {
    try {
      return new TextDecoder().decode(await vscode.workspace.fs.readFile(uriOf('marram/out/marram.html')));
    } catch {
      return undefined;
    }
  }, 'the report', 40_000);
  assert.match(written, /^<!DOCTYPE html>/i);
  assert.match(written, /Marram/);
  assert.ok(written.includes('data:image/jpeg;base64,'));
}, 90_000);

test('the answered survey has no open problem in any of its files', async () => {
  for (const name of ['marram', 'openings', 'propulsion', 'systems']) {
    const { document } = await openFile(`marram/${name}.survey`);
    await untilTrue(async () => (await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', document.uri))?.length, 'the outline');
    assert.deepEqual(vscode.languages.getDiagnostics(document.uri).filter((d) => d.severity === vscode.DiagnosticSeverity.Error).map((d) => d.message), []);
  }
});

test('a check explains itself on a page of its own', async () => {
  const page = await vscode.workspace.openTextDocument(vscode.Uri.parse(`garboard-explain:/${fit}.md`));
  assert.match(page.getText(), /^# /);
  assert.match(page.getText(), /183\.558/);
});

test('go to definition of a kind opens the catalogue, read-only', async () => {
  const { document } = await opened('kinds.survey', unfit);
  await diagnosticsOf(document.uri);
  const [found] = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>('vscode.executeDefinitionProvider', document.uri, at(document, 'seacock SC1'));
  assert.ok(found);
  const uri = 'targetUri' in found ? found.targetUri : found.uri;
  assert.equal(uri.scheme, 'garboard-catalogue');
  const page = await vscode.workspace.openTextDocument(uri);
  assert.match(page.getText(), /kind seacock "Seacock" is valve/);
});
