declare module 'convert-units' {
    interface Conversion { from(unit: string): { to(unit: string): number } }
    export default function convert(value: number): Conversion;
}
