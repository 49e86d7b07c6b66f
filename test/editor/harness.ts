// A small harness for tests that run inside VS Code's extension host. The same module runs in a desktop VS Code and
// in one served to a browser.
import { appendFileSync, readFileSync } from 'node:fs';
import { SourceMap } from 'node:module';
import { dirname, isAbsolute, resolve } from 'node:path';
import * as vscode from 'vscode';

interface Test { name: string; fn: () => unknown; limit: number }

const tests: Test[] = [];
const DEFAULT_LIMIT_MS = 60_000;

/** Registers a test. Tests run one after another, each in a workbench with no editor open. */
export function test(name: string, fn: () => unknown, limit = DEFAULT_LIMIT_MS): void {
  tests.push({ name, fn, limit });
}

/** Runs every registered test; rejects when any failed or there was none. GARBOARD_TEST_ONLY narrows them by name. */
export async function run(): Promise<void> {
  const only = process.env.GARBOARD_TEST_ONLY?.toLowerCase();
  const chosen = only ? tests.filter(({ name }) => name.toLowerCase().includes(only)) : tests;
  let failed = 0;
  record({ kind: 'plan', count: chosen.length });
  for (const { name, fn, limit } of chosen) {
    const started = Date.now();
    record({ kind: 'start', name });
    try {
      await closeEditors();
      await within(limit, name, fn);
      record({ kind: 'passed', name, ms: Date.now() - started });
      console.log(`  passed  ${name} (${Date.now() - started} ms)`);
    } catch (error) {
      failed++;
      const why = error instanceof Error ? inSource(error.stack ?? error.message) : String(error);
      record({ kind: 'failed', name, ms: Date.now() - started, why });
      console.log(`  FAILED  ${name} (${Date.now() - started} ms)\n${why.replace(/^/gm, '          ')}`);
      await new Promise((done) => setTimeout(done, 1_500)); // the runner takes a picture before the editors are closed
    }
  }
  record({ kind: 'end' });
  if (chosen.length === 0) throw new Error('There was no test to run.');
  if (failed > 0) throw new Error(`${failed} of ${chosen.length} failed.`);
}

/** Results go to the file that the runner reads, so that they do not depend on how a console is passed on. */
function record(result: Record<string, unknown>): void {
  const file = process.env.GARBOARD_TEST_RESULTS;
  if (file) appendFileSync(file, `${JSON.stringify(result)}\n`);
}

/** The stack with its places in the bundle turned into places in the tests. */
function inSource(stack: string): string {
  try {
    const map = new SourceMap(JSON.parse(readFileSync(`${__filename}.map`, 'utf8')));
    return stack.replace(/([^\s()]+):(\d+):(\d+)/g, (place, file, line, column) => {
      if (!String(file).endsWith(__filename)) return place;
      const entry = map.findEntry(Number(line) - 1, Number(column) - 1);
      if (!('originalSource' in entry)) return place;
      return `${resolve(dirname(__filename), entry.originalSource)}:${entry.originalLine + 1}:${entry.originalColumn + 1}`;
    });
  } catch {
    return stack;
  }
}

async function within(limit: number, name: string, fn: () => unknown): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const tooLong = new Promise<never>((_, fail) => {
    timer = setTimeout(() => fail(new Error(`"${name}" took longer than ${limit / 1000} s.`)), limit);
  });
  try {
    await Promise.race([Promise.resolve().then(fn), tooLong]);
  } finally {
    clearTimeout(timer);
  }
}

/** Waits until the function gives something other than false, undefined or null, and returns it. */
export async function untilTrue<T>(
  fn: () => T | Promise<T>, what: string, ms = 15_000,
): Promise<Exclude<T, false | null | undefined>> {
  const until = Date.now() + ms;
  for (;;) {
    const value = await fn();
    if (value !== false && value !== undefined && value !== null) return value as Exclude<T, false | null | undefined>;
    if (Date.now() >= until) throw new Error(`Waited ${ms / 1000} s for ${what}, in vain.`);
    await new Promise((done) => setTimeout(done, 50));
  }
}

/** The first folder of the workspace: a copy of `examples/` made for this run. */
export function workspaceFolder(): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (!folder) throw new Error('The workbench has no folder open.');
  return folder.uri;
}

export function uriOf(path: string): vscode.Uri {
  return isAbsolute(path) ? workspaceFolder().with({ path }) : vscode.Uri.joinPath(workspaceFolder(), path);
}

/** Opens a file of the workspace in the active editor. */
export async function openFile(relative: string): Promise<vscode.TextEditor> {
  const document = await vscode.workspace.openTextDocument(uriOf(relative));
  return vscode.window.showTextDocument(document, { preview: false });
}

/** Writes a file into the workspace and returns its address; it is not opened. */
export async function writeFile(relative: string, text: string): Promise<vscode.Uri> {
  const uri = uriOf(relative);
  await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(text));
  return uri;
}

/** Puts away every change and closes every editor. */
export async function closeEditors(): Promise<void> {
  for (const document of vscode.workspace.textDocuments) {
    if (!document.isDirty || document.isClosed) continue;
    await vscode.window.showTextDocument(document);
    await vscode.commands.executeCommand('workbench.action.files.revert');
  }
  await vscode.commands.executeCommand('workbench.action.closeAllEditors');
}

/** Replaces the whole text of a document, as typing would. */
export async function replaceText(document: vscode.TextDocument, text: string): Promise<void> {
  const edit = new vscode.WorkspaceEdit();
  edit.replace(document.uri, new vscode.Range(0, 0, document.lineCount, 0), text);
  if (!(await vscode.workspace.applyEdit(edit))) throw new Error(`The text of ${document.uri.fsPath} could not be replaced.`);
}

/** The range of a passage in a document; `occurrence` counts from 1. */
export function rangeOf(document: vscode.TextDocument, passage: string, occurrence = 1): vscode.Range {
  let at = -1;
  for (let i = 0; i < occurrence; i++) {
    at = document.getText().indexOf(passage, at + 1);
    if (at < 0) throw new Error(`"${passage}" (occurrence ${occurrence}) is not in ${document.uri.fsPath}.`);
  }
  return new vscode.Range(document.positionAt(at), document.positionAt(at + passage.length));
}

/** Waits until the diagnostics of a file satisfy the predicate (by default: until there are any). */
export async function diagnosticsOf(
  uri: vscode.Uri, predicate: (all: vscode.Diagnostic[]) => boolean = (all) => all.length > 0, ms = 20_000,
): Promise<vscode.Diagnostic[]> {
  try {
    return await untilTrue(() => {
      const all = vscode.languages.getDiagnostics(uri);
      return predicate(all) && all;
    }, 'diagnostics', ms);
  } catch {
    const last = vscode.languages.getDiagnostics(uri).map(describe).join('\n  ') || '(none)';
    throw new Error(`The diagnostics of ${uri.fsPath} were not as awaited after ${ms / 1000} s. They are:\n  ${last}`);
  }
}

export function describe(diagnostic: vscode.Diagnostic): string {
  const { start } = diagnostic.range;
  return `${start.line + 1}:${start.character + 1} ${vscode.DiagnosticSeverity[diagnostic.severity]} ${codeOf(diagnostic)} ${diagnostic.message}`;
}

export function codeOf(diagnostic: vscode.Diagnostic): string {
  const { code } = diagnostic;
  return String(typeof code === 'object' ? code.value : code ?? '');
}

/** The code actions offered for a range, resolved so that their edits are known. */
export async function codeActions(uri: vscode.Uri, range: vscode.Range, kind?: vscode.CodeActionKind): Promise<vscode.CodeAction[]> {
  const found = await vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider', uri, range, kind?.value, 100);
  return found ?? [];
}

/** Does what choosing the action in the quick-fix menu does: its edit, then its command. */
export async function applyAction(action: vscode.CodeAction): Promise<void> {
  if (action.disabled) throw new Error(`"${action.title}" is disabled: ${action.disabled.reason}`);
  if (!action.edit && !action.command) throw new Error(`"${action.title}" has neither an edit nor a command.`);
  if (action.edit && !(await vscode.workspace.applyEdit(action.edit))) throw new Error(`"${action.title}" could not be applied.`);
  if (action.command) await vscode.commands.executeCommand(action.command.command, ...(action.command.arguments ?? []));
}

export async function completions(uri: vscode.Uri, position: vscode.Position, trigger?: string): Promise<vscode.CompletionItem[]> {
  const list = await vscode.commands.executeCommand<vscode.CompletionList>(
    'vscode.executeCompletionItemProvider', uri, position, trigger, 50);
  return list.items;
}

export function labelOf(item: vscode.CompletionItem): string {
  return typeof item.label === 'string' ? item.label : item.label.label;
}

/** The text of every hover at a position. */
export async function hover(uri: vscode.Uri, position: vscode.Position): Promise<string> {
  const hovers = await vscode.commands.executeCommand<vscode.Hover[]>('vscode.executeHoverProvider', uri, position);
  return hovers.flatMap(({ contents }) => contents).map((part) => (typeof part === 'string' ? part : part.value)).join('\n\n');
}

/** Waits for a tab (an editor, a webview) whose title satisfies the predicate. */
export function tab(predicate: (label: string) => boolean, ms = 15_000): Promise<vscode.Tab> {
  return untilTrue(
    () => vscode.window.tabGroups.all.flatMap(({ tabs }) => tabs).find(({ label }) => predicate(label)), 'a tab', ms);
}

/** The extension under test, activated. */
export async function extension(): Promise<vscode.Extension<unknown>> {
  const found = vscode.extensions.getExtension(process.env.GARBOARD_TEST_EXTENSION || 'garboard.garboard');
  if (!found) throw new Error('The Garboard extension is not installed in this VS Code.');
  await found.activate();
  return found;
}
