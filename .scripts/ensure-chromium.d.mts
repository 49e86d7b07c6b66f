/** Path of a Chromium that can be started; installs Debian's where that is possible. @throws Error saying how to install one. */
export function findChromium(): Promise<string>;
