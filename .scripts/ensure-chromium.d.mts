/** Path of a Chromium that can be started; installs Debian's where that is possible. @throws Error saying how to install one. */
export function findChromium(): Promise<string>;
/** What Playwright launches a headless Chromium with, so that it reaches no host but this machine. */
export function launchOptions(executablePath: string): { readonly executablePath: string; readonly headless: boolean; readonly args: string[] };
