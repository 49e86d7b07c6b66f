/**
 * Speed of water in a pipe or hose, v = Q / A, and the speeds that pump practice stays under: 6 ft/s on the suction
 * side and 10 ft/s on the discharge side (practice, no single source).
 */

export function flowVelocityMs({ flowM3s, boreM }: { readonly flowM3s: number; readonly boreM: number }): number {
    return flowM3s / (Math.PI / 4 * boreM ** 2);
}

export function flowVelocityLimitMs(side: 'suction' | 'discharge'): number {
    return (side === 'suction' ? 6 : 10) * 0.3048;
}
