// Runs test/editor inside a real VS Code, served on loopback and opened in headless Chromium.
//
//   node .scripts/editor-test.mjs                  the extension as built in this repository
//   node .scripts/editor-test.mjs --packed [FILE]  the packed .vsix, installed as a user would install it
//   --only TEXT                                    only tests whose name holds TEXT
//   --verbose                                      also everything else that the extension host prints
import { chromium } from 'playwright-core';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { findChromium, launchOptions } from './ensure-chromium.mjs';
import {
  bundleTests, extensionUnderTest, openWorkbench, prepareRun, readResults, SCREENSHOTS, startServer, summarize,
} from './editor-host.mjs';

const TIME_LIMIT_MS = 8 * 60_000;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { packed: { type: 'boolean' }, only: { type: 'string' }, verbose: { type: 'boolean' } },
});

let run, server, browser, page;
let pictures = Promise.resolve();
const heard = [];
const deadline = new Promise((_, fail) => {
  setTimeout(() => fail(new Error(`The editor tests took longer than ${TIME_LIMIT_MS / 60_000} minutes.`)), TIME_LIMIT_MS).unref();
});

async function cleanUp() {
  await browser?.close().catch(() => {});
  await server?.stop().catch(() => {});
  await run?.remove().catch(() => {});
}
const interrupted = new Promise((_, fail) => {
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => fail(new Error(`Stopped by ${signal}.`)));
});

let code = 1;
try {
  await Promise.race([main(), deadline, interrupted]);
} catch (error) {
  console.error(error.message);
  await keepScreenshot('stopped');
  code = 1;
}
const results = await readResults(run?.results);
if (results.planned === 0 && heard.length > 0) console.error(`The workbench said last:\n${heard.slice(-20).join('\n')}`);
if (!summarize(results)) code = 1;
await cleanUp();
process.exit(code);

async function main() {
  const executablePath = await findChromium();
  const tests = await bundleTests();
  const extension = await extensionUnderTest({ packed: values.packed, file: positionals[0] });
  run = await prepareRun();
  server = await startServer({
    vsix: extension.vsix,
    env: ({ extensions }) => ({
      GARBOARD_TEST_RESULTS: run.results,
      GARBOARD_TEST_EXTENSION: extension.id,
      GARBOARD_TEST_EXTENSION_FOLDER: extension.folder ?? extensions,
      ...(values.only ? { GARBOARD_TEST_ONLY: values.only } : {}),
    }),
  });
  browser = await chromium.launch(launchOptions(executablePath));
  console.log(`Running the editor tests against ${extension.vsix ?? extension.folder}.`);
  const own = /^ {2}(passed|FAILED) {2}(.*) \(\d+ ms\)$/m;
  const opened = await openWorkbench({
    browser, server, folder: run.workspace, extensionPath: extension.folder ?? run.emptyExtension, testsPath: tests,
    onLog: (level, args) => {
      const text = [args].flat(Infinity).map((arg) => (typeof arg === 'string' ? arg : JSON.stringify(arg))).join(' ');
      const ours = own.exec(text);
      if (values.verbose || ours) console.log(text);
      else heard.push(text);
      if (ours?.[1] === 'FAILED') pictures = pictures.then(() => keepScreenshot(ours[2]));
    },
    onPage: (opening) => { page = opening; },
  });
  const end = await opened.finished;
  if (typeof end === 'string') throw new Error(`The editor tests were cut short: ${end}.`);
  code = end;
  await pictures;
}

async function keepScreenshot(name) {
  if (!page || page.isClosed()) return;
  await mkdir(SCREENSHOTS, { recursive: true });
  const path = join(SCREENSHOTS, `editor-test-${name.replace(/[^a-z0-9]+/gi, '-').slice(0, 80)}.png`);
  const taken = await page.screenshot({ path, timeout: 15_000 }).then(() => true, () => false);
  if (taken) console.error(`The workbench as it was then: ${path}`);
}
