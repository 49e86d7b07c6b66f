/** Runs the measurements named, or all of them: `npm run bench -- photos`. */
const measurements: Readonly<Record<string, () => Promise<unknown>>> = {
    keystroke: () => import('./keystroke.js'), // With what the checks cost on the same machine.
    report: async () => (await import('./report.js')).benchReport(),
    photos: async () => (await import('./photos.js')).benchPhotos(),
};

const named = process.argv.slice(2);
const unknown = named.filter(name => !(name in measurements));
if (unknown.length > 0) {
    throw new Error(`There is no measurement ${unknown.join(', ')}; there are ${Object.keys(measurements).join(', ')}.`);
}
for (const name of named.length > 0 ? named : Object.keys(measurements)) {
    await measurements[name]?.();
}
export {};
