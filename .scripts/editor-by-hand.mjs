// Opens a folder in a real VS Code, served on loopback, for use by hand through Playwright.
//
//   node .scripts/editor-by-hand.mjs FOLDER [--script FILE.mjs] [--vsix FILE] [--theme NAME] [--in-place] [--keep] [--size WxH]
//
// The workbench opens a copy of the folder unless --in-place is given. The script's default export is called with
// { page, screenshot, folder, command, openFile, goTo, quickFixes, chooseFix, webview }; screenshot(name) writes
// .cache/screenshots/NAME.png and returns its path. Without a script one screenshot of the workbench is taken. --keep
// leaves the server up until Ctrl+C, so that the printed address can be opened in a browser of one's own.
import { chromium } from 'playwright-core';
import { mkdir } from 'node:fs/promises';
import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { findChromium, launchOptions } from './ensure-chromium.mjs';
import { extensionUnderTest, openWorkbench, prepareRun, SCREENSHOTS, startServer, userActions } from './editor-host.mjs';

const USAGE = 'Usage: node .scripts/editor-by-hand.mjs FOLDER [--script FILE.mjs] [--vsix FILE] [--theme NAME] [--in-place] [--keep] [--size WxH]';

let run, server, browser, page;

async function cleanUp() {
  await browser?.close().catch(() => {});
  await server?.stop().catch(() => {});
  await run?.remove().catch(() => {});
}
const interrupted = new Promise((_, fail) => {
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => fail(Object.assign(new Error(`Stopped by ${signal}.`), { stopped: true })));
});

try {
  await Promise.race([main(), interrupted]);
} catch (error) {
  console.error(page && !error.stopped ? error.stack : error.message);
  if (page && !error.stopped) await screenshot('by-hand-failed').catch(() => {});
  process.exitCode = 1;
}
await cleanUp();
process.exit();

async function main() {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      script: { type: 'string' }, vsix: { type: 'string' }, theme: { type: 'string', default: 'Default Light Modern' },
      'in-place': { type: 'boolean' }, keep: { type: 'boolean' }, size: { type: 'string', default: '1440x900' },
    },
  });
  const given = positionals[0] && resolve(positionals[0]);
  if (positionals.length !== 1) throw new Error(USAGE);
  if (!existsSync(given) || !statSync(given).isDirectory()) throw new Error(`${given} is not a folder. ${USAGE}`);
  const size = /^(\d+)x(\d+)$/.exec(values.size);
  if (!size) throw new Error(`--size takes a width and a height, such as 1440x900. ${USAGE}`);
  const script = values.script && (await import(pathToFileURL(resolve(values.script)).href)).default;
  if (values.script && typeof script !== 'function') throw new Error(`${values.script} has no function as its default export.`);

  const executablePath = await findChromium();
  const extension = await extensionUnderTest({ packed: Boolean(values.vsix), file: values.vsix });
  if (!values['in-place']) run = await prepareRun(given);
  const folder = run?.workspace ?? given;
  server = await startServer({ vsix: extension.vsix });
  browser = await chromium.launch(launchOptions(executablePath));
  const opened = await openWorkbench({
    browser, server, folder, extensionPath: extension.folder, settings: { 'workbench.colorTheme': values.theme },
    viewport: { width: Number(size[1]), height: Number(size[2]) }, onPage: (opening) => { page = opening; },
  });
  await page.locator('.explorer-folders-view .monaco-list-row').first().waitFor();
  if (script) await script({ page, screenshot, folder, ...userActions(page) });
  else await screenshot('by-hand');
  if (values.keep) {
    console.log(`The workbench is at ${opened.address}\nPress Ctrl+C to stop it.`);
    await new Promise(() => {}); // until interrupted
  }
}

async function screenshot(name, options = {}) {
  await mkdir(SCREENSHOTS, { recursive: true });
  const path = join(SCREENSHOTS, `${name}.png`);
  await page.screenshot({ path, ...options });
  console.log(`Screenshot: ${path}`);
  return path;
}
