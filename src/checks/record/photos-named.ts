/** Every photograph that the survey names, with what it is shown of. */
import type { Component, Finding, Photo, SurveyRecord } from '../../record/model.js';

export interface NamedPhoto {
    readonly photo: Photo;
    /** What it shows: a component, the components of a finding, or the vessel. */
    readonly of: readonly Component[];
    readonly finding?: Finding;
    readonly component?: Component;
}

export function photosOf(record: SurveyRecord): NamedPhoto[] {
    return [
        ...[...record.survey?.photos ?? [], ...record.vessel?.photos ?? []].map(photo => ({ photo, of: [] })),
        ...[...record.components.values()].flatMap(component => component.photos.map(photo => ({ photo, of: [component], component }))),
        ...record.findings.flatMap(finding => finding.photos.map(photo => ({ photo, of: finding.on, finding }))),
    ];
}
