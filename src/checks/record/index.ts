/** Checks of the record itself: its findings, its completeness, its consistency. */
import type { Check } from '../contract.js';
import { citedWithoutClause } from './cited-without-clause.js';
import { contradictingValues } from './contradicting-values.js';
import { countsOrDatesDisagree } from './counts-or-dates-disagree.js';
import { earlierRecommendationNotTakenUp } from './earlier-recommendation-not-taken-up.js';
import { faultWithoutFinding } from './fault-without-finding.js';
import { figureUnusual } from './figure-unusual.js';
import { findingIncomplete } from './finding-incomplete.js';
import { findingNumberChanged } from './finding-number-changed.js';
import { followedReportNotFound } from './followed-report-not-found.js';
import { followedReportOfAnotherVessel } from './followed-report-of-another-vessel.js';
import { otherBoatLeftIn } from './other-boat-left-in.js';
import { photoLooseOrWrongSide } from './photo-loose-or-wrong-side.js';
import { photoWrongDay } from './photo-wrong-day.js';
import { recommendationClosedUnproved } from './recommendation-closed-unproved.js';
import { sectionSilent } from './section-silent.js';
import { urgencyInflated } from './urgency-inflated.js';

export const recordChecks: readonly Check[] = [
    faultWithoutFinding, figureUnusual, findingIncomplete, contradictingValues, sectionSilent, urgencyInflated, otherBoatLeftIn, countsOrDatesDisagree, photoWrongDay,
    photoLooseOrWrongSide, citedWithoutClause, recommendationClosedUnproved,
    earlierRecommendationNotTakenUp, findingNumberChanged, followedReportNotFound, followedReportOfAnotherVessel,
];
