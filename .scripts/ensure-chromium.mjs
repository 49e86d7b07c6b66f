// Finds a Chromium to run headless, and on Debian as root installs one when there is none.
import { pathToFileURL } from 'node:url';
import { installOnDebian, isDebianRoot, isExecutable, onPath } from './debian.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];

/** Arguments that suit a headless Chromium used for tests. Any host but this machine's own fails to resolve. */
export const CHROMIUM_ARGS = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost',
];

/** What Playwright is to launch it with. Signals are left to the script, which has more than a browser to stop. */
export function launchOptions(executablePath) {
  return { executablePath, headless: true, args: CHROMIUM_ARGS, handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false };
}

/** The path of an executable Chromium; throws a plain message when none can be had. */
export async function findChromium() {
  const chosen = process.env.GARBOARD_CHROMIUM;
  if (chosen) {
    if (!isExecutable(chosen)) throw new Error(`GARBOARD_CHROMIUM names ${chosen}, which is not an executable file.`);
    return chosen;
  }
  const found = onPath(NAMES);
  if (found) return found;
  if (!isDebianRoot()) throw new Error(howToInstall());
  await installOnDebian(['chromium'], NAMES, howToInstall());
  const installed = onPath(NAMES);
  if (!installed) throw new Error(`Chromium was installed, but it is not on the PATH. ${howToInstall()}`);
  return installed;
}

function howToInstall() {
  return 'A Chromium is needed to run the editor tests. Install one (on Debian or Ubuntu: sudo apt-get install chromium; '
    + 'elsewhere: Google Chrome or Chromium from its maker), or set GARBOARD_CHROMIUM to the path of its executable.';
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    console.log(await findChromium());
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
