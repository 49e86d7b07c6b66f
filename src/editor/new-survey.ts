/** The text a new survey begins with: what every survey needs, in order, with nothing made up. */
import { quote } from './edits.js';

export interface NewSurvey {
    readonly number: string;
    readonly kind: string;
    readonly vessel: string;
    /** ISO date of the attendance. */
    readonly date: string;
    readonly state: 'ashore' | 'afloat';
}

export function newSurveyText({ number, kind, vessel, date, state }: NewSurvey): string {
    return `survey ${quote(number)} ${kind} {
    client: ""
    attended ${date} ${state} ""
    photos: "photos"
}

vessel ${quote(vessel)} {
}

system skin "Through-hulls and sea valves" {
}
`;
}
