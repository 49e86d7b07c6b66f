// Draws the illustrations of examples/marram/photos: flat scenes in SVG, rendered by a headless Chromium to JPEG, then
// given the EXIF tags of a camera. They are drawings, not photographs, and each says so in its caption strip.
// Some are stored turned, as a camera held upright stores them, so that only a reader of the orientation tag shows
// them the right way up. The same script on the same Chromium writes the same bytes.
import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import piexif from 'piexifjs';
import { chromium } from 'playwright-core';
import { findChromium, launchOptions } from './ensure-chromium.mjs';

const folder = join(dirname(fileURLToPath(import.meta.url)), '..', 'examples', 'marram', 'photos');
const stored = { width: 1600, height: 1200 };
/** JPEG qualities tried in turn, so that no picture outweighs the limit. */
const qualities = [80, 76, 72, 68];
const largestBytes = 90_000;

// ---- Palette and parts -------------------------------------------------------------------------------------------

const ink = '#2f3a40';
const color = {
    grp: '#d9d6cb', grpEdge: '#b9b4a3', locker: '#c9cfcd', lockerDark: '#a9b3b2', wood: '#b08d65', woodDark: '#8c6d4a', bronze: '#a98546', bronzeDark: '#7d6030',
    bronzeLight: '#c8a86b', steel: '#a7b0b5', steelDark: '#78838a', steelLight: '#ced5d8', rust: '#8f5233', rustLight: '#b4724b', rubber: '#3d4246',
    rubberLight: '#62696d', white: '#eceeea', zinc: '#9b9f9c', zincDark: '#6f7472', water: '#7fa3ae', waterDark: '#5d838f', red: '#a2453c', blue: '#4a6d8c',
    green: '#6d8a6a', pink: '#c98d83', orange: '#c98449', paint: '#6a7f8a', sky: '#d5e0e2', paper: '#efece1', yellow: '#c7a94b',
};

const defs = `<defs>${[
    ['bronze', color.bronzeDark, color.bronzeLight, color.bronze], ['steel', color.steelDark, color.steelLight, color.steel],
    ['rubber', '#2c3033', color.rubberLight, color.rubber], ['white', '#b9beba', '#f7f8f5', color.white], ['rust', '#6b3a22', color.rustLight, color.rust],
    ['pink', '#96604f', '#deb0a6', color.pink], ['zinc', color.zincDark, '#c3c6c3', color.zinc], ['wood', '#7a5d3d', '#c6a67f', color.wood], ['red', '#75302a', '#c26a60', color.red],
].flatMap(([id, dark, light, base]) => [
    `<linearGradient id="${id}" x1="0" y1="0" x2="0" y2="1"><stop offset="0" stop-color="${base}"/><stop offset=".28" stop-color="${light}"/><stop offset=".62" stop-color="${base}"/><stop offset="1" stop-color="${dark}"/></linearGradient>`,
    `<linearGradient id="${id}-side" x1="0" y1="0" x2="1" y2="0"><stop offset="0" stop-color="${base}"/><stop offset=".28" stop-color="${light}"/><stop offset=".62" stop-color="${base}"/><stop offset="1" stop-color="${dark}"/></linearGradient>`,
]).join('')}</defs>`;

const box = (x, y, width, height, fill, more = '') => `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}" ${more}/>`;
const part = (x, y, width, height, fill, radius = 8) => box(x, y, width, height, fill, `rx="${radius}" stroke="${ink}" stroke-width="5"`);
const disc = (x, y, r, fill, more = `stroke="${ink}" stroke-width="5"`) => `<circle cx="${x}" cy="${y}" r="${r}" fill="${fill}" ${more}/>`;
const shape = (d, fill, more = `stroke="${ink}" stroke-width="5" stroke-linejoin="round"`) => `<path d="${d}" fill="${fill}" ${more}/>`;
const stroke = (d, width, paint, more = '') => `<path d="${d}" fill="none" stroke="${paint}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round" ${more}/>`;
const words = (x, y, size, text, more = '') => `<text x="${x}" y="${y}" font-size="${size}" ${more.includes('fill=') ? '' : `fill="${ink}"`} ${more}>${text}</text>`;
const turned = (angle, x, y, inner) => `<g transform="rotate(${angle} ${x} ${y})">${inner}</g>`;

/** A label with a line to what it names. */
const label = (x, y, text, toX, toY) => {
    const width = text.length * 17 + 36;
    const fromX = toX < x ? x : toX > x + width ? x + width : x + width / 2;
    const fromY = toX < x || toX > x + width ? y : toY < y ? y - 28 : y + 28;
    return `${stroke(`M${fromX} ${fromY} L${toX} ${toY}`, 4, ink)}${disc(toX, toY, 8, ink, '')}${box(x, y - 28, width, 56, '#fbfaf5', `rx="10" stroke="${ink}" stroke-width="3"`)}${words(x + 18, y + 11, 31, text)}`;
};

/** A hose along a path: outline, body, a light along it, and rings where it is wire-reinforced. */
const hose = (d, width, { body = color.rubber, light = color.rubberLight, wire = false } = {}) =>
    `${stroke(d, width + 10, ink, 'stroke-linecap="butt"')}${stroke(d, width, body, 'stroke-linecap="butt"')}`
    + `${wire ? stroke(d, width, light, 'stroke-dasharray="6 22" stroke-linecap="butt" opacity=".55"') : ''}`
    + `${stroke(d, width * 0.16, light, `transform="translate(0 ${-width * 0.2})" opacity=".8"`)}`;

/** A worm clamp round a hose that lies level, its screw on top. */
const clamp = (x, y, height, fill = 'url(#steel)', rusty = false) =>
    `${part(x, y - height / 2 - 6, 46, height + 12, fill, 5)}${Array.from({ length: Math.floor(height / 22) }, (_, i) => box(x + 8, y - height / 2 + 8 + i * 22, 30, 5, ink, 'opacity=".35"')).join('')}`
    + `${part(x - 18, y - height / 2 - 44, 82, 42, rusty ? 'url(#rust)' : fill, 6)}${part(x + 64, y - height / 2 - 36, 24, 26, rusty ? color.rust : color.steelDark, 4)}`
    + `${rusty ? [[2, 30, 26], [26, 62, 20], [8, 104, 30], [30, 140, 18]].map(([dx, dy, r]) => disc(x + dx, y - height / 2 + dy - 20, r / 2, color.rust, 'opacity=".85"')).join('') : ''}`;

/** Where a hull stands at the left with an opening through it, a valve screwed on and its tail to the right. */
const valveOnHull = (y, { metal = 'bronze', bore = 150, lever = 0, handle = 'lever', tail = 170 } = {}) => {
    const fill = `url(#${metal})`;
    const grip = handle === 'lever'
        ? turned(lever, 560, y, `${part(545, y - 300, 30, 250, color.steel, 14)}${part(536, y - 330, 48, 150, color.red, 20)}`)
        : `${part(545, y - 250, 30, 140, 'url(#steel-side)', 4)}${part(430, y - 300, 260, 54, color.bronzeDark, 27)}${[455, 520, 580, 645].map(x => disc(x, y - 273, 12, color.bronzeLight, '')).join('')}`;
    return `${box(0, 0, 230, 1200, color.grp)}${box(222, 0, 16, 1200, color.grpEdge)}${part(232, y - 210, 60, 420, color.wood, 6)}`
        + `${part(290, y - 170, 46, 340, fill, 6)}${part(330, y - bore / 2 - 20, 120, bore + 40, fill, 6)}${shape(`M440 ${y - 128} h240 l30 60 v136 l-30 60 h-240 l-30 -60 v-136 z`, fill)}`
        + `${[-110, 110].map(dy => disc(313, y + dy, 15, color.bronzeDark)).join('')}${grip}${disc(560, y, 54, color.bronzeDark)}${disc(560, y, 24, color.bronzeLight, '')}`
        + `${part(705, y - bore / 2 - 12, 60, bore + 24, fill, 4)}${part(760, y - bore / 2, tail, bore, fill, 4)}${[30, 75, 120].filter(dx => dx < tail - 20).map(dx => box(760 + dx, y - bore / 2 - 5, 12, bore + 10, color.bronzeDark)).join('')}`;
};

const inside = (width, height) => `${box(0, 0, width, height, color.locker)}${[0.2, 0.45, 0.7].map(f => box(0, height * f, width, 5, color.lockerDark, 'opacity=".5"')).join('')}`;
const boatyard = (width, height) => `${box(0, 0, width, height, color.sky)}${box(0, height * 0.8, width, height * 0.2, '#b7ab97')}`;

// ---- Scenes: each drawn upright, wide (1600 x 1200) or tall (1200 x 1600) ------------------------------------------

const profile = () => {
    const mast = (x, top, foot) => `${box(x - 7, top, 14, foot - top, color.woodDark)}`;
    return `${box(0, 0, 1600, 1200, color.sky)}${box(0, 800, 1600, 400, color.water)}${shape('M0 800 L0 690 Q300 640 620 700 T1200 680 T1600 710 L1600 800 Z', color.green, 'opacity=".55"')}`
        + `${mast(760, 120, 690)}${mast(1110, 300, 690)}${stroke('M760 130 L330 690 M760 130 L1100 690 M760 130 L700 690 M760 130 L820 690 M1110 305 L1290 700 M1110 305 L1070 690 M1110 305 L1150 690', 4, ink)}`
        + `${stroke('M765 630 L1060 618 M1115 635 L1330 625', 14, color.woodDark)}${stroke('M775 616 L1050 604 M1125 620 L1320 611', 22, '#e7e2d2')}`
        + `${shape('M300 690 L1330 690 Q1320 780 1270 830 L470 830 Q370 790 300 690 Z', color.white)}${shape('M352 770 L1307 770 L1295 795 L382 795 Z', color.paint, '')}${stroke('M300 690 Q800 720 1330 690', 10, color.woodDark)}`
        + `${shape('M620 690 L660 640 L980 640 L1010 690 Z', '#dfdacb')}${[700, 790, 880].map(x => part(x, 652, 50, 24, color.blue, 10)).join('')}${stroke('M330 690 L330 640 M430 690 L430 645 M530 690 L530 645 M1080 690 L1080 645 M1180 690 L1180 645 M1290 690 L1290 640', 6, color.steelDark)}`
        + `${box(440, 822, 880, 16, color.waterDark)}${[870, 940, 1020].map((y, i) => stroke(`M${120 + i * 150} ${y} q60 -22 120 0 t120 0 t120 0 M${900 + i * 90} ${y + 30} q60 -22 120 0 t120 0`, 6, '#a4c0c8')).join('')}`;
};

const tachometer = () => {
    const tick = (i) => {
        const angle = (-218 + i * 16) * Math.PI / 180;
        const at = r => `${(800 + Math.cos(angle) * r).toFixed(1)} ${(560 + Math.sin(angle) * r).toFixed(1)}`;
        const [x, y] = at(262).split(' ').map(Number);
        return `${stroke(`M${at(310)} L${at(345)}`, 9, color.white)}${i % 2 === 0 ? words(x, y + 16, 44, String(i / 2 * 5), `fill="${color.white}" text-anchor="middle"`) : ''}`;
    };
    const needle = turned(-218 + 11.6 * 16, 800, 560, `${shape('M800 550 L1110 560 L800 572 Z', color.orange, '')}`);
    return `${box(0, 0, 1600, 1200, '#8e7a5f')}${[180, 520, 830].map(y => box(0, y, 1600, 6, '#75634b')).join('')}${disc(800, 560, 430, color.steelLight)}${disc(800, 560, 390, '#23292d')}`
        + `${Array.from({ length: 17 }, (_, i) => tick(i)).join('')}${words(800, 740, 40, 'rpm x 100', `fill="${color.white}" text-anchor="middle"`)}${needle}${disc(800, 560, 36, color.steelDark)}`
        + `${part(1180, 880, 330, 170, '#d8d4c6', 16)}${part(1210, 905, 270, 90, '#b5c4ae', 6)}${words(1345, 972, 66, '2780', 'text-anchor="middle" font-family="DejaVu Sans Mono, monospace"')}${words(1345, 1033, 28, 'hand tachometer', 'text-anchor="middle"')}`;
};

const gland = () => `${inside(1200, 1600)}${shape('M0 0 H1200 V360 Q600 250 0 420 Z', color.grp)}${shape('M0 1240 Q600 1130 1200 1290 V1600 H0 Z', color.grpEdge, '')}${shape('M120 1400 Q600 1330 1080 1420 L1080 1530 L120 1530 Z', color.water, 'opacity=".8"')}`
    + `${part(0, 700, 1200, 96, 'url(#steel)', 0)}${part(0, 600, 270, 296, color.grp, 10)}${hose('M230 748 L620 748', 250)}${clamp(300, 748, 250)}${clamp(420, 748, 250)}${clamp(540, 748, 250)}`
    + `${part(620, 630, 190, 236, 'url(#bronze)', 10)}${part(800, 600, 70, 296, 'url(#bronze)', 10)}${part(862, 650, 90, 196, 'url(#bronze)', 8)}${stroke('M780 570 L780 930 M920 570 L920 930', 26, color.bronzeDark)}`
    + `${[955, 1040, 1140, 1260].map((y, i) => shape(`M${956 - i * 2} ${y} q-26 44 0 62 q26 -18 0 -62 z`, '#4f7f92', `stroke="${ink}" stroke-width="3"`)).join('')}${stroke('M800 1420 q150 -40 300 0 M850 1450 q110 -26 210 0', 6, color.waterDark)}`
    + `${label(500, 480, 'packed gland, shaft stopped', 850, 610)}${label(250, 1200, '14 drops a minute', 946, 1150)}`;

const coolantTester = () => {
    const line = (y, text, half) => `${stroke(`M${half ? 700 : 640} ${y} L860 ${y}`, 5, ink)}${words(600, y + 14, 36, text, 'text-anchor="end"')}`;
    return `${box(0, 0, 1600, 1200, '#bfc8c6')}${disc(760, 560, 470, '#20262a')}${disc(760, 560, 430, '#f3f1e4', '')}<clipPath id="eye"><circle cx="760" cy="560" r="430"/></clipPath><g clip-path="url(#eye)">${box(300, 100, 940, 300, '#8fb0c4')}`
        + `${[[250, '-50 F'], [330, '-30 F'], [420, '-10 F'], [500, '+ 5 F'], [590, '+15 F'], [690, '+25 F'], [780, '+32 F']].map(([y, text]) => line(y, text, false)).join('')}${box(640, 230, 8, 570, ink)}${words(900, 250, 32, 'ethylene')}${words(900, 290, 32, 'glycol')}`
        + `${box(300, 100, 940, 445, '#8fb0c4', 'opacity=".55"')}${stroke('M300 545 L1240 545', 6, '#42718c')}</g>${turned(28, 1330, 900, `${part(1180, 820, 430, 150, '#33393d', 40)}${part(1120, 850, 80, 92, color.steel, 12)}${part(1460, 800, 70, 190, color.steelDark, 20)}`)}`
        + `${label(1010, 640, 'reads about 11 F', 900, 545)}`;
};

const battery = () => `${inside(1600, 1200)}${box(0, 930, 1600, 270, color.woodDark)}${box(0, 922, 1600, 14, ink)}`
    + [180, 830].map((x, i) => `${part(x, 480, 580, 450, '#50585d', 18)}${part(x - 12, 430, 604, 90, '#3c4347', 14)}${[60, 160, 260, 360, 460].map(d => disc(x + d + 20, 475, 24, '#6d757a')).join('')}${part(x + 40, 372, 76, 66, 'url(#zinc)', 10)}${part(x + 464, 372, 76, 66, 'url(#zinc)', 10)}`
        + `${part(x + 130, 610, 320, 200, color.paper, 8)}${words(x + 290, 690, 62, i === 0 ? 'B1' : 'B2', 'text-anchor="middle"')}${words(x + 290, 760, 40, '12 V   105 Ah', 'text-anchor="middle"')}`).join('')
    + `${stroke('M258 380 C260 220 520 200 720 230 S900 330 908 372', 26, color.red)}${stroke('M682 380 C700 260 960 160 1180 200 S1330 320 1332 372', 26, '#33383b')}`
    + `${stroke('M1380 930 C1420 990 1300 1060 1180 1040 S960 980 860 1080', 46, '#59666e')}${part(820, 1050, 90, 70, color.steelDark, 8)}${label(330, 1090, 'strap undone, hanging loose', 840, 1084)}${label(1120, 160, 'post without cover', 1330, 372)}`;

const floatSwitch = () => `${inside(1600, 1200)}${shape('M0 520 Q800 1080 1600 520 L1600 1200 L0 1200 Z', color.grp)}${shape('M250 822 Q800 1120 1350 822 Q800 880 250 822 Z', color.water, 'opacity=".9"')}`
    + `${part(450, 560, 250, 290, '#4a6274', 30)}${part(430, 800, 290, 80, '#37454f', 16)}${hose('M640 600 C700 600 720 500 720 380 L720 0', 90, { wire: true })}${part(960, 850, 180, 60, '#37454f', 10)}${turned(-3, 960, 860, part(900, 770, 330, 96, color.orange, 44))}`
    + `${stroke('M1150 880 C1250 860 1290 700 1280 540', 14, '#6b4a35')}${stroke('M1280 540 C1280 440 1300 380 1360 330', 14, '#6b4a35')}${part(1225, 505, 120, 76, '#d9d2bf', 12)}${shape('M1236 575 q20 40 -6 66 q44 8 40 50 q32 -44 0 -110 z', color.green, '')}`
    + `${label(1010, 1010, 'float switch does not make', 1060, 830)}${label(1000, 240, 'splice green and open', 1285, 540)}${label(150, 470, 'pump P1', 520, 640)}`;

const gasHose = () => `${inside(1600, 1200)}${part(90, 360, 420, 760, 'url(#white-side)', 120)}${part(190, 230, 220, 150, color.steel, 20)}${disc(300, 220, 62, color.bronze)}${part(440, 250, 300, 130, '#7a8790', 30)}${disc(640, 240, 86, color.paper)}${stroke('M640 240 L690 196', 8, color.red)}`
    + `${part(730, 270, 90, 92, 'url(#bronze)', 8)}${hose('M820 316 C1080 316 1060 700 1300 700 L1600 700', 96, { body: '#4b4a46', light: '#6f6d66' })}${part(806, 256, 90, 122, 'url(#steel)', 6)}`
    + `${stroke('M1000 396 l26 40 M1028 424 l-8 44 M1056 470 l34 30 M1074 520 l-14 46 M1092 560 l38 26', 7, '#191b1c')}<g transform="translate(1180 712)">${words(0, 0, 44, 'GAS 8 mm   2012-06', `fill="${color.yellow}" font-family="DejaVu Sans Mono, monospace"`)}</g>`
    + `${label(900, 940, 'marked 2012-06, cracked in the bend', 1060, 520)}${label(120, 120, 'locker gauge', 600, 200)}`;

const extinguisher = () => `${box(0, 0, 1200, 1600, '#b9a27f')}${[300, 700, 1100].map(y => box(0, y, 1200, 6, '#9c8765')).join('')}${part(380, 420, 420, 960, 'url(#red-side)', 90)}${part(500, 310, 180, 130, '#2f3437', 16)}${shape('M430 250 L800 220 L810 262 L700 300 L500 300 Z', '#3c4246')}${stroke('M500 330 C330 330 320 520 350 640', 42, '#2f3437')}`
    + `${disc(640, 380, 58, color.paper)}${stroke('M612 392 A36 36 0 0 1 668 392', 14, color.green)}${stroke('M640 388 L636 348', 7, ink)}${part(430, 640, 320, 400, color.paper, 12)}${words(590, 730, 64, 'B-I', 'text-anchor="middle"')}${words(590, 800, 40, 'dry chemical', 'text-anchor="middle"')}${box(460, 850, 260, 5, ink)}${words(590, 930, 52, 'MADE 13', 'text-anchor="middle" font-family="DejaVu Sans Mono, monospace"')}${words(590, 995, 32, 'not rechargeable', 'text-anchor="middle"')}`
    + `${part(340, 1180, 500, 50, '#33383b', 8)}${label(640, 1330, 'marked as made in 2013', 560, 945)}`;

const flares = () => `${box(0, 0, 1200, 1600, '#5f7d86')}${part(110, 180, 980, 1200, color.orange, 60)}${part(160, 260, 880, 1060, '#e6dcc6', 30)}`
    + [0, 1, 2].map(i => { const x = 230 + i * 180; return `${part(x, 380, 120, 760, 'url(#red-side)', 20)}${part(x, 350, 120, 90, color.white, 16)}${part(x + 8, 640, 104, 250, color.paper, 6)}${turned(-90, x + 60, 765, `${words(x - 52, 758, 32, 'HAND FLARE')}${words(x - 52, 800, 30, 'exp. 03-2024', 'font-family="DejaVu Sans Mono, monospace"')}`)}`; }).join('')
    + `${part(800, 380, 170, 760, 'url(#zinc-side)', 40)}${part(812, 620, 146, 280, color.paper, 6)}${turned(-90, 885, 760, `${words(760, 752, 32, 'SMOKE')}${words(760, 796, 30, 'exp. 03-2024', 'font-family="DejaVu Sans Mono, monospace"')}`)}${label(220, 1230, 'all past their month', 480, 860)}`;

const hullNumber = () => `${box(0, 0, 1600, 1200, '#cfd8d6')}${shape('M0 0 H1600 V1010 Q800 1090 0 1010 Z', color.white)}${shape('M0 1010 Q800 1090 1600 1010 V1200 H0 Z', color.paint)}${stroke('M0 84 Q800 120 1600 84', 22, color.woodDark)}`
    + `${part(360, 470, 880, 150, '#dfe1db', 6)}${words(800, 570, 92, 'XQZ12045K989', 'text-anchor="middle" font-family="DejaVu Sans Mono, monospace" fill="#59656a" letter-spacing="6"')}${stroke('M340 720 L1260 720', 6, ink)}${Array.from({ length: 24 }, (_, i) => stroke(`M${340 + i * 40} 720 v${i % 4 === 0 ? 46 : 26}`, 4, ink)).join('')}${words(1270, 770, 30, 'in')}`
    + `${label(520, 300, 'starboard side of the transom', 800, 480)}`;

const drainHose = () => `${inside(1600, 1200)}${valveOnHull(600, { bore: 150, lever: 0, tail: 190 })}${box(770, 516, 150, 168, '#dcd8c4', `stroke="${ink}" stroke-width="4" opacity=".95"`)}${[790, 822, 854, 886].map(x => box(x, 518, 5, 164, '#b9b39a')).join('')}`
    + `${hose('M850 600 L1180 600 C1380 600 1420 480 1420 300 L1420 0', 222, { wire: true })}${clamp(872, 600, 222)}${stroke('M1010 506 q40 90 0 188 M1060 504 q30 96 0 192', 6, '#24282a', 'opacity=".7"')}`
    + `${label(420, 1000, 'tape wound on the tail', 800, 670)}${label(880, 860, 'hose a size larger than the tail', 1080, 690)}`;

const condenserHose = () => `${inside(1600, 1200)}${valveOnHull(640, { bore: 96, lever: 90, tail: 170 })}${hose('M780 640 L1030 640', 124, { body: '#d7d6cc', light: '#f3f3ee' })}${clamp(815, 640, 124)}${shape('M960 592 L1180 574 L1186 706 L960 688 Z', 'url(#wood)')}${stroke('M1040 604 l-10 80 M1110 592 l4 96', 4, color.woodDark)}`
    + `${stroke('M1150 640 C1250 690 1290 790 1260 1000', 9, '#7e7762')}${label(1000, 400, 'softwood plug, pushed in by hand', 1100, 590)}${label(500, 950, 'valve shut, 3/4 in', 600, 740)}`;

const rustyClamp = () => `${inside(1600, 1200)}${hose('M420 620 L1600 620', 300, { body: '#cfd3cf', light: '#f0f2ee' })}${part(0, 520, 440, 200, 'url(#bronze)', 4)}${[120, 220, 320].map(x => box(x, 512, 16, 216, color.bronzeDark)).join('')}${clamp(520, 620, 300)}${clamp(800, 620, 300, 'url(#steel)', true)}`
    + `${[[806, 560, 22], [838, 640, 30], [812, 710, 26], [846, 470, 20], [790, 740, 14]].map(([x, y, r]) => disc(x, y, r, color.rust, 'opacity=".8"')).join('')}${stroke('M812 776 q10 60 -6 130 M838 778 q6 40 0 90', 9, color.rustLight, 'opacity=".8"')}`
    + `${label(240, 960, 'sound clamp', 540, 760)}${label(940, 960, 'rust from under the housing', 850, 720)}${label(980, 330, 'screw turns no further', 880, 445)}`;

const footPumpValve = () => `${inside(1600, 1200)}${valveOnHull(640, { metal: 'bronze', bore: 104, handle: 'wheel', tail: 160 })}${shape('M470 560 q60 -36 120 6 q50 40 10 92 q-66 40 -120 -4 q-44 -50 -10 -94 z', color.pink, `stroke="${ink}" stroke-width="3"`)}${stroke('M486 580 l96 60 M480 610 l84 52 M510 566 l84 54', 5, '#e9c2ba')}`
    + `${hose('M790 640 L1120 640 C1330 640 1330 840 1330 1200', 130, { body: '#5a6468', light: '#87929a' })}${clamp(822, 640, 130)}${clamp(912, 640, 130)}${turned(-38, 760, 960, `${part(700, 935, 330, 44, color.steel, 8)}${part(1000, 922, 200, 70, color.woodDark, 20)}`)}`
    + `${label(760, 380, 'body scraped: pink under the surface', 560, 590)}${label(300, 1050, 'wheel valve on the foot pump', 520, 780)}`;

const shaftAnode = () => `${boatyard(1600, 1200)}${shape('M0 0 H1600 V250 Q900 330 500 520 L0 640 Z', color.paint)}${stroke('M1600 250 Q900 330 500 520 L0 640', 8, ink)}${turned(9, 800, 640, `${part(120, 610, 1240, 64, 'url(#steel)', 4)}${part(60, 560, 220, 164, 'url(#bronze)', 10)}`
    + `${shape('M560 588 q30 -38 92 -18 q60 20 100 -6 q52 -22 72 22 l0 106 q-40 30 -96 8 q-60 -26 -104 2 q-40 20 -64 -8 z', 'url(#zinc)')}${[[600, 620], [660, 600], [720, 660], [780, 620], [640, 676]].map(([x, y]) => disc(x, y, 14, color.zincDark, '')).join('')}${disc(690, 640, 15, color.steelLight)}`
    + `${part(1130, 570, 200, 144, 'url(#bronze)', 30)}${shape('M1180 580 C1080 420 1120 240 1230 190 C1320 260 1310 440 1270 580 Z', 'url(#bronze-side)')}${shape('M1180 704 C1100 830 1130 960 1230 1010 C1320 960 1310 830 1270 704 Z', 'url(#bronze-side)')}${shape('M1330 590 L1410 640 L1330 694 Z', 'url(#bronze)')}`)}`
    + `${label(330, 980, 'shaft anode, a third left', 690, 690)}${label(1000, 150, 'propeller bright and whole', 1240, 330)}`;

const heelBolts = () => `${box(0, 0, 1200, 1600, color.sky)}${box(0, 1350, 1200, 250, '#b7ab97')}${shape('M0 0 H520 V1080 H0 Z', color.paint)}${shape('M560 0 H1060 Q1100 500 1010 1080 H560 Z', '#7b909b')}${stroke('M540 0 V1080', 18, ink)}${shape('M0 1060 H1040 L990 1210 H0 Z', 'url(#bronze)')}${part(500, 1010, 90, 110, 'url(#bronze-side)', 10)}`
    + `${[140, 280, 420].map((x, i) => `${shape(`M${x - 44} 1132 l22 -38 h44 l22 38 l-22 38 h-44 z`, 'url(#rust)')}${stroke(`M${x} 1172 q${8 - i * 6} 60 ${i * 4 - 6} ${100 + i * 24}`, 16, color.rustLight, 'opacity=".85"')}`).join('')}`
    + `${label(420, 1420, 'steel bolts in the bronze heel', 290, 1150)}${label(700, 700, 'rudder', 640, 560)}`;

const heelBolt = () => `${box(0, 0, 1600, 1200, 'url(#bronze)')}${box(0, 0, 1600, 150, color.paint)}${stroke('M0 150 H1600', 10, ink)}${disc(800, 580, 300, color.bronzeDark)}${disc(800, 580, 262, '#8a7448', `stroke="${ink}" stroke-width="3"`)}${shape('M640 590 l74 -130 l96 -14 l92 22 l62 122 l-58 118 l-96 26 l-104 -20 z', 'url(#rust)')}`
    + `${shape('M716 540 l70 -44 l88 22 l34 74 l-40 66 l-92 10 l-58 -52 z', color.steelLight, `stroke="${color.steelDark}" stroke-width="4"`)}${[[690, 640, 20], [900, 500, 16], [760, 470, 14], [912, 650, 12]].map(([x, y, r]) => disc(x, y, r, color.rust, '')).join('')}${stroke('M790 720 q-20 150 10 330 M850 706 q30 120 6 240', 26, color.rustLight, 'opacity=".8"')}${stroke('M520 900 H1080', 6, ink)}${Array.from({ length: 15 }, (_, i) => stroke(`M${520 + i * 40} 900 v${i % 5 === 0 ? 40 : 22}`, 5, ink)).join('')}`
    + `${label(1080, 1030, 'rule, 2 mm a mark', 1040, 920)}${label(90, 300, 'bronze casting', 480, 470)}`;

const exhaustHose = () => `${inside(1600, 1200)}${part(0, 430, 560, 620, '#55606a', 60)}${part(540, 560, 190, 210, '#6b7680', 6)}${hose('M640 664 L1040 664 C1300 664 1300 400 1600 330', 250, { wire: true })}${clamp(690, 664, 250)}${stroke('M1060 560 q30 40 10 90 q40 20 20 70 M1120 552 q26 44 6 90 M1180 548 q20 36 0 70', 7, '#15181a')}`
    + `${words(820, 690, 42, 'EXHAUST 50', `fill="${color.white}" font-family="DejaVu Sans Mono, monospace" opacity=".75"`)}${label(760, 980, 'one clamp at the muffler', 716, 800)}${label(930, 360, 'cracks at the bend', 1110, 600)}${label(120, 300, 'muffler', 260, 460)}`;

const moistureMeter = () => `${boatyard(1600, 1200)}${shape('M0 0 H1600 V640 Q900 960 0 1060 Z', color.paint)}${shape('M0 0 H1600 V210 Q800 300 0 330 Z', color.white)}${stroke('M0 330 Q800 300 1600 210', 10, ink)}${Array.from({ length: 5 }, (_, i) => `${stroke(`M${220 + i * 290} ${300 - i * 14} L${240 + i * 290} ${980 - i * 80}`, 4, '#dfe6e8', 'stroke-dasharray="16 14"')}${words(236 + i * 290, 400, 44, String(i + 1), 'fill="#eef2f3"')}`).join('')}`
    + `${turned(-8, 860, 560, `${part(690, 330, 340, 560, '#c9a24c', 40)}${part(730, 380, 260, 170, '#f4f1e2', 12)}${stroke('M760 530 A110 110 0 0 1 960 530', 8, ink)}${stroke('M860 536 L812 446', 8, color.red)}${words(860, 640, 44, 'scale 0-100', 'text-anchor="middle"')}${disc(860, 740, 52, '#4c5357')}`)}${label(1120, 780, 'port side, station 3', 1030, 650)}`;

/** name, minutes of the day at which it was taken, what it shows; `turn` is the EXIF orientation it is stored under. */
const pictures = [
    ['0101-marram-afloat', '2026-10-05 08:52:10', 'Marram at her berth', profile],
    ['0118-trial-tachometer', '2026-10-05 11:24:38', 'hand tachometer at full throttle', tachometer],
    ['0123-gland-at-rest', '2026-10-05 12:05:51', 'packed gland, shaft stopped', gland, 6],
    ['0131-coolant-tester', '2026-10-05 13:16:02', 'refractometer, closed circuit', coolantTester],
    ['0140-house-batteries', '2026-10-05 13:48:27', 'house batteries B1 and B2', battery],
    ['0144-float-switch', '2026-10-05 14:09:45', 'bilge sump, pump and float switch', floatSwitch],
    ['0152-gas-hose', '2026-10-05 14:37:13', 'gas locker: regulator and hose', gasHose],
    ['0159-extinguisher', '2026-10-05 14:58:30', 'extinguisher at the companionway', extinguisher, 6],
    ['0166-distress-signals', '2026-10-05 15:12:04', 'distress signals', flares, 8],
    ['0201-hull-number', '2026-10-06 09:03:40', 'hull number on the transom', hullNumber, 3],
    ['0207-cockpit-drain-hose', '2026-10-06 09:41:16', 'starboard cockpit drain', drainHose],
    ['0211-condenser-outlet', '2026-10-06 10:02:55', 'disused condenser outlet', condenserHose],
    ['0215-clamp', '2026-10-06 10:20:09', 'toilet discharge hose at its valve', rustyClamp],
    ['0219-foot-pump-valve', '2026-10-06 10:44:32', 'foot-pump intake valve', footPumpValve],
    ['0226-shaft-anode', '2026-10-06 11:31:20', 'shaft anode and propeller', shaftAnode],
    ['0231-rudder-heel', '2026-10-06 11:50:48', 'rudder heel casting, port side', heelBolts, 8],
    ['0232-heel-bolt', '2026-10-06 11:52:26', 'middle bolt of the heel casting', heelBolt],
    ['0240-exhaust-hose', '2026-10-06 13:34:15', 'exhaust hose at the muffler', exhaustHose],
    ['0305-moisture-meter', '2026-10-08 10:15:37', 'moisture readings, port bottom', moistureMeter],
];

// ---- Rendering ---------------------------------------------------------------------------------------------------

/** How the upright scene is turned to be stored: the reverse of what a reader of the tag does. */
const turns = {
    1: '', 3: 'rotate(180 800 600)', // The tag asks for half a turn.
    6: 'translate(0 1200) rotate(-90)', // The tag asks for a quarter turn clockwise.
    8: 'translate(1600 0) rotate(90)', // The tag asks for a quarter turn counterclockwise.
};

function scene(shows, draw, orientation) {
    const [width, height] = orientation === 6 || orientation === 8 ? [stored.height, stored.width] : [stored.width, stored.height];
    const strip = `${box(0, height - 62, width, 62, '#2f3a40')}${words(28, height - 20, 30, 'illustration', 'fill="#d9d6cb" font-style="italic"')}${words(width - 28, height - 20, 30, `Marram: ${shows}`, 'fill="#f3f1e8" text-anchor="end"')}`;
    return `<!doctype html><meta charset="utf-8"><style>html,body{margin:0;background:#fff}svg{display:block}</style>`
        + `<svg xmlns="http://www.w3.org/2000/svg" width="${stored.width}" height="${stored.height}" viewBox="0 0 ${stored.width} ${stored.height}">${defs}<g transform="${turns[orientation]}" font-family="DejaVu Sans, Verdana, sans-serif">${draw()}${strip}</g></svg>`;
}

function tagged(jpeg, taken, shows, orientation) {
    const stamp = taken.replaceAll('-', ':');
    piexif.TAGS.Exif[0x9011] ??= { name: 'OffsetTimeOriginal', type: 'Ascii' };
    const exif = piexif.dump({
        '0th': { [piexif.ImageIFD.ImageDescription]: `Illustration: ${shows}`, [piexif.ImageIFD.Orientation]: orientation, [piexif.ImageIFD.DateTime]: stamp },
        Exif: { [piexif.ExifIFD.DateTimeOriginal]: stamp, 0x9011: '-04:00', [piexif.ExifIFD.PixelXDimension]: stored.width, [piexif.ExifIFD.PixelYDimension]: stored.height },
    });
    return Buffer.from(piexif.insert(exif, jpeg.toString('latin1')), 'latin1');
}

const browser = await chromium.launch(launchOptions(await findChromium()));
try {
    const page = await browser.newPage({ viewport: stored, deviceScaleFactor: 1 });
    await mkdir(folder, { recursive: true });
    const names = new Set(pictures.map(([name]) => `${name}.jpg`));
    for (const file of await readdir(folder)) {
        if (file.endsWith('.jpg') && !names.has(file)) await rm(join(folder, file));
    }
    for (const [name, taken, shows, draw, orientation = 1] of pictures) {
        await page.setContent(scene(shows, draw, orientation));
        let picture;
        for (const quality of qualities) {
            picture = tagged(await page.screenshot({ type: 'jpeg', quality }), taken, shows, orientation);
            if (picture.length < largestBytes) break;
        }
        if (picture.length >= largestBytes) throw new Error(`${name}.jpg is ${picture.length} bytes; the limit is ${largestBytes}.`);
        await writeFile(join(folder, `${name}.jpg`), picture);
        console.log(`${name}.jpg  ${Math.round(picture.length / 1000)} kB  orientation ${orientation}`);
    }
} finally {
    await browser.close();
}
