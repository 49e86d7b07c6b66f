// Reports written in other forms, issued and verified, by the commands that a user runs.
import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { diagnosticsOf, openFile, replaceText, test, untilTrue, uriOf, writeFile } from './harness.ts';

const house = `firm "Alder and Rowe, Surveyors" { address: "2 Quay Lane"  telephone: "555 0100"  paper: letter }
person A-Rowe "Ada Rowe" { role: "Surveyor"  credentials: "Surveying since 2001" }
person B-Rowe "Bo Rowe" { role: "Clerk" }
`;
const heron = (number: string) => `use "house"

survey "${number}" part-survey {
    client: "B. Lindqvist"
    surveyor: A-Rowe
    purpose: "Rig only"
    attended 2026-01-20 ashore "North yard"
}

vessel "Heron" { type: sailing-yacht  length-overall: 31 ft }

system rig "Rig" {
    mast MA1 "Mast" { condition: sound  basis: seen }
    finding F1 "Sheave worn" on MA1 {
        urgency: within-days 30
        seen: "The sheave at the masthead is worn to one side."
        because: "The halyard chafes on its cheek."
        recommend: "Renew the sheave at the masthead."
    }
}
`;

const isError = (d: vscode.Diagnostic) => d.severity === vscode.DiagnosticSeverity.Error;

/** A survey in a folder of its own that is ready to be issued, opened. */
async function ready(folder: string): Promise<vscode.TextDocument> {
  await writeFile(`${folder}/house.survey`, house);
  await writeFile(`${folder}/heron.survey`, heron(`AR-${folder.toUpperCase()}`));
  const { document } = await openFile(`${folder}/heron.survey`);
  // The finding without a photograph is told, and the house file, just written, is no longer missed.
  await diagnosticsOf(document.uri, (all) => all.length > 0 && !all.some(isError));
  return document;
}

const bytesOf = async (path: string) => Buffer.from(await vscode.workspace.fs.readFile(uriOf(path)));

async function namesIn(path: string): Promise<string[]> {
  try {
    return (await vscode.workspace.fs.readDirectory(uriOf(path))).map(([name]) => name).sort();
  } catch {
    return []; // there is no such folder
  }
}

interface Verified { readonly name: string; readonly verdict: string; readonly faults: readonly string[] }
const verify = (folder: string) => vscode.commands.executeCommand<Verified[] | undefined>('garboard.verifyIssues', uriOf(folder));

test('a report is written in every form that is chosen', async () => {
  await ready('forms');
  const forms = ['html', 'pdf', 'docx', 'csv', 'json'];
  const paths = await vscode.commands.executeCommand<string[]>('garboard.writeReportAs', { document: 'report', forms });
  assert.deepEqual(paths, forms.map((form) => uriOf(`forms/out/heron.${form}`).fsPath));
  assert.match((await bytesOf('forms/out/heron.html')).toString(), /^<!DOCTYPE html>[^]*Heron/i);
  assert.equal((await bytesOf('forms/out/heron.pdf')).subarray(0, 5).toString(), '%PDF-');
  assert.equal((await bytesOf('forms/out/heron.docx')).subarray(0, 2).toString(), 'PK');
  assert.match((await bytesOf('forms/out/heron.csv')).toString(), /Renew the sheave at the masthead/);
  assert.equal(JSON.parse((await bytesOf('forms/out/heron.json')).toString()).survey.number, 'AR-FORMS');
}, 120_000);

test('the shorter papers carry their kind in the name', async () => {
  await ready('letters');
  for (const document of ['work-list', 'urgent-letter', 'compliance-letter']) {
    const paths = await vscode.commands.executeCommand<string[]>('garboard.writeReportAs', { document, forms: ['html'] });
    assert.deepEqual(paths, [uriOf(`letters/out/heron-${document}.html`).fsPath]);
  }
  assert.equal((await namesIn('letters/out')).length, 3);
}, 90_000);

test('the paper of the settings goes before that of the firm', async () => {
  await ready('paper');
  const settings = vscode.workspace.getConfiguration('garboard', uriOf('paper/heron.survey'));
  const written = async () => {
    await vscode.commands.executeCommand('garboard.writeReport');
    return (await bytesOf('paper/out/heron.html')).toString();
  };
  assert.match(await written(), /@page[^}]*size:\s*letter/i);
  await settings.update('report.paper', 'a4', vscode.ConfigurationTarget.Workspace);
  try {
    assert.match(await written(), /@page[^}]*size:\s*a4/i);
  } finally {
    await settings.update('report.paper', undefined, vscode.ConfigurationTarget.Workspace);
  }
}, 90_000);

test('a report that is issued is verified, and a changed byte is told', async () => {
  await ready('issue');
  const folder = await vscode.commands.executeCommand<string>('garboard.issueReport', 'Ada Rowe');
  assert.equal(folder, uriOf('issue/issued/AR-ISSUE-issue-1').fsPath);
  assert.match((await bytesOf('issue/issued/AR-ISSUE-issue-1/report.html')).toString(), /Ada Rowe/);
  const untouched = await verify('issue');
  assert.deepEqual(untouched?.map(({ verdict, faults }) => ({ verdict, faults })), [{ verdict: 'unchanged', faults: [] }]);

  const copy = 'issue/issued/AR-ISSUE-issue-1/sources/heron.survey.txt';
  await writeFile(copy, (await bytesOf(copy)).toString().replace('31 ft', '32 ft'));
  const [touched] = await verify('issue') ?? [];
  assert.equal(touched?.verdict, 'changed');
  assert.deepEqual(touched?.faults, ['sources/heron.survey.txt: changed']);
}, 90_000);

test('nobody issues a report with a problem open, or signs whom the survey does not name', async () => {
  const document = await ready('refused');
  assert.equal(await vscode.commands.executeCommand('garboard.issueReport', 'Bo Rowe'), undefined);
  await replaceText(document, heron('AR-REFUSED').replace('finding F1 "Sheave worn" on MA1 {', 'finding F1 "Sheave worn" on MA2 {'));
  await document.save();
  await diagnosticsOf(document.uri, (all) => all.some(isError));
  assert.equal(await vscode.commands.executeCommand('garboard.issueReport', 'Ada Rowe'), undefined);
  assert.deepEqual(await namesIn('refused/issued'), []);
  await replaceText(document, heron('AR-REFUSED'));
  await document.save();
  await diagnosticsOf(document.uri, (all) => !all.some(isError));
  assert.ok(await vscode.commands.executeCommand('garboard.issueReport', 'Ada Rowe'));
}, 90_000);

test('a survey that was never saved is neither issued nor written', async () => {
  const document = await vscode.workspace.openTextDocument({ language: 'garboard', content: heron('AR-untitled').replace('use "house"', house) });
  await vscode.window.showTextDocument(document);
  assert.equal(await vscode.commands.executeCommand('garboard.issueReport', 'Ada Rowe'), undefined);
  assert.equal(await vscode.commands.executeCommand('garboard.writeReportAs', { document: 'report', forms: ['html'] }), undefined);
}, 60_000);

test('a folder without an issue is told, not taken for verified', async () => {
  await writeFile('none/readme.txt', 'nothing');
  assert.equal(await verify('none'), undefined);
});

test('a finding of an earlier report is taken up by a quick-fix', async () => {
  const { document } = await openFile('marram-again/marram-again.survey');
  await untilTrue(async () => (await vscode.commands.executeCommand<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', document.uri))?.length, 'the outline');
  const whole = document.getText();
  const start = whole.indexOf('    finding F2 ');
  const end = whole.indexOf('    finding F3 ');
  await replaceText(document, whole.slice(0, start) + whole.slice(end));
  const problem = (await diagnosticsOf(document.uri, (all) => all.some((d) => /\bF2\b/.test(d.message)))).find((d) => /\bF2\b/.test(d.message));
  assert.ok(problem);
  const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>('vscode.executeCodeActionProvider', document.uri, problem.range, vscode.CodeActionKind.QuickFix.value, 100);
  const take = actions.find(({ title }) => /take .*up/i.test(title));
  assert.ok(take?.edit, actions.map(({ title }) => title).join(', '));
  assert.ok(await vscode.workspace.applyEdit(take.edit));
  assert.match(document.getText(), /finding F2 "Disused condenser outlet/);
}, 60_000);
