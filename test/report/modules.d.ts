declare module 'piexifjs' {
    interface Tags {
        readonly [name: string]: number;
    }
    const piexif: {
        readonly ImageIFD: Tags & { readonly Orientation: number };
        readonly ExifIFD: Tags & { readonly DateTimeOriginal: number; readonly OffsetTimeOriginal: number };
        readonly GPSIFD: Tags & { readonly GPSLatitudeRef: number; readonly GPSLatitude: number; readonly GPSLongitudeRef: number; readonly GPSLongitude: number };
        dump(exif: Readonly<Record<string, Readonly<Record<number, unknown>>>>): string;
        insert(exif: string, jpeg: string): string;
    };
    export default piexif;
}
declare module 'pngjs' {
    export class PNG {
        constructor(size: { readonly width: number; readonly height: number });
        readonly data: Buffer;
        static readonly sync: { write(png: PNG): Buffer };
    }
}
declare module 'sax' {
    interface Parser {
        onerror: (error: Error) => void;
        onopentag: (tag: { readonly name: string; readonly attributes: Readonly<Record<string, string>> }) => void;
        onclosetag: (name: string) => void;
        ontext: (text: string) => void;
        write(text: string): Parser;
        close(): Parser;
    }
    const sax: { parser(isStrict: boolean): Parser };
    export default sax;
}
