/** What a mix of coolant does, and how to bring it to another share, in words. */
import { convertTo } from '../../quantities/index.js';
import { coolantBoilingK, coolantBoilingUnderCapK, coolantFreezingK, exchangedVolumeM3, freshMixM3, isFreezingTabulated, shareForFreezing, topUp, type Glycol, type TopUp } from '../../trade/coolant.js';
import { siOf, wordOf, type Component } from '../../record/model.js';
import type { ProblemFigure } from '../contract.js';
import { computedBoth, percent } from '../phrasing.js';
import { kindsOf, temperatureBoth, type Fault } from './coolant-faults.js';

/** The share of glycol in it: as recorded, else from its freezing point where its kind is known. */
function shareOf(coolant: Component): number | undefined {
    const freezing = siOf(coolant, 'freeze-point');
    const kinds = kindsOf(coolant);
    const [kind] = kinds;
    return siOf(coolant, 'glycol') ?? (freezing !== undefined && kind && kinds.length === 1 ? shareForFreezing(kind, freezing) : undefined);
}

/** `of` tells the glycol where it may be either. */
function freezingText(kind: Glycol, share: number, of: string): string {
    const point = temperatureBoth(coolantFreezingK(kind, share));
    return isFreezingTabulated(kind, share) ? `at about ${point}${of}` : `somewhere under ${point}${of}, where the table of freezing points ends at 60 %`;
}

/** "Such a mix freezes at about … and boils at about …": computed, for each kind of glycol that it may be of. */
export function mixText(coolant: Component, saysFreezing: boolean): string {
    const share = shareOf(coolant);
    if (share === undefined || wordOf(coolant, 'glycol-kind') === 'mixed') {
        return '';
    }
    const kinds = kindsOf(coolant);
    const of = (kind: Glycol) => kinds.length > 1 ? ` as ${kind} glycol` : '';
    const each = (point: (kind: Glycol) => number) => kinds.map(kind => `${temperatureBoth(point(kind))}${of(kind)}`).join(' and ');
    const cap = siOf(coolant, 'cap-pressure');
    const underCap = cap === undefined || cap <= 0 ? '' : `, or ${each(kind => coolantBoilingUnderCapK(share, cap, kind))} under its cap`;
    const freezes = saysFreezing ? `freezes ${kinds.map(kind => freezingText(kind, share, of(kind))).join(' and ')}${kinds.length > 1 || kinds.some(kind => !isFreezingTabulated(kind, share)) ? ',' : ''} and ` : '';
    return ` Such a mix ${freezes}boils at about ${each(kind => coolantBoilingK(share, kind))}${underCap}.`;
}

/** The computed points as figures, by kind of glycol. */
export function mixFigures(coolant: Component): Record<string, ProblemFigure> {
    const share = siOf(coolant, 'glycol');
    if (share === undefined || wordOf(coolant, 'glycol-kind') === 'mixed') {
        return {};
    }
    const celsius = (kelvin: number) => ({ value: Math.round(convertTo(kelvin, 'C') * 10) / 10, unit: 'C' });
    return Object.fromEntries(kindsOf(coolant).flatMap(kind => [
        ...(isFreezingTabulated(kind, share) ? [[`freezes, ${kind}`, celsius(coolantFreezingK(kind, share))] as const] : []),
        [`boils, ${kind}`, celsius(coolantBoilingK(share, kind))] as const,
    ]));
}

const liters = (m3: number) => computedBoth(m3, 'volume');

/** What puts all the faults right, as one act: a flush goes before a renewal, and that before a correction of the share. */
export function remedyText(coolant: Component, faults: readonly Fault[]): string {
    const remedies = faults.map(fault => fault.remedy);
    const texts = remedies.flatMap(remedy => typeof remedy === 'object' && 'text' in remedy ? [remedy.text] : []);
    const shares = remedies.flatMap(remedy => typeof remedy === 'object' && 'share' in remedy ? [remedy.share] : []);
    const share = shares.length > 0 ? Math.max(...shares) : undefined;
    const flushes = remedies.flatMap(remedy => typeof remedy === 'object' && 'flush' in remedy ? [remedy.flush] : []);
    const flush = flushes.reduce((longest, one) => one.length > longest.length ? one : longest, '');
    const mix = texts.length > 0 || share === undefined ? undefined : `a mix of ${percent(share)}${freshText(coolant, share)}`;
    if (flush !== '') {
        return `${flush}, and fill it anew with ${mix ?? 'one kind of glycol'}${wordOf(coolant, 'glycol-kind') === 'mixed' ? ' of one kind' : ''}${texts.length > 0 ? `; ${texts.join('; ')}` : ''}`;
    }
    if (remedies.includes('renew')) {
        return mix === undefined ? ['renew it', ...texts].join('; ') : `renew it with ${mix}`;
    }
    return texts.length > 0 ? [...new Set(texts)].join('; ') : share === undefined ? '' : `bring it to ${percent(share)}${exchangeText(coolant, share)}`;
}

function freshText(coolant: Component, share: number): string {
    const volume = siOf(coolant, 'volume');
    const { concentrateM3, waterM3 } = freshMixM3(volume ?? 0, share);
    return volume === undefined ? '' : `, ${liters(concentrateM3)} of concentrate and ${liters(waterM3)} of water`;
}

/** What to drain and what to fill, where the volume of the system is recorded. */
function exchangeText(coolant: Component, target: number): string {
    const volumeM3 = siOf(coolant, 'volume');
    const share = shareOf(coolant);
    if (volumeM3 === undefined || share === undefined) {
        return '';
    }
    const isWeak = share < target;
    const stronger = wordOf(coolant, 'added') === 'premix' ? 0.5 : 1;
    const shortByM3 = siOf(coolant, 'short-by') ?? 0;
    if (shortByM3 > 0) {
        return topUpText({ volumeM3, share, targetShare: target, addedShare: stronger, shortByM3 });
    }
    const addedShare = isWeak ? stronger : 0;
    const fill = fillOf(addedShare);
    const exchanged = exchangedVolumeM3({ volumeM3, share, targetShare: target, addedShare });
    return exchanged === undefined ? unreachable(fill) : ` by draining ${liters(exchanged)} and filling with ${fill}`;
}

/** The same where the system is not full. */
function topUpText(short: TopUp): string {
    const fill = fillOf(short.addedShare);
    const filling = topUp(short);
    if (filling === undefined) {
        return unreachable(fill);
    }
    const parts = [...(filling.addM3 > 1e-6 ? [`${liters(filling.addM3)} of ${fill}`] : []), ...(filling.waterM3 > 1e-6 ? [`${liters(filling.waterM3)} of water`] : [])];
    return filling.drainM3 > 1e-6 ? ` by draining ${liters(filling.drainM3)} and filling with ${parts.join(' and ')}` : ` by topping it up with ${parts.join(' and ')}, without draining`;
}

const fillOf = (addedShare: number) => addedShare === 1 ? 'concentrate' : addedShare === 0 ? 'water' : 'premix of 50 %';

const unreachable = (fill: string) => ` by a full change; adding ${fill} to what stays in does not reach it`;
