/** Shares and small figures in sentences. */

/** A share to a tenth of a percent: "18 %", "17.5 %". */
export function percent(share: number): string {
    return `${Math.round(share * 1000) / 10} %`;
}

/** A number to a tenth: "2.2". */
export function toTenth(value: number): string {
    return String(Math.round(value * 10) / 10);
}
