declare module '*.woff2' {
    /** The file in base64, as the bundle holds it. */
    const base64: string;
    export default base64;
}
