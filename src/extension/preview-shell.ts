/** The page that holds the preview: it takes the report's HTML as a message and swaps it in, keeping the scroll. */
export function previewShell(): string {
    const nonce = [...crypto.getRandomValues(new Uint8Array(16))].map(byte => byte.toString(16).padStart(2, '0')).join('');
    return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; script-src 'nonce-${nonce}'">
<title>Report</title>
</head>
<body>
<p>The report is being drawn …</p>
<script nonce="${nonce}">
const host = acquireVsCodeApi();
window.addEventListener('message', ({ data }) => {
    if (data.type !== 'report') {
        return;
    }
    const page = new DOMParser().parseFromString(data.html, 'text/html');
    const top = window.scrollY;
    document.documentElement.lang = page.documentElement.lang;
    document.documentElement.className = page.documentElement.className;
    // A style sheet that stays the same is kept, so that its fonts are not read anew after every edit.
    const kept = [...document.querySelectorAll('style[data-report]')];
    [...page.querySelectorAll('style')].forEach((style, index) => {
        style.dataset.report = '';
        if (kept[index]?.textContent !== style.textContent) {
            kept[index]?.remove();
            document.head.append(document.adoptNode(style));
        }
    });
    document.body.className = page.body.className;
    document.body.replaceChildren(...[...page.body.childNodes].map(node => document.adoptNode(node)));
    window.scrollTo(0, top);
});
document.addEventListener('click', event => {
    const target = event.target instanceof Element ? event.target.closest('[data-start]') : null;
    if (target && !(event.target instanceof Element && event.target.closest('a'))) {
        host.postMessage({ type: 'reveal', uri: target.dataset.uri, start: Number(target.dataset.start) });
    }
});
host.postMessage({ type: 'ready' });
</script>
</body>
</html>`;
}
