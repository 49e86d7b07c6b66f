/** Shares and small figures in sentences. */

/** A number to a tenth: "2.2". */
export function toTenth(value: number): string {
    return String(Math.round(value * 10) / 10);
}

/** A thickness in both units, fine enough to tell plate from plate: "5.21 mm (0.205 in)". */
export function thicknessBoth(m: number): string {
    return `${Math.round(m * 1e5) / 100} mm (${Math.round(m / 0.0254 * 1000) / 1000} in)`;
}
