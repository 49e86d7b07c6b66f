/** Path of LibreOffice; installs Debian's where that is possible; undefined where there is none. @throws Error in CI where there is none. */
export function findLibreOffice(): Promise<string | undefined>;
