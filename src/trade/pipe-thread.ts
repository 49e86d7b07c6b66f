/**
 * Pipe threads of small craft and whether a male and a female one make a joint.
 *
 * Pipe outside diameters, threads an inch and hand-tight lengths L1 as three suppliers tabulate ASME B1.20.1; L2, E0
 * and E1 by its formulas: L2 = (0.8 D + 6.8) / n, E0 = D - (0.05 D + 1.1) / n, E1 = E0 + L1 / 16. Pitches and major
 * diameters of ISO 228-1 and ISO 7-1 as published. That a straight stem engages two or three turns in a tapered valve
 * is from two cruising pages; the least of four turns is from memory.
 */

export type ThreadForm = 'npt' | 'nps' | 'bspp' | 'bspt';

const titles: Readonly<Record<ThreadForm, string>> = {
    npt: 'taper pipe thread (NPT)', nps: 'straight pipe thread (NPS)', bspp: 'parallel pipe thread G (BSPP)', bspt: 'taper pipe thread R (BSPT)',
};

export function threadTitle(form: ThreadForm): string {
    return titles[form];
}

/** Fewer turns than this engaged are too few to hold (from memory of seacock makers' advice). */
export const leastTurns = 4;

export type ThreadVerdict =
    /** One form, or a taper male in a parallel female of the same family, which is how ISO 7-1 joints are made. */
    | 'mates'
    /** Straight male in taper female: binds after two or three turns. */
    | 'straight-into-taper'
    /** Taper male in straight female of the 60 degree family: seals on few threads. */
    | 'taper-into-straight'
    /** 60 against 55 degrees, and at most sizes another pitch. */
    | 'other-family';

const family = (form: ThreadForm): 'american' | 'british' => form === 'npt' || form === 'nps' ? 'american' : 'british';
const isTaper = (form: ThreadForm): boolean => form === 'npt' || form === 'bspt';

export function judgeThreads({ male, female }: { readonly male: ThreadForm; readonly female: ThreadForm }): ThreadVerdict {
    if (family(male) !== family(female)) {
        return 'other-family';
    }
    if (male === female) {
        return 'mates';
    }
    if (isTaper(female)) {
        return 'straight-into-taper';
    }
    return family(male) === 'british' ? 'mates' : 'taper-into-straight';
}

export interface NptSize {
    readonly sizeIn: number;
    /** Outside diameter of the pipe, in. */
    readonly pipeIn: number;
    readonly threadsPerInch: number;
    /** Hand-tight engagement, in. */
    readonly l1In: number;
}

const npt: readonly NptSize[] = ([
    [0.25, 0.540, 18, 0.228], [0.375, 0.675, 18, 0.240], [0.5, 0.840, 14, 0.320], [0.75, 1.050, 14, 0.339], [1, 1.315, 11.5, 0.400], [1.25, 1.660, 11.5, 0.420],
    [1.5, 1.900, 11.5, 0.420], [2, 2.375, 11.5, 0.436], [2.5, 2.875, 8, 0.682], [3, 3.500, 8, 0.766], [4, 4.500, 8, 0.844],
] as const).map(([sizeIn, pipeIn, threadsPerInch, l1In]) => ({ sizeIn, pipeIn, threadsPerInch, l1In }));

/** The NPT row of a nominal size in inches; undefined for sizes not tabulated. */
export function nptSize(sizeIn: number): NptSize | undefined {
    return npt.find(row => Math.abs(row.sizeIn - sizeIn) < 1e-6);
}

/** Effective thread length L2, in. */
export function nptEffectiveLengthIn({ pipeIn, threadsPerInch }: NptSize): number {
    return (0.8 * pipeIn + 6.8) / threadsPerInch;
}

/** Pitch diameter at the hand-tight plane E1, in. */
export function nptPitchDiameterE1In({ pipeIn, threadsPerInch, l1In }: NptSize): number {
    return pipeIn - (0.05 * pipeIn + 1.1) / threadsPerInch + l1In / 16;
}

/** Outside diameter of pipe of a nominal size, m; undefined for sizes not tabulated. */
export function pipeOutsideM(sizeIn: number): number | undefined {
    const row = nptSize(sizeIn);
    return row && row.pipeIn * 0.0254;
}

const bsp: readonly (readonly [sizeIn: number, threadsPerInch: number, majorMm: number])[] = [
    [0.25, 19, 13.157], [0.375, 19, 16.662], [0.5, 14, 20.955], [0.75, 14, 26.441], [1, 11, 33.249], [1.25, 11, 41.910], [1.5, 11, 47.803], [2, 11, 59.614],
    [2.5, 11, 75.184], [3, 11, 87.884], [4, 11, 113.030],
];

export function threadsPerInch(form: ThreadForm, sizeIn: number): number | undefined {
    return family(form) === 'american' ? nptSize(sizeIn)?.threadsPerInch : bsp.find(row => Math.abs(row[0] - sizeIn) < 1e-6)?.[1];
}

/** Major diameter of a British pipe thread, m. */
export function bspMajorM(sizeIn: number): number | undefined {
    const row = bsp.find(([size]) => Math.abs(size - sizeIn) < 1e-6);
    return row && row[2] / 1000;
}
