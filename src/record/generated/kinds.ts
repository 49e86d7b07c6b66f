// Generated from the catalogue by `npm run generate`. Do not edit.
/* eslint-disable */
import type { CheckRef, Citation, ComponentRef, DateValue, MaterialValue, PersonRef, Quantity, Text, Word } from '../model.js';

/** Survey.  */
export interface SurveyFacts {
    readonly 'client': Text;
    readonly 'surveyor': PersonRef;
    readonly 'photos': Text;
}

/** Vessel.  */
export interface VesselFacts {
    readonly 'type': Word<'sailing-yacht' | 'motor-yacht'>;
    readonly 'hull-number': Text;
    readonly 'length-overall': Quantity;
    readonly 'beam': Quantity;
    readonly 'draft': Quantity;
    readonly 'hull-material': MaterialValue;
    readonly 'built': Quantity;
}

/** Joint.  */
export interface JointFacts {
    readonly 'clamps': Quantity;
}

/** Run.  */
export interface RunFacts {
}

/** Contact.  */
export interface ContactFacts {
}

/** Finding.  */
export interface FindingFacts {
    readonly 'answers': CheckRef;
    readonly 'urgency': Word<'at-once' | 'before-launch' | 'within-days'>;
    readonly 'seen': Text;
    readonly 'because': Text;
    readonly 'recommend': Text;
    readonly 'cites': Citation;
    readonly 'cost': Quantity;
}

/** Component.  */
export interface ComponentFacts {
    readonly 'place': Text;
    readonly 'metal': MaterialValue;
    readonly 'material': MaterialValue;
    readonly 'condition': Word<'sound' | 'perished'>;
}

/** hull-opening.  */
export interface HullOpeningFacts extends ComponentFacts {
    /** x */
    readonly 'size': Quantity;
    readonly 'below-waterline': Quantity;
}

/** Through-hull.  */
export interface ThroughHullFacts extends HullOpeningFacts {
}

/** valve.  */
export interface ValveFacts extends ComponentFacts {
    readonly 'size': Quantity;
    readonly 'pattern': Word<'gate-valve' | 'ball-valve'>;
}

/** hose.  */
export interface HoseFacts extends ComponentFacts {
    readonly 'bore': Quantity;
    readonly 'length': Quantity;
    readonly 'reinforcement': Word<'none' | 'wire'>;
}

/** material.  */
export interface MaterialFacts {
}

/** standard.  */
export interface StandardFacts {
}

/** person.  */
export interface PersonFacts {
}

/** The facts of each kind, by its id. */
export interface KindFacts {
    readonly 'survey': SurveyFacts;
    readonly 'vessel': VesselFacts;
    readonly 'joint': JointFacts;
    readonly 'run': RunFacts;
    readonly 'contact': ContactFacts;
    readonly 'finding': FindingFacts;
    readonly 'component': ComponentFacts;
    readonly 'hull-opening': HullOpeningFacts;
    readonly 'through-hull': ThroughHullFacts;
    readonly 'valve': ValveFacts;
    readonly 'hose': HoseFacts;
    readonly 'material': MaterialFacts;
    readonly 'standard': StandardFacts;
    readonly 'person': PersonFacts;
}

export type KindName = keyof KindFacts;
export type FactsOf<K extends KindName> = KindFacts[K];

/** Every property that some kind declares. */
export interface AnyFacts {
    readonly 'answers': CheckRef;
    readonly 'beam': Quantity;
    readonly 'because': Text;
    readonly 'below-waterline': Quantity;
    readonly 'bore': Quantity;
    readonly 'built': Quantity;
    readonly 'cites': Citation;
    readonly 'clamps': Quantity;
    readonly 'client': Text;
    readonly 'condition': Word<'sound' | 'perished'>;
    readonly 'cost': Quantity;
    readonly 'draft': Quantity;
    readonly 'hull-material': MaterialValue;
    readonly 'hull-number': Text;
    readonly 'length': Quantity;
    readonly 'length-overall': Quantity;
    readonly 'material': MaterialValue;
    readonly 'metal': MaterialValue;
    readonly 'pattern': Word<'gate-valve' | 'ball-valve'>;
    readonly 'photos': Text;
    readonly 'place': Text;
    readonly 'recommend': Text;
    readonly 'reinforcement': Word<'none' | 'wire'>;
    readonly 'seen': Text;
    readonly 'size': Quantity;
    readonly 'surveyor': PersonRef;
    readonly 'type': Word<'sailing-yacht' | 'motor-yacht'>;
    readonly 'urgency': Word<'at-once' | 'before-launch' | 'within-days'>;
}
