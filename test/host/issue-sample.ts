/** A small survey on disk that is ready to be issued: two files, a house file beside them, one photograph. */
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { issueReport, type IssueOptions, type IssueResult } from '../../src/host/issue.js';
import { nodePhotoSource } from '../../src/host/node-photos.js';

export const picture = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==', 'base64');
/** Another picture of one pixel. */
export const otherPicture = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');

const house = `firm "Alder and Rowe, Surveyors" { address: "2 Quay Lane"  telephone: "555 0100" }
person A-Rowe "Ada Rowe" { role: "Surveyor"  credentials: "Surveying since 2001" }
`;
const main = `use "../house/house"
use "parts"

survey "AR-77" part-survey {
    client: "B. Lindqvist"
    surveyor: A-Rowe
    purpose: "Rig only"
    attended 2026-01-20 ashore "North yard"
    photos: "photos"
}

vessel "Heron" {
    type: sailing-yacht
    length-overall: 31 ft
    photo "heron.png" "Heron ashore"
}
`;
const parts = `system rig "Rig" {
    mast MA1 "Mast" { condition: sound  basis: seen }
    finding F1 "Sheave worn" on MA1 {
        urgency: within-days 30
        seen: "The sheave at the masthead is worn to one side."
        because: "The halyard chafes on its cheek."
        recommend: "Renew the sheave at the masthead."
    }
}
`;

export interface Workspace {
    readonly root: string;
    readonly folder: string;
    readonly main: string;
    readonly issued: string;
    /** Puts a text in the place of another in one of the files. */
    change(file: 'heron.survey' | 'parts.survey', from: string, to: string): void;
    issue(options?: Partial<IssueOptions>): Promise<IssueResult>;
}

/** Where the survey lies: in a folder `work` beside the folder `house`. Issued on 1 February 2026 unless told otherwise. */
export function workspace(root = realpathSync(mkdtempSync(join(tmpdir(), 'garboard-issue-')))): Workspace {
    const folder = join(root, 'work');
    mkdirSync(join(folder, 'photos'), { recursive: true });
    mkdirSync(join(root, 'house'), { recursive: true });
    writeFileSync(join(root, 'house/house.survey'), house);
    // Windows line ends and a byte-order mark: a copy must keep them.
    writeFileSync(join(folder, 'heron.survey'), `\ufeff${main.replaceAll('\n', '\r\n')}`);
    writeFileSync(join(folder, 'parts.survey'), parts);
    writeFileSync(join(folder, 'photos/heron.png'), picture);
    return {
        root, folder, main: join(folder, 'heron.survey'), issued: join(folder, 'issued'),
        change(file, from, to) {
            const text = readFileSync(join(folder, file), 'utf8');
            if (!text.includes(from)) {
                throw new Error(`${file} does not say ${from}`);
            }
            writeFileSync(join(folder, file), text.replace(from, to));
        },
        issue: options => issueReport(join(folder, 'heron.survey'), { today: '2026-02-01', photos: nodePhotoSource({ cacheFolder: undefined }), ...options }),
    };
}

/** The issue that was made. */
export function made(result: IssueResult): IssueResult & { state: 'issued' } {
    if (result.state !== 'issued') {
        throw new Error(`Not issued: ${result.refusals.map(({ message }) => message).join(' | ')}`);
    }
    return result;
}

/** Why nothing was issued, a line each. */
export function refused(result: IssueResult): readonly string[] {
    return result.state === 'refused' ? result.refusals.map(({ message, at }) => `${at ? `${at.file}:${at.line}: ` : ''}${message}`) : ['issued'];
}
