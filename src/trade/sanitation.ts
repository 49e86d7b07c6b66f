/**
 * Marine sanitation devices, 33 CFR 159.7 (published). A vessel with an installed toilet is to have an operable device
 * of type II or III, or of type I where she is no longer than 65 ft (printed as 19.7 m). Type I treats to 1000
 * coliforms per 100 mL without floating solids, type II to 200 and 150 mg/L of solids (159.53); type III lets nothing out.
 */

export type DeviceType = 'type-i' | 'type-ii' | 'type-iii';

/** Greatest length with a device of type I, m (65 ft). */
export const typeOneToM = 65 * 0.3048;

export function isDeviceAllowed(type: DeviceType, lengthM: number): boolean {
    return type !== 'type-i' || lengthM <= typeOneToM + 1e-9;
}
