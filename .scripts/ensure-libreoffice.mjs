// Finds LibreOffice, which the tests open Word files with, and on Debian as root installs its writer when there is none.
import { installOnDebian, isDebianRoot, onPath } from './debian.mjs';

const NAMES = ['soffice', 'libreoffice'];
const HOW = 'LibreOffice is needed to open the Word files. Install it (on Debian or Ubuntu: sudo apt-get install libreoffice-writer-nogui).';

/** The path of LibreOffice; undefined where there is none and none can be installed. In CI that is a failure. */
export async function findLibreOffice() {
  const found = onPath(NAMES);
  if (found) return found;
  if (isDebianRoot()) {
    await installOnDebian(['--no-install-recommends', 'libreoffice-writer-nogui'], NAMES, HOW);
    return onPath(NAMES);
  }
  if (process.env.CI) throw new Error(HOW);
  console.log(`${HOW} Without it, its tests are left out.`);
  return undefined;
}
