// Generated from the catalogue by `npm run generate`. Do not edit.
/* eslint-disable */
import type { CheckRef, Citation, ComponentRef, DateValue, MaterialValue, PersonRef, Quantity, Text, Word } from '../model.js';

/** Component. Anything aboard that is worth recording. */
export interface ComponentFacts {
    /** Where it is: compartment, frame, height */
    readonly 'place': Text;
    /** Side of the vessel */
    readonly 'side': Word<'port' | 'starboard' | 'centerline' | 'both'>;
    /** Maker, as marked */
    readonly 'maker': Text;
    /** Serial or part number */
    readonly 'serial': Text;
    /** How many */
    readonly 'quantity': Quantity;
    /** Metal it is made of */
    readonly 'metal': MaterialValue;
    /** Material it is made of */
    readonly 'material': MaterialValue;
    /** When it was made, as marked */
    readonly 'made': DateValue;
    /** When it was fitted */
    readonly 'fitted': DateValue;
    /** Word of condition */
    readonly 'condition': Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen'>;
    /** How it is known */
    readonly 'basis': Word<'seen' | 'stated' | 'measured' | 'operated'>;
    /** How it is reached */
    readonly 'access': Text;
    /** Whether it lies in water */
    readonly 'wetted': Word<'yes' | 'no'>;
    /** Whether it is electrically separated from its neighbors */
    readonly 'insulated': Word<'yes' | 'no'>;
    /** Whether it is bonded to the anodes */
    readonly 'bonded': Word<'yes' | 'no'>;
    /** Metal surface exposed to the water */
    readonly 'exposed-area': Quantity;
    /** What it serves */
    readonly 'serves': ComponentRef;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Fitting. A part that a hose or pipe is joined to. */
export interface FittingFacts extends ComponentFacts {
    /** Nominal size as marked; a pipe size is not a hose size */
    readonly 'size': Quantity;
    /** Clear bore */
    readonly 'bore': Quantity;
    /** Outside diameter of its hose tail */
    readonly 'spigot': Quantity;
    /** Length of its hose tail */
    readonly 'tail-length': Quantity;
    /** Outside diameters of its two ends, in the order of the run */
    readonly 'ends': Quantity;
    /** Its thread */
    readonly 'thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Its male thread */
    readonly 'male-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Its female thread */
    readonly 'female-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Color of the bare metal when scraped */
    readonly 'scrape-color': Word<'yellow' | 'pink' | 'red-brown' | 'gray'>;
    /** Whether it is marked or certified as dezincification-resistant */
    readonly 'dezincification-resistant': Word<'yes' | 'no'>;
    /** Whether it weeps */
    readonly 'weeps': Word<'yes' | 'no'>;
}

/** Survey. The engagement: who asked for it, who attended, when, where and how she lay, and what is left out. */
export interface SurveyFacts {
    /** Who engaged the surveyor; only the client owns the report */
    readonly 'client': Text;
    /** For whose use the report is made: buyer, owner, underwriter, lender */
    readonly 'requested-for': Text;
    /** What the survey is for */
    readonly 'purpose': Text;
    /** Who surveyed and signs */
    readonly 'surveyor': PersonRef;
    /** Who read the report as a stranger before it was issued */
    readonly 'reviewer': PersonRef;
    /** Date of the agreement */
    readonly 'engaged': DateValue;
    /** Date of issue; due dates are counted from it */
    readonly 'issued': DateValue;
    /** Number of this issue; an amendment is a new one */
    readonly 'issue': Quantity;
    /** Number of the earlier report that this one follows up */
    readonly 'follows': Text;
    /** Folder of the photographs, beside this file */
    readonly 'photos': Text;
    /** How she lay for the survey, where the attendances do not say */
    readonly 'state': Word<'ashore' | 'afloat'>;
    /** Lowest temperature expected where she lies over winter */
    readonly 'coldest-expected': Quantity;
    /** What she is to be used for, and in what waters */
    readonly 'intended-use': Text;
    /** Persons present */
    readonly 'present': Text;
    /** Weather at the attendances */
    readonly 'weather': Text;
    /** Instruments used, with serial and date of calibration */
    readonly 'tools': Text;
    /** Whether she was run, for how long and by whom */
    readonly 'trial': Text;
    /** What the survey covers, in the words of the agreement */
    readonly 'scope': Text;
    /** Limits in the surveyor's own words, printed with the standing ones */
    readonly 'limits': Text;
    /** The statement that is signed */
    readonly 'statement': Text;
    /** How the fee is made up; never on the value */
    readonly 'fee-basis': Text;
    /** Openings below the waterline counted outside */
    readonly 'openings-outside': Quantity;
    /** Openings counted inside */
    readonly 'openings-inside': Quantity;
    /** Openings blanked, glassed over or welded shut */
    readonly 'openings-blanked': Quantity;
}

/** Vessel. Her identity and dimensions. */
export interface VesselFacts {
    /** Kind of craft */
    readonly 'type': Word<'motor-yacht' | 'sailing-yacht' | 'catamaran' | 'trimaran' | 'steel-vessel' | 'aluminum-workboat' | 'wooden-classic' | 'houseboat' | 'rigid-inflatable' | 'gasoline-cruiser'>;
    /** Hull identification number, as read on the hull */
    readonly 'hull-number': Text;
    /** Official number of a documented vessel */
    readonly 'official-number': Text;
    /** State or national registration */
    readonly 'registration': Text;
    /** Flag state */
    readonly 'flag': Text;
    /** Hailing port */
    readonly 'port': Text;
    /** Builder, as stated or marked */
    readonly 'builder': Text;
    /** Designer, as stated */
    readonly 'designer': Text;
    /** Model, as stated or marked */
    readonly 'model': Text;
    /** Year she was built */
    readonly 'built': Quantity;
    /** Model year */
    readonly 'model-year': Quantity;
    /** Greatest length with fittings */
    readonly 'length-overall': Quantity;
    /** Length of the hull */
    readonly 'length-on-deck': Quantity;
    /** Length at the waterline */
    readonly 'length-waterline': Quantity;
    /** Greatest width */
    readonly 'beam': Quantity;
    /** Depth of the lowest part below the water */
    readonly 'draft': Quantity;
    /** Height from the water to the highest fixed point */
    readonly 'air-draft': Quantity;
    /** Weight of the water she pushes aside */
    readonly 'displacement': Quantity;
    /** Weight low down for stability */
    readonly 'ballast': Quantity;
    /** Gross tonnage by certificate */
    readonly 'gross-tonnage': Quantity;
    /** Net tonnage by certificate */
    readonly 'net-tonnage': Quantity;
    /** What the hull is built of */
    readonly 'hull-material': MaterialValue;
    /** What the deck is built of */
    readonly 'deck-material': MaterialValue;
    /** How she is built */
    readonly 'construction': Text;
    /** Fuel of the propulsion */
    readonly 'fuel': Word<'diesel' | 'gasoline' | 'electric' | 'none'>;
    /** How many main engines */
    readonly 'engines': Quantity;
    /** Water she is kept in */
    readonly 'water': Word<'salt' | 'brackish' | 'fresh'>;
    /** Whether she is kept where sewage may not be let out */
    readonly 'no-discharge-waters': Word<'yes' | 'no'>;
    /** Design category as marked */
    readonly 'design-category': Word<'a' | 'b' | 'c' | 'd'>;
    /** Volume from the bilge to the cabin sole that can fill */
    readonly 'floodable-volume': Quantity;
    /** Lowest temperature expected where she lies over winter */
    readonly 'coldest-expected': Quantity;
    /** Persons she carries */
    readonly 'persons': Quantity;
    /** Source of the particulars: measured, stated, papers */
    readonly 'particulars': Text;
}

/** Run. A plumbing run: components in the order that water, fuel or gas passes through them. */
export interface RunFacts {
    /** What the run is for */
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    /** Whether the run is in use */
    readonly 'in-use': Word<'yes' | 'no'>;
    /** What is in it */
    readonly 'contains': Word<'salt-water' | 'fresh-water' | 'brackish-water' | 'fuel' | 'gas' | 'exhaust' | 'coolant' | 'air'>;
    /** Flow it must carry */
    readonly 'flow': Quantity;
    /** Condition of the run as a whole */
    readonly 'condition': Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen'>;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Joint. What is special where two parts of a run meet. */
export interface JointFacts {
    /** Clamps at this joint */
    readonly 'clamps': Quantity;
    /** Kind of clamp */
    readonly 'clamp-type': Word<'worm' | 'bolt' | 'spring' | 'swaged'>;
    /** Metal of the clamps, screw and housing included */
    readonly 'clamp-material': MaterialValue;
    /** Condition of the clamps */
    readonly 'clamp-condition': Word<'sound' | 'rusty' | 'cracked' | 'broken' | 'loose'>;
    /** Width of the clamp's band */
    readonly 'clamp-band': Quantity;
    /** Range the clamp is made for, as 32 mm..50 mm */
    readonly 'clamp-range': Quantity;
    /** Outside diameter of the tail the hose sits on, measured at this joint */
    readonly 'spigot': Quantity;
    /** Length of the tail the hose sits on */
    readonly 'tail-length': Quantity;
    /** Thread of both parts, where they are alike */
    readonly 'thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Thread of the male part */
    readonly 'male-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Thread of the female part */
    readonly 'female-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    /** Turns that the threads engage */
    readonly 'turns-engaged': Quantity;
    /** What the joint is sealed with */
    readonly 'sealant': Text;
    /** Whether the two parts are electrically separated here */
    readonly 'insulated': Word<'yes' | 'no'>;
    /** Whether the joint weeps */
    readonly 'weeps': Word<'yes' | 'no'>;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Contact. Parts that touch each other metal to metal, apart from a run. */
export interface ContactFacts {
    /** Whether they are electrically separated */
    readonly 'insulated': Word<'yes' | 'no'>;
    /** Whether water joins them */
    readonly 'wetted': Word<'yes' | 'no'>;
    /** Exposed area of the nobler part divided by that of the baser */
    readonly 'area-ratio': Quantity;
    /** What is left of the anode that protects them */
    readonly 'anode-left': Quantity;
    /** Whether they are bonded to an anode */
    readonly 'bonded': Word<'yes' | 'no'>;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Finding. What is wrong, why it matters, what is to be done and by when. */
export interface FindingFacts {
    /** The checks this finding answers */
    readonly 'answers': CheckRef;
    /** By when: the event that makes it due */
    readonly 'urgency': Word<'at-once' | 'before-launch' | 'before-departure' | 'before-use' | 'before-completion' | 'within-days' | 'next-haul-out' | 'in-upkeep' | 'keep-watch' | 'note-only'>;
    /** Why the urgency differs from the one proposed */
    readonly 'reason-for-urgency': Text;
    /** Where, in words, beyond the components named */
    readonly 'place': Text;
    /** What was seen, measured or tried */
    readonly 'seen': Text;
    /** Why it is wrong and what it can lead to */
    readonly 'because': Text;
    /** What is to be done, on what, by whom */
    readonly 'recommend': Text;
    /** Standard and clause, each in quotes */
    readonly 'cites': Citation;
    /** Cost allowed, where the surveyor is engaged to say */
    readonly 'cost': Quantity;
    /** Other findings or papers it hangs together with */
    readonly 'related': Text;
}

/** Reading. A table of readings. */
export interface ReadingFacts {
    /** What is measured */
    readonly 'measures': Word<'moisture' | 'percussion' | 'thickness' | 'potential' | 'trial' | 'temperature' | 'pressure' | 'other'>;
    /** Instrument */
    readonly 'instrument': Text;
    /** Serial of the instrument */
    readonly 'serial': Text;
    /** Calibration, test block or reference reading */
    readonly 'calibration': Text;
    /** Who took the readings */
    readonly 'operator': Text;
    /** Surface, hours since lifting, air and water */
    readonly 'conditions': Text;
    /** Date */
    readonly 'taken': DateValue;
    /** Scale of the readings */
    readonly 'scale': Text;
    /** Reading of the dry or sound reference */
    readonly 'reference': Quantity;
    /** Headings of the columns */
    readonly 'columns': Text;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Valuation. The opinion of value and what it rests on. */
export interface ValuationFacts {
    /** The definition of value used */
    readonly 'basis': Text;
    /** Date the opinion is for */
    readonly 'effective': DateValue;
    /** Approaches used, and why others were left out */
    readonly 'method': Text;
    /** The surveyor's opinion */
    readonly 'opinion': Quantity;
    /** Lower end of the range */
    readonly 'low': Quantity;
    /** Upper end of the range */
    readonly 'high': Quantity;
    /** Cost of a like new vessel today */
    readonly 'replacement': Quantity;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Comparable. A sale, or an asking price, that the value rests on. */
export interface ComparableFacts {
    /** Price she was sold at */
    readonly 'sold': Quantity;
    /** Price asked, where no sale is known */
    readonly 'asking': Quantity;
    /** When */
    readonly 'sold-on': DateValue;
    /** Where the figure comes from */
    readonly 'source': Text;
    /** Weight in the reconciled value; the weights make up 1 */
    readonly 'weight': Quantity;
    /** Adjusted price, where the surveyor writes it himself */
    readonly 'adjusted': Quantity;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Person. Somebody named in the report. */
export interface PersonFacts {
    /** Accreditation and training */
    readonly 'credentials': Text;
    /** Part taken in the survey */
    readonly 'role': Text;
    /** Address */
    readonly 'address': Text;
    /** E-mail */
    readonly 'email': Text;
    /** Telephone */
    readonly 'telephone': Text;
}

/** Firm. The surveyor's firm, as its papers name it. */
export interface FirmFacts {
    /** Address */
    readonly 'address': Text;
    /** E-mail */
    readonly 'email': Text;
    /** Telephone */
    readonly 'telephone': Text;
    /** Website */
    readonly 'website': Text;
    /** Standing words of the signed statement */
    readonly 'statement': Text;
    /** Standing words of the limits */
    readonly 'limits': Text;
    /** Standing words of the scope */
    readonly 'scope': Text;
}

/** Material. A material, with what the checks need to know of it. */
export interface MaterialFacts {
    /** Family it belongs to */
    readonly 'class': Word<'copper-alloy' | 'nickel-alloy' | 'stainless' | 'iron-or-steel' | 'aluminum' | 'zinc-anode' | 'magnesium-anode' | 'titanium' | 'carbon' | 'lead' | 'tin' | 'metal' | 'plastic' | 'reinforced-plastic' | 'rubber' | 'wood' | 'laminate' | 'other'>;
    /** Potential in flowing sea water against saturated calomel, as a range */
    readonly 'potential': Quantity;
    /** The same where the metal has lost its passive film */
    readonly 'active-potential': Quantity;
    /** Share of zinc by mass */
    readonly 'zinc': Quantity;
    /** Whether it conducts, where the family does not say */
    readonly 'conducts': Word<'yes' | 'no'>;
    /** Whether it is fiber-reinforced */
    readonly 'reinforced': Word<'yes' | 'no'>;
    /** Table the potential is taken from */
    readonly 'series': Text;
    /** Where the figures come from */
    readonly 'source': Text;
    /** How well the figures are known */
    readonly 'provenance': Word<'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen'>;
    /** What a surveyor should know of it */
    readonly 'remarks': Text;
}

/** Standard. A standard, rule or practice that findings cite. */
export interface StandardFacts {
    /** Edition */
    readonly 'edition': Text;
    /** Whether it is law where it applies, a voluntary standard, or practice of the trade */
    readonly 'standing': Word<'law' | 'voluntary' | 'practice'>;
    /** What and whom it binds */
    readonly 'scope': Text;
    /** Where it was read */
    readonly 'source': Text;
    /** How well its wording is known */
    readonly 'provenance': Word<'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen'>;
}

/** Hull opening. A hole through the hull. The hose, valve and tail behind it are recorded in its run. */
export interface HullOpeningFacts extends FittingFacts {
    /** What it is for */
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    /** Depth of its center below the waterline at rest */
    readonly 'below-waterline': Quantity;
    /** Height of its center above the waterline at rest */
    readonly 'above-waterline': Quantity;
    /** Whether it goes under when she heels (7 degrees under power, rail down under sail) */
    readonly 'below-heeled-waterline': Word<'yes' | 'no'>;
    /** Whether it is in use */
    readonly 'in-use': Word<'yes' | 'no'>;
    /** How an opening out of use is closed */
    readonly 'closure': Word<'open' | 'capped' | 'blanked' | 'glassed-over' | 'welded' | 'plug-in-hose' | 'valve-shut'>;
    /** What spreads its load inside */
    readonly 'backing': Word<'bonded-block' | 'loose-block' | 'none'>;
    /** Thickness of the hull there */
    readonly 'hull-thickness': Quantity;
    /** Whether it is flanged and fastened to the hull */
    readonly 'flange': Word<'yes' | 'no'>;
    /** Whether a welded standpipe of shell thickness rises from it */
    readonly 'standpipe': Word<'yes' | 'no'>;
    /** How far the standpipe rises above the heeled waterline */
    readonly 'standpipe-above-waterline': Quantity;
}

/** Through-hull. A flanged or mushroom fitting through the hull, with its stem inside. */
export interface ThroughHullFacts extends HullOpeningFacts {
}

/** Scupper. A drain from deck or cockpit through the topsides or hull. */
export interface ScupperFacts extends HullOpeningFacts {
}

/** Topside outlet. An outlet above the waterline, as of a bilge pump. */
export interface SkinFittingAboveFacts extends HullOpeningFacts {
}

/** Transducer. A sounder or log in its housing through the hull. */
export interface TransducerFacts extends HullOpeningFacts {
    /** Whether its blanking plug is aboard */
    readonly 'blank-aboard': Word<'yes' | 'no'>;
}

/** Drain plug. A plug that lets her drain ashore. */
export interface DrainPlugFacts extends HullOpeningFacts {
}

/** Valve. Closes a plumbing run. A quarter-turn lever shows at a glance whether it is open. */
export interface ValveFacts extends FittingFacts {
    /** How it closes */
    readonly 'pattern': Word<'ball-valve' | 'flanged-seacock' | 'plug-cock' | 'gate-valve' | 'globe-valve' | 'check-valve' | 'diverter'>;
    /** What happened when it was worked */
    readonly 'works': Word<'free' | 'stiff' | 'seized' | 'not-tried'>;
    /** How it stood when found */
    readonly 'position': Word<'open' | 'shut'>;
    /** Whether its handle is there */
    readonly 'handle': Word<'fitted' | 'gone' | 'tied'>;
    /** Whether it is bolted to the hull by a flange */
    readonly 'flanged': Word<'yes' | 'no'>;
    /** Whether it is listed reinforced nylon for use below the waterline */
    readonly 'listed': Word<'yes' | 'no'>;
    /** Static load it stood at its inboard end for 30 s */
    readonly 'push-test': Quantity;
    /** Whether it weeps */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Whether it shuts the water off when shut */
    readonly 'shuts-off': Word<'yes' | 'no'>;
}

/** Seacock. A valve fixed to the hull at an opening, with a lever. */
export interface SeacockFacts extends ValveFacts {
}

/** Check valve. Lets water pass one way; it is no means of closing an opening. */
export interface CheckValveFacts extends ValveFacts {
}

/** Hose. A hose of a run. Its bore must fit the outside diameter of each tail it sits on. */
export interface HoseFacts extends Omit<ComponentFacts, 'condition'> {
    /** Word of condition */
    readonly 'condition': Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen' | 'perished' | 'cracked' | 'soft' | 'swollen' | 'chafed'>;
    /** Inside diameter */
    readonly 'bore': Quantity;
    /** Two bores in the order of the run, where the hose is stepped */
    readonly 'ends': Quantity;
    /** Outside diameter */
    readonly 'outside-diameter': Quantity;
    /** Length */
    readonly 'length': Quantity;
    /** What it is for */
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    /** What it is marked or plainly made for */
    readonly 'class': Word<'unmarked' | 'water' | 'sanitation' | 'wet-exhaust' | 'fuel-a1' | 'fuel-a2' | 'fuel-b1' | 'fuel-b2' | 'gas' | 'coolant' | 'clear-pvc' | 'ribbed-pvc'>;
    /** What stiffens its wall */
    readonly 'reinforcement': Word<'none' | 'textile' | 'wire'>;
    /** Marking as read */
    readonly 'marking': Text;
    /** Whether cracks reach the cord */
    readonly 'cracked-to-cord': Word<'yes' | 'no'>;
    /** Whether it lies in the sun */
    readonly 'sun-exposed': Word<'yes' | 'no'>;
    /** How it is led */
    readonly 'bends': Text;
    /** Clamps at each end, unless a joint says otherwise */
    readonly 'clamps': Quantity;
    /** Kind of clamp at its ends */
    readonly 'clamp-type': Word<'worm' | 'bolt' | 'spring' | 'swaged'>;
    /** Metal of its clamps */
    readonly 'clamp-material': MaterialValue;
    /** Condition of its clamps */
    readonly 'clamp-condition': Word<'sound' | 'rusty' | 'cracked' | 'broken' | 'loose'>;
    /** Width of the clamps' bands */
    readonly 'clamp-band': Quantity;
    /** Range the clamps are made for */
    readonly 'clamp-range': Quantity;
    /** What a cut hose leaked in 2-1/2 minutes, by its maker */
    readonly 'leak-when-cut': Quantity;
}

/** Stepped hose. A molded hose of two bores, which joins tails of two diameters. */
export interface SteppedHoseFacts extends HoseFacts {
}

/** Pipe. A rigid pipe of a run. */
export interface PipeFacts extends FittingFacts {
    /** Length */
    readonly 'length': Quantity;
}

/** Hose tail. A spigot with ridges, screwed into a valve or fitting, that a hose sits on. */
export interface HoseTailFacts extends FittingFacts {
}

/** Adapter. Joins two hoses or tails. Its ends are given as outside diameters, in the order of the run. */
export interface AdapterFacts extends FittingFacts {
}

/** Stepped adapter. Joins hoses of two diameters. */
export interface SteppedAdapterFacts extends AdapterFacts {
}

/** Reducer. Joins pipe or thread of two sizes. */
export interface ReducerFacts extends AdapterFacts {
}

/** Elbow. Turns a run. */
export interface ElbowFacts extends AdapterFacts {
    /** How far it turns */
    readonly 'angle': Quantity;
}

/** Tee. Joins a third branch to a run. */
export interface TeeFacts extends FittingFacts {
}

/** Diverter valve. Sends a run one of two ways. */
export interface YValveFacts extends ValveFacts {
    /** Whether it is secured in one position */
    readonly 'secured': Word<'yes' | 'no'>;
}

/** Blank. Closes an opening or a run for good, or until it is opened again. */
export interface BlankFacts extends FittingFacts {
}

/** Threaded cap. A cap screwed on a tail or stem. */
export interface CapFacts extends BlankFacts {
}

/** Bonded plug. An opening filled and glassed over. */
export interface BondedPlugFacts extends BlankFacts {
}

/** Welded doubler. A plate welded over an opening. */
export interface WeldedDoublerFacts extends BlankFacts {
}

/** Strainer. Catches weed before a pump. */
export interface StrainerFacts extends FittingFacts {
    /** What its body is */
    readonly 'body': Word<'metal' | 'plastic' | 'glass-bowl'>;
    /** Whether it has a drain plug */
    readonly 'drain-plug': Word<'yes' | 'no'>;
    /** Whether its bowl or body is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** Height of its lid above the waterline */
    readonly 'lid-above-waterline': Quantity;
}

/** Vented loop. A loop with an air valve at its top, carried high above the waterline so that the sea cannot siphon in. */
export interface VentedLoopFacts extends FittingFacts {
    /** Height of its top above the waterline at rest */
    readonly 'top-above-waterline': Quantity;
    /** Height of its top above the heeled waterline */
    readonly 'top-above-heeled-waterline': Quantity;
    /** Whether its air valve works */
    readonly 'vent-works': Word<'yes' | 'no'>;
}

/** Appliance. What a run serves or ends in. */
export interface ApplianceFacts extends FittingFacts {
    /** Outside diameter of its hose connection */
    readonly 'port': Quantity;
    /** Height of its rim above the waterline */
    readonly 'rim-above-waterline': Quantity;
    /** Depth of its rim below the waterline */
    readonly 'rim-below-waterline': Quantity;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Toilet. A marine toilet. */
export interface ToiletFacts extends ApplianceFacts {
    /** How it is worked */
    readonly 'drive': Word<'manual' | 'electric' | 'vacuum'>;
    /** Device it discharges through */
    readonly 'treatment': Word<'none' | 'type-i' | 'type-ii' | 'type-iii'>;
}

/** Sink. A sink or basin. */
export interface SinkFacts extends ApplianceFacts {
}

/** Shower. A shower pan or sump. */
export interface ShowerFacts extends ApplianceFacts {
}

/** Holding tank. Holds sewage aboard. */
export interface HoldingTankFacts extends ApplianceFacts {
    /** Capacity */
    readonly 'capacity': Quantity;
    /** Bore of its vent */
    readonly 'vent-bore': Quantity;
}

/** Air conditioner. Cooled by raw water. */
export interface AirConditionerFacts extends ApplianceFacts {
}

/** Wash-down pump. Pumps raw water on deck. */
export interface WashDownPumpFacts extends ApplianceFacts {
}

/** The facts of each kind, by its id. */
export interface KindFacts {
    readonly 'component': ComponentFacts;
    readonly 'fitting': FittingFacts;
    readonly 'survey': SurveyFacts;
    readonly 'vessel': VesselFacts;
    readonly 'run': RunFacts;
    readonly 'joint': JointFacts;
    readonly 'contact': ContactFacts;
    readonly 'finding': FindingFacts;
    readonly 'reading': ReadingFacts;
    readonly 'valuation': ValuationFacts;
    readonly 'comparable': ComparableFacts;
    readonly 'person': PersonFacts;
    readonly 'firm': FirmFacts;
    readonly 'material': MaterialFacts;
    readonly 'standard': StandardFacts;
    readonly 'hull-opening': HullOpeningFacts;
    readonly 'through-hull': ThroughHullFacts;
    readonly 'scupper': ScupperFacts;
    readonly 'skin-fitting-above': SkinFittingAboveFacts;
    readonly 'transducer': TransducerFacts;
    readonly 'drain-plug': DrainPlugFacts;
    readonly 'valve': ValveFacts;
    readonly 'seacock': SeacockFacts;
    readonly 'check-valve': CheckValveFacts;
    readonly 'hose': HoseFacts;
    readonly 'stepped-hose': SteppedHoseFacts;
    readonly 'pipe': PipeFacts;
    readonly 'hose-tail': HoseTailFacts;
    readonly 'adapter': AdapterFacts;
    readonly 'stepped-adapter': SteppedAdapterFacts;
    readonly 'reducer': ReducerFacts;
    readonly 'elbow': ElbowFacts;
    readonly 'tee': TeeFacts;
    readonly 'y-valve': YValveFacts;
    readonly 'blank': BlankFacts;
    readonly 'cap': CapFacts;
    readonly 'bonded-plug': BondedPlugFacts;
    readonly 'welded-doubler': WeldedDoublerFacts;
    readonly 'strainer': StrainerFacts;
    readonly 'vented-loop': VentedLoopFacts;
    readonly 'appliance': ApplianceFacts;
    readonly 'toilet': ToiletFacts;
    readonly 'sink': SinkFacts;
    readonly 'shower': ShowerFacts;
    readonly 'holding-tank': HoldingTankFacts;
    readonly 'air-conditioner': AirConditionerFacts;
    readonly 'wash-down-pump': WashDownPumpFacts;
}

export type KindName = keyof KindFacts;
export type FactsOf<K extends KindName> = KindFacts[K];

/** Every property that some kind declares. */
export interface AnyFacts {
    readonly 'above-waterline': Quantity;
    readonly 'access': Text;
    readonly 'active-potential': Quantity;
    readonly 'address': Text;
    readonly 'adjusted': Quantity;
    readonly 'air-draft': Quantity;
    readonly 'angle': Quantity;
    readonly 'anode-left': Quantity;
    readonly 'answers': CheckRef;
    readonly 'area-ratio': Quantity;
    readonly 'asking': Quantity;
    readonly 'backing': Word<'bonded-block' | 'loose-block' | 'none'>;
    readonly 'ballast': Quantity;
    readonly 'basis': Word<'seen' | 'stated' | 'measured' | 'operated'> | Text;
    readonly 'beam': Quantity;
    readonly 'because': Text;
    readonly 'below-heeled-waterline': Word<'yes' | 'no'>;
    readonly 'below-waterline': Quantity;
    readonly 'bends': Text;
    readonly 'blank-aboard': Word<'yes' | 'no'>;
    readonly 'body': Word<'metal' | 'plastic' | 'glass-bowl'>;
    readonly 'bonded': Word<'yes' | 'no'>;
    readonly 'bore': Quantity;
    readonly 'builder': Text;
    readonly 'built': Quantity;
    readonly 'calibration': Text;
    readonly 'capacity': Quantity;
    readonly 'cites': Citation;
    readonly 'clamp-band': Quantity;
    readonly 'clamp-condition': Word<'sound' | 'rusty' | 'cracked' | 'broken' | 'loose'>;
    readonly 'clamp-material': MaterialValue;
    readonly 'clamp-range': Quantity;
    readonly 'clamp-type': Word<'worm' | 'bolt' | 'spring' | 'swaged'>;
    readonly 'clamps': Quantity;
    readonly 'class': Word<'copper-alloy' | 'nickel-alloy' | 'stainless' | 'iron-or-steel' | 'aluminum' | 'zinc-anode' | 'magnesium-anode' | 'titanium' | 'carbon' | 'lead' | 'tin' | 'metal' | 'plastic' | 'reinforced-plastic' | 'rubber' | 'wood' | 'laminate' | 'other'> | Word<'unmarked' | 'water' | 'sanitation' | 'wet-exhaust' | 'fuel-a1' | 'fuel-a2' | 'fuel-b1' | 'fuel-b2' | 'gas' | 'coolant' | 'clear-pvc' | 'ribbed-pvc'>;
    readonly 'client': Text;
    readonly 'closure': Word<'open' | 'capped' | 'blanked' | 'glassed-over' | 'welded' | 'plug-in-hose' | 'valve-shut'>;
    readonly 'coldest-expected': Quantity;
    readonly 'columns': Text;
    readonly 'condition': Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen'> | Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen' | 'perished' | 'cracked' | 'soft' | 'swollen' | 'chafed'>;
    readonly 'conditions': Text;
    readonly 'conducts': Word<'yes' | 'no'>;
    readonly 'construction': Text;
    readonly 'contains': Word<'salt-water' | 'fresh-water' | 'brackish-water' | 'fuel' | 'gas' | 'exhaust' | 'coolant' | 'air'>;
    readonly 'cost': Quantity;
    readonly 'cracked': Word<'yes' | 'no'>;
    readonly 'cracked-to-cord': Word<'yes' | 'no'>;
    readonly 'credentials': Text;
    readonly 'deck-material': MaterialValue;
    readonly 'design-category': Word<'a' | 'b' | 'c' | 'd'>;
    readonly 'designer': Text;
    readonly 'dezincification-resistant': Word<'yes' | 'no'>;
    readonly 'displacement': Quantity;
    readonly 'draft': Quantity;
    readonly 'drain-plug': Word<'yes' | 'no'>;
    readonly 'drive': Word<'manual' | 'electric' | 'vacuum'>;
    readonly 'edition': Text;
    readonly 'effective': DateValue;
    readonly 'email': Text;
    readonly 'ends': Quantity;
    readonly 'engaged': DateValue;
    readonly 'engines': Quantity;
    readonly 'exposed-area': Quantity;
    readonly 'fee-basis': Text;
    readonly 'female-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'fitted': DateValue;
    readonly 'flag': Text;
    readonly 'flange': Word<'yes' | 'no'>;
    readonly 'flanged': Word<'yes' | 'no'>;
    readonly 'floodable-volume': Quantity;
    readonly 'flow': Quantity;
    readonly 'follows': Text;
    readonly 'fuel': Word<'diesel' | 'gasoline' | 'electric' | 'none'>;
    readonly 'gross-tonnage': Quantity;
    readonly 'handle': Word<'fitted' | 'gone' | 'tied'>;
    readonly 'high': Quantity;
    readonly 'hull-material': MaterialValue;
    readonly 'hull-number': Text;
    readonly 'hull-thickness': Quantity;
    readonly 'in-use': Word<'yes' | 'no'>;
    readonly 'instrument': Text;
    readonly 'insulated': Word<'yes' | 'no'>;
    readonly 'intended-use': Text;
    readonly 'issue': Quantity;
    readonly 'issued': DateValue;
    readonly 'leak-when-cut': Quantity;
    readonly 'leaks': Word<'yes' | 'no'>;
    readonly 'length': Quantity;
    readonly 'length-on-deck': Quantity;
    readonly 'length-overall': Quantity;
    readonly 'length-waterline': Quantity;
    readonly 'lid-above-waterline': Quantity;
    readonly 'limits': Text;
    readonly 'listed': Word<'yes' | 'no'>;
    readonly 'low': Quantity;
    readonly 'made': DateValue;
    readonly 'maker': Text;
    readonly 'male-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'marking': Text;
    readonly 'material': MaterialValue;
    readonly 'measures': Word<'moisture' | 'percussion' | 'thickness' | 'potential' | 'trial' | 'temperature' | 'pressure' | 'other'>;
    readonly 'metal': MaterialValue;
    readonly 'method': Text;
    readonly 'model': Text;
    readonly 'model-year': Quantity;
    readonly 'net-tonnage': Quantity;
    readonly 'no-discharge-waters': Word<'yes' | 'no'>;
    readonly 'official-number': Text;
    readonly 'openings-blanked': Quantity;
    readonly 'openings-inside': Quantity;
    readonly 'openings-outside': Quantity;
    readonly 'operator': Text;
    readonly 'opinion': Quantity;
    readonly 'outside-diameter': Quantity;
    readonly 'particulars': Text;
    readonly 'pattern': Word<'ball-valve' | 'flanged-seacock' | 'plug-cock' | 'gate-valve' | 'globe-valve' | 'check-valve' | 'diverter'>;
    readonly 'persons': Quantity;
    readonly 'photos': Text;
    readonly 'place': Text;
    readonly 'port': Text | Quantity;
    readonly 'position': Word<'open' | 'shut'>;
    readonly 'potential': Quantity;
    readonly 'present': Text;
    readonly 'provenance': Word<'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen'>;
    readonly 'purpose': Text;
    readonly 'push-test': Quantity;
    readonly 'quantity': Quantity;
    readonly 'reason-for-urgency': Text;
    readonly 'recommend': Text;
    readonly 'reference': Quantity;
    readonly 'registration': Text;
    readonly 'reinforced': Word<'yes' | 'no'>;
    readonly 'reinforcement': Word<'none' | 'textile' | 'wire'>;
    readonly 'related': Text;
    readonly 'remarks': Text;
    readonly 'replacement': Quantity;
    readonly 'requested-for': Text;
    readonly 'reviewer': PersonRef;
    readonly 'rim-above-waterline': Quantity;
    readonly 'rim-below-waterline': Quantity;
    readonly 'role': Text;
    readonly 'scale': Text;
    readonly 'scope': Text;
    readonly 'scrape-color': Word<'yellow' | 'pink' | 'red-brown' | 'gray'>;
    readonly 'sealant': Text;
    readonly 'secured': Word<'yes' | 'no'>;
    readonly 'seen': Text;
    readonly 'serial': Text;
    readonly 'series': Text;
    readonly 'serves': ComponentRef;
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    readonly 'shuts-off': Word<'yes' | 'no'>;
    readonly 'side': Word<'port' | 'starboard' | 'centerline' | 'both'>;
    readonly 'size': Quantity;
    readonly 'sold': Quantity;
    readonly 'sold-on': DateValue;
    readonly 'source': Text;
    readonly 'spigot': Quantity;
    readonly 'standing': Word<'law' | 'voluntary' | 'practice'>;
    readonly 'standpipe': Word<'yes' | 'no'>;
    readonly 'standpipe-above-waterline': Quantity;
    readonly 'state': Word<'ashore' | 'afloat'>;
    readonly 'statement': Text;
    readonly 'sun-exposed': Word<'yes' | 'no'>;
    readonly 'surveyor': PersonRef;
    readonly 'tail-length': Quantity;
    readonly 'taken': DateValue;
    readonly 'telephone': Text;
    readonly 'thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'tools': Text;
    readonly 'top-above-heeled-waterline': Quantity;
    readonly 'top-above-waterline': Quantity;
    readonly 'treatment': Word<'none' | 'type-i' | 'type-ii' | 'type-iii'>;
    readonly 'trial': Text;
    readonly 'turns-engaged': Quantity;
    readonly 'type': Word<'motor-yacht' | 'sailing-yacht' | 'catamaran' | 'trimaran' | 'steel-vessel' | 'aluminum-workboat' | 'wooden-classic' | 'houseboat' | 'rigid-inflatable' | 'gasoline-cruiser'>;
    readonly 'urgency': Word<'at-once' | 'before-launch' | 'before-departure' | 'before-use' | 'before-completion' | 'within-days' | 'next-haul-out' | 'in-upkeep' | 'keep-watch' | 'note-only'>;
    readonly 'vent-bore': Quantity;
    readonly 'vent-works': Word<'yes' | 'no'>;
    readonly 'water': Word<'salt' | 'brackish' | 'fresh'>;
    readonly 'weather': Text;
    readonly 'website': Text;
    readonly 'weeps': Word<'yes' | 'no'>;
    readonly 'weight': Quantity;
    readonly 'wetted': Word<'yes' | 'no'>;
    readonly 'works': Word<'free' | 'stiff' | 'seized' | 'not-tried'> | Word<'yes' | 'no' | 'not-tried'>;
    readonly 'zinc': Quantity;
}
