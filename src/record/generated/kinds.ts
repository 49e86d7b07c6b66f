// Generated from the catalogue by `npm run generate`. Do not edit.
/* eslint-disable */
import type { CheckRef, Citation, ComponentRef, DateValue, MaterialValue, PersonRef, Quantity, Text, Word } from '../model.js';

/** Component. Anything aboard that is worth recording. */
export interface ComponentFacts {
    /** Where it is: compartment, frame, height */
    readonly 'place': Text;
    /** Side of the vessel */
    readonly 'side': Word<'port' | 'starboard' | 'centerline' | 'both'>;
    /** Height aboard: bilge, sole, waterline, deck, aloft */
    readonly 'level': Text;
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

/** Pump. A pump. Its port is the outside diameter of its hose connections. */
export interface PumpFacts extends ApplianceFacts {
    /** Rating on its box, at no lift */
    readonly 'rated-flow': Quantity;
    /** Flow at this lift by the maker's curve, or measured */
    readonly 'real-flow': Quantity;
    /** Current */
    readonly 'current': Quantity;
}

/** Bilge pump. A power pump for the bilge. It moves about half its rating once lift, hose and voltage have taken their share. */
export interface BilgePumpFacts extends PumpFacts {
    /** Height from the bilge to the outlet */
    readonly 'lift': Quantity;
    /** Lift at which it moves nothing, by its maker */
    readonly 'makers-head': Quantity;
    /** Voltage it is made for */
    readonly 'nominal-voltage': Quantity;
    /** What drives it */
    readonly 'drive': Word<'electric' | 'engine' | 'hand'>;
    /** How it pumps */
    readonly 'build': Word<'submersible' | 'diaphragm' | 'impeller' | 'other'>;
    /** Starts on its counter */
    readonly 'counter': Quantity;
    /** Whether a float switch starts it */
    readonly 'automatic': Word<'yes' | 'no'>;
    /** Height of its outlet above the waterline at rest */
    readonly 'outlet-above-waterline': Quantity;
    /** Whether its hose rises in a loop */
    readonly 'looped': Word<'yes' | 'no'>;
    /** Whether it runs with the battery switch off */
    readonly 'bypasses-main-switch': Word<'yes' | 'no'>;
    /** How often it starts as she lies */
    readonly 'starts': Quantity;
    /** Voltage at the pump as it runs */
    readonly 'voltage': Quantity;
    /** Fuse that guards it */
    readonly 'fuse': Quantity;
    /** Fuse its maker asks for */
    readonly 'makers-fuse': Quantity;
    /** Whether water was rising in the bilge at the survey */
    readonly 'water-rising': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Hand bilge pump. A bilge pump worked by hand. */
export interface ManualBilgePumpFacts extends BilgePumpFacts {
}

/** Float switch. Starts a bilge pump. */
export interface FloatSwitchFacts extends ComponentFacts {
    /** Whether it works when lifted */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Height above the lowest point at which it starts the pump */
    readonly 'height': Quantity;
    /** How it senses water */
    readonly 'build': Word<'mechanical' | 'electronic'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** High-water alarm. Tells when water rises in the bilge. */
export interface BilgeAlarmFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Height above the lowest point at which it sounds */
    readonly 'height': Quantity;
    /** Whether it is heard from the dock */
    readonly 'heard-outside': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Coverage. The parts of the vessel that a survey of a kind, or of a kind of craft, is to speak of. */
export interface CoverageFacts {
    /** Parts that are expected */
    readonly 'parts': Word<'hull' | 'deck' | 'openings' | 'metals' | 'propulsion' | 'cooling' | 'exhaust' | 'fuel' | 'steering' | 'dc' | 'ac' | 'bilge' | 'water' | 'sanitation' | 'gas' | 'galley' | 'ventilation' | 'fire' | 'lifesaving' | 'navigation' | 'rig' | 'deck-gear' | 'tender' | 'papers'>;
    /** Why, and what goes without saying */
    readonly 'remarks': Text;
}

/** Deck. The deck and its core. */
export interface DeckFacts extends ComponentFacts {
    /** Core */
    readonly 'core': MaterialValue;
    /** What sounding told */
    readonly 'percussion': Text;
    /** Area of the panel sounded */
    readonly 'panel-area': Quantity;
    /** Area of each patch that sounds dull or hollow */
    readonly 'hollow-area': Quantity;
    /** What bears on the hollow place */
    readonly 'load-point': Word<'mast' | 'chainplate' | 'engine' | 'none'>;
    /** What the meter read, on its own scale */
    readonly 'moisture': Text;
    /** Highest reading of the meter, on its own scale */
    readonly 'moisture-reading': Quantity;
    /** Reading of a place known dry, same meter and mode */
    readonly 'dry-reference': Quantity;
    /** What lies behind the place read */
    readonly 'meter-behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    /** What it sounded like where the meter read highest */
    readonly 'sounds': Word<'clear' | 'dull' | 'hollow'>;
    /** How far it gives under a person's weight */
    readonly 'deflection': Quantity;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Hatch. A hatch. */
export interface HatchFacts extends ComponentFacts {
    /** Clear opening */
    readonly 'clear-opening': Text;
    /** What holds it shut */
    readonly 'dogs': Word<'sound' | 'stiff' | 'broken' | 'missing' | 'not-tried'>;
    /** Its seal */
    readonly 'seal': Word<'sound' | 'hard' | 'torn' | 'missing' | 'not-seen'>;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Whether its light is crazed */
    readonly 'crazed': Word<'yes' | 'no'>;
}

/** Portlight. A window in the side. */
export interface PortlightFacts extends ComponentFacts {
    /** Clear opening */
    readonly 'clear-opening': Text;
    /** Whether it opens */
    readonly 'opens': Word<'yes' | 'no'>;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Whether its pane is crazed */
    readonly 'crazed': Word<'yes' | 'no'>;
    /** Height of its sill above the waterline */
    readonly 'sill-above-waterline': Quantity;
}

/** Cockpit. The cockpit and its drains. */
export interface CockpitFacts extends ComponentFacts {
    /** Area of its sole */
    readonly 'sole-area': Quantity;
    /** Depth of water when full */
    readonly 'depth': Quantity;
    /** Number of drains */
    readonly 'drains': Quantity;
    /** Bore of each drain */
    readonly 'drain-bore': Quantity;
    /** Height of the companionway sill above the sole */
    readonly 'sill-height': Quantity;
    /** Water it holds when full */
    readonly 'volume': Quantity;
    /** Whether she is meant for use offshore */
    readonly 'offshore': Word<'yes' | 'no'>;
}

/** Stanchions. Posts of the lifelines. */
export interface StanchionFacts extends ComponentFacts {
    /** Height above deck */
    readonly 'height': Quantity;
    /** Widest spacing */
    readonly 'spacing': Quantity;
    /** Whether a base moves under load */
    readonly 'base-moves': Word<'yes' | 'no'>;
    /** What backs the bases */
    readonly 'backing': Word<'plate' | 'washers' | 'none' | 'not-seen'>;
}

/** Lifelines. Wires along the side. */
export interface LifelineFacts extends ComponentFacts {
    /** Height of the top wire above deck */
    readonly 'height': Quantity;
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Widest spacing of its posts */
    readonly 'spacing': Quantity;
    /** How far it gives under a push midway between posts */
    readonly 'sag': Quantity;
    /** Whether the wire is coated */
    readonly 'coated': Word<'yes' | 'no'>;
}

/** Guardrail. A fixed rail along the deck edge. */
export interface GuardrailFacts extends ComponentFacts {
    /** Height above deck */
    readonly 'height': Quantity;
    /** Largest gap in it */
    readonly 'gap': Quantity;
    /** Widest spacing of its posts */
    readonly 'spacing': Quantity;
    /** Whether a base moves under load */
    readonly 'base-moves': Word<'yes' | 'no'>;
    /** What backs the bases */
    readonly 'backing': Word<'plate' | 'washers' | 'none' | 'not-seen'>;
}

/** Boarding ladder. A ladder a swimmer can use. */
export interface LadderFacts extends ComponentFacts {
    /** How far it reaches below the water */
    readonly 'reach-below-waterline': Quantity;
}

/** Swim platform. A platform at the transom. */
export interface SwimPlatformFacts extends ComponentFacts {
    /** Marked limit */
    readonly 'limit': Quantity;
    /** What carries it */
    readonly 'brackets': Word<'sound' | 'cracked' | 'loose' | 'not-seen'>;
}

/** Anchor. An anchor. */
export interface AnchorFacts extends ComponentFacts {
    /** Mass */
    readonly 'mass': Quantity;
    /** Pattern */
    readonly 'pattern': Text;
    /** Whether it is the main anchor */
    readonly 'main': Word<'yes' | 'no'>;
    /** Mass that its maker's chart asks for on her */
    readonly 'makers-mass': Quantity;
    /** Whether its maker's chart allows a lighter one */
    readonly 'high-holding': Word<'yes' | 'no'>;
}

/** Anchor chain. Anchor chain. */
export interface ChainFacts extends ComponentFacts {
    /** Wire diameter when new */
    readonly 'link-original': Quantity;
    /** Wire diameter now where it is thinnest, on two axes */
    readonly 'link-now': Quantity;
    /** Length */
    readonly 'length': Quantity;
    /** Depth of water at the deepest place she anchors in */
    readonly 'deepest-berth': Quantity;
    /** Height of the bow roller above water */
    readonly 'bow-height': Quantity;
}

/** Rode. Line to the anchor, with the chain between. */
export interface RodeFacts extends ComponentFacts {
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Length, the chain at its end included */
    readonly 'length': Quantity;
    /** What it is made of */
    readonly 'build': Word<'chain' | 'mixed' | 'rope'>;
    /** Depth of water at the deepest place she anchors in */
    readonly 'deepest-berth': Quantity;
    /** Height of the bow roller above water */
    readonly 'bow-height': Quantity;
    /** Whether it is chafed */
    readonly 'chafed': Word<'yes' | 'no'>;
}

/** Windlass. Hauls the anchor. */
export interface WindlassFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Bow roller. Leads the anchor rode over the bow. */
export interface BowRollerFacts extends ComponentFacts {
    /** Whether its cheeks are bent */
    readonly 'bent': Word<'yes' | 'no'>;
    /** Whether a pin keeps the rode in it */
    readonly 'keeper': Word<'yes' | 'no'>;
}

/** Cleats. Cleats and bollards. */
export interface CleatFacts extends ComponentFacts {
    /** What backs them */
    readonly 'backing': Word<'plate' | 'washers' | 'none' | 'not-seen'>;
}

/** Davits. Carry the tender. */
export interface DavitFacts extends ComponentFacts {
    /** Marked limit */
    readonly 'limit': Quantity;
}

/** Crane. A crane or lifting boom on deck. */
export interface CraneFacts extends ComponentFacts {
    /** Marked limit */
    readonly 'limit': Quantity;
    /** When it was last load-tested */
    readonly 'load-tested': DateValue;
}

/** Tow gear. Post, hook or bitts that a tow is made fast to. */
export interface TowGearFacts extends ComponentFacts {
    /** Its quick release */
    readonly 'release': Word<'works' | 'stiff' | 'none' | 'not-tried'>;
    /** Marked pull */
    readonly 'pull': Quantity;
}

/** Tender. A boat carried or towed. */
export interface TenderFacts extends ComponentFacts {
    /** Length */
    readonly 'length': Quantity;
    /** Persons on its label */
    readonly 'persons': Quantity;
    /** Hull identification number, as read */
    readonly 'hull-number': Text;
}

/** Inflatable tube. Air tubes of a tender or rigid inflatable. */
export interface InflatableTubeFacts extends ComponentFacts {
    /** Chambers */
    readonly 'chambers': Quantity;
    /** Fabric */
    readonly 'fabric': Word<'pvc' | 'chlorosulfonated-rubber' | 'polyurethane' | 'unknown'>;
    /** Pressure of each chamber at the start */
    readonly 'start-pressure': Quantity;
    /** Pressure of each chamber at the end */
    readonly 'end-pressure': Quantity;
    /** How long it was watched */
    readonly 'duration': Quantity;
    /** Air at the start */
    readonly 'air-start': Quantity;
    /** Air at the end */
    readonly 'air-end': Quantity;
    /** Its seams */
    readonly 'seams': Word<'sound' | 'lifting' | 'leaking' | 'not-seen'>;
}

/** Trailer. The trailer she comes with. */
export interface TrailerFacts extends ComponentFacts {
    /** Marked gross mass */
    readonly 'limit': Quantity;
    /** Its brakes */
    readonly 'brakes': Word<'works' | 'seized' | 'none' | 'not-tried'>;
    /** Its wheel bearings */
    readonly 'bearings': Word<'sound' | 'noisy' | 'loose' | 'not-tried'>;
}

/** Battery. A battery or bank. */
export interface BatteryFacts extends ComponentFacts {
    /** Kind */
    readonly 'chemistry': Word<'flooded' | 'gel' | 'agm' | 'lithium'>;
    /** Nominal voltage */
    readonly 'voltage': Quantity;
    /** Voltage at rest */
    readonly 'rest-voltage': Quantity;
    /** Rated capacity */
    readonly 'capacity': Quantity;
    /** Measured capacity */
    readonly 'capacity-measured': Quantity;
    /** Mass */
    readonly 'mass': Quantity;
    /** How far it moves when pulled */
    readonly 'movement': Quantity;
    /** What holds it */
    readonly 'restraint': Word<'strap' | 'box' | 'clamp' | 'none'>;
    /** Whether its live terminals are covered */
    readonly 'terminals-covered': Word<'yes' | 'no'>;
    /** Rated cold-cranking current */
    readonly 'cranking': Quantity;
    /** Measured cold-cranking current */
    readonly 'cranking-measured': Quantity;
    /** How long since it was charged */
    readonly 'hours-since-charge': Quantity;
    /** Whether its gas is led out */
    readonly 'vented': Word<'yes' | 'no'>;
    /** Whether spring clips are on its terminals */
    readonly 'spring-clips': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** Name of the bank it is joined in, as house or port start */
    readonly 'bank': Text;
    /** What it is for */
    readonly 'purpose': Word<'start' | 'house' | 'thruster' | 'other'>;
    /** Charging voltage that its maker gives, as 14.2 V..14.6 V */
    readonly 'charging-voltage': Quantity;
    /** Whether a device parts it from charge and load when a cell is out of bounds (lithium) */
    readonly 'cut-off': Word<'yes' | 'no'>;
    /** Temperature of its case */
    readonly 'temperature': Quantity;
    /** Whether its case is swollen */
    readonly 'swollen': Word<'yes' | 'no'>;
    /** Share of the time that a bilge pump runs on it as she lies */
    readonly 'pump-duty': Quantity;
}

/** Battery switch. Parts a battery from its circuits. */
export interface BatterySwitchFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Rating */
    readonly 'rating': Quantity;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Fuse. Guards a conductor. */
export interface FuseFacts extends ComponentFacts {
    /** Rating */
    readonly 'rating': Quantity;
    /** Distance from the source along the wire */
    readonly 'distance': Quantity;
    /** The conductor it guards */
    readonly 'protects': ComponentRef;
    /** Whether the wire is sheathed or enclosed all the way from the source to it */
    readonly 'sheathed-to-fuse': Word<'yes' | 'no'>;
    /** Where the wire starts: a battery post, a bus, a switch */
    readonly 'source': Word<'battery' | 'bus' | 'switch' | 'charger' | 'other'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Breaker. Guards a circuit, and can be reset. */
export interface BreakerFacts extends ComponentFacts {
    /** Rating */
    readonly 'rating': Quantity;
    /** The conductor it guards */
    readonly 'protects': ComponentRef;
    /** Distance from the source along the wire */
    readonly 'distance': Quantity;
    /** Whether the wire is sheathed or enclosed all the way from the source to it */
    readonly 'sheathed-to-breaker': Word<'yes' | 'no'>;
    /** Where the wire starts: a battery post, a bus, a switch */
    readonly 'source': Word<'battery' | 'bus' | 'switch' | 'charger' | 'other'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Main breaker. Parts the shore power from the boat. */
export interface MainBreakerFacts extends BreakerFacts {
    /** Poles it opens */
    readonly 'poles': Quantity;
    /** Distance from the shore inlet along the wire */
    readonly 'distance-from-inlet': Quantity;
}

/** Conductor. A wire of a circuit. */
export interface ConductorFacts extends ComponentFacts {
    /** Size, as 14 AWG or 2.5 mm2 */
    readonly 'gauge': Quantity;
    /** Rating of its insulation */
    readonly 'insulation': Quantity;
    /** Load */
    readonly 'load': Quantity;
    /** Length, there and back */
    readonly 'length': Quantity;
    /** Whether it runs through the engine space */
    readonly 'in-engine-space': Word<'yes' | 'no'>;
    /** Whether it is sheathed all the way */
    readonly 'sheathed': Word<'yes' | 'no'>;
    /** What it feeds */
    readonly 'feeds': Text;
    /** Voltage at its source, under load */
    readonly 'source-voltage': Quantity;
    /** Voltage at the load, under load */
    readonly 'load-voltage': Quantity;
    /** To earth, by the test voltage named */
    readonly 'insulation-resistance': Quantity;
    /** Voltage its insulation was tested with */
    readonly 'test-voltage': Quantity;
    /** Whether it is stranded */
    readonly 'stranded': Word<'yes' | 'no'>;
    /** Whether it is chafed */
    readonly 'chafed': Word<'yes' | 'no'>;
    /** Nominal voltage of its circuit */
    readonly 'voltage': Quantity;
    /** What it carries current for; panel-feed feeds a switch panel */
    readonly 'purpose': Word<'panel-feed' | 'bilge-pump' | 'blower' | 'navigation-light' | 'electronics' | 'lighting' | 'cranking' | 'charging' | 'ignition' | 'power' | 'other'>;
    /** Conductors with current in its bundle or sheath */
    readonly 'bundled': Quantity;
    /** Whether a fuse or breaker guards it */
    readonly 'fused': Word<'yes' | 'no'>;
    /** Whether it is the grounded side, which takes no fuse */
    readonly 'grounded': Word<'yes' | 'no'>;
    /** Whether it runs through a space with gasoline */
    readonly 'gasoline-space': Word<'yes' | 'no'>;
    /** Whether the lights on it are seen to dim */
    readonly 'lights-dim': Word<'yes' | 'no'>;
}

/** Panel. A switch panel. */
export interface PanelFacts extends ComponentFacts {
    /** Whether its circuits are labeled */
    readonly 'labeled': Word<'yes' | 'no'>;
    /** Whether its back is covered */
    readonly 'covered': Word<'yes' | 'no'>;
    /** Nominal voltage */
    readonly 'voltage': Quantity;
    /** Whether it shows reversed polarity of the shore power */
    readonly 'polarity-indicator': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Battery charger. Charges from shore power. */
export interface ChargerFacts extends ComponentFacts {
    /** Charging voltage, at the battery */
    readonly 'voltage': Quantity;
    /** Rated current */
    readonly 'current': Quantity;
    /** The battery it charges, or one of the bank */
    readonly 'charges': ComponentRef;
    /** Nominal voltage of the bank it charges */
    readonly 'bank-voltage': Quantity;
    /** Stage of charging the voltage was read in */
    readonly 'stage': Word<'bulk' | 'absorption' | 'float' | 'equalizing'>;
    /** Kind of battery it is set for */
    readonly 'set-for': Word<'flooded' | 'gel' | 'agm' | 'lithium'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Alternator. Charges from the engine. */
export interface AlternatorFacts extends ComponentFacts {
    /** Charging voltage, at the battery */
    readonly 'voltage': Quantity;
    /** Rated current */
    readonly 'current': Quantity;
    /** The battery it charges, or one of the bank */
    readonly 'charges': ComponentRef;
    /** Nominal voltage of the bank it charges */
    readonly 'bank-voltage': Quantity;
    /** Stage of charging the voltage was read in */
    readonly 'stage': Word<'bulk' | 'absorption' | 'float' | 'equalizing'>;
    /** Whether a regulator of its own governs it */
    readonly 'external-regulator': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Inverter. Makes AC from a battery. */
export interface InverterFacts extends ComponentFacts {
    /** Rated output */
    readonly 'output': Quantity;
    /** Voltage of its output */
    readonly 'voltage': Quantity;
    /** Whether shore power passes through it to the outlets */
    readonly 'passes-shore-power': Word<'yes' | 'no'>;
    /** When its neutral is joined to earth */
    readonly 'neutral-joined': Word<'on-inverter' | 'always' | 'never' | 'not-tried'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Solar panel. Charges from the sun. */
export interface SolarPanelFacts extends ComponentFacts {
    /** Charging voltage, at the battery */
    readonly 'voltage': Quantity;
    /** Rated current */
    readonly 'current': Quantity;
    /** Rated output */
    readonly 'output': Quantity;
    /** The battery it charges, or one of the bank */
    readonly 'charges': ComponentRef;
    /** Nominal voltage of the bank it charges */
    readonly 'bank-voltage': Quantity;
    /** Stage of charging the voltage was read in */
    readonly 'stage': Word<'bulk' | 'absorption' | 'float' | 'equalizing'>;
    /** Whether a regulator stands between it and the battery */
    readonly 'regulated': Word<'yes' | 'no'>;
}

/** Shore inlet. Where shore power comes aboard. */
export interface ShoreInletFacts extends ComponentFacts {
    /** Rating */
    readonly 'rating': Quantity;
    /** Whether it is browned or melted */
    readonly 'browned': Word<'yes' | 'no'>;
    /** How much warmer it grew under load */
    readonly 'temperature-rise': Text;
    /** Nominal voltage */
    readonly 'voltage': Quantity;
    /** Steady load */
    readonly 'load': Quantity;
    /** Temperature of its terminals under load */
    readonly 'warmed-to': Quantity;
    /** Temperature of the air beside it at the time */
    readonly 'air-beside': Quantity;
    /** Whether a leakage breaker guards all that it feeds */
    readonly 'leakage-guarded': Word<'yes' | 'no'>;
    /** Neutral and earth aboard while shore power feeds her */
    readonly 'neutral-joined-aboard': Word<'apart' | 'joined' | 'not-tried'>;
    /** Of all that it feeds, to earth, by the test voltage named */
    readonly 'insulation-resistance': Quantity;
    /** Voltage the insulation was tested with */
    readonly 'test-voltage': Quantity;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Shore cord. The cable to the dock. */
export interface ShoreCordFacts extends ComponentFacts {
    /** Leakage by a clamp on the whole cord */
    readonly 'leakage': Quantity;
    /** Rating */
    readonly 'rating': Quantity;
    /** Whether an end is browned or melted */
    readonly 'browned': Word<'yes' | 'no'>;
    /** Loads that were on when the leakage was read */
    readonly 'loads-on': Text;
    /** Length */
    readonly 'length': Quantity;
    /** Temperature of its ends under load */
    readonly 'warmed-to': Quantity;
    /** Temperature of the air beside it at the time */
    readonly 'air-beside': Quantity;
}

/** Leakage breaker. Trips when current leaks to earth. */
export interface LeakageBreakerFacts extends ComponentFacts {
    /** Current it trips at */
    readonly 'trip-current': Quantity;
    /** Whether it trips when tested */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Time it took to trip */
    readonly 'trip-time': Quantity;
    /** Distance from the shore inlet along the wire */
    readonly 'distance': Quantity;
}

/** AC outlet. An AC outlet aboard. */
export interface OutletFacts extends ComponentFacts {
    /** Polarity */
    readonly 'polarity': Word<'right' | 'reversed' | 'not-tried'>;
    /** To earth */
    readonly 'earth-resistance': Quantity;
    /** Whether it is in the galley, head, machinery space or in the weather */
    readonly 'wet-place': Word<'yes' | 'no'>;
    /** Whether a leakage device of 5 mA guards it */
    readonly 'leakage-protected': Word<'yes' | 'no'>;
    /** Current its leakage device tripped at */
    readonly 'trip-current': Quantity;
    /** Time its leakage device took to trip */
    readonly 'trip-time': Quantity;
    /** Nominal voltage */
    readonly 'voltage': Quantity;
}

/** Galvanic isolator. Blocks galvanic current in the shore earth. */
export interface GalvanicIsolatorFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Rating */
    readonly 'rating': Quantity;
    /** Whether it shows its own state */
    readonly 'status-shown': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Isolation transformer. Parts the boat from the shore earth by two windings. */
export interface TransformerFacts extends ComponentFacts {
    /** Rated output */
    readonly 'output': Quantity;
    /** Distance from the shore inlet along the wire */
    readonly 'distance-from-inlet': Quantity;
    /** Whether its neutral is joined to earth aboard */
    readonly 'neutral-bonded': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Engine. An engine. */
export interface EngineFacts extends ApplianceFacts {
    /** Rated power */
    readonly 'rated-power': Quantity;
    /** Rated speed */
    readonly 'rated-rotation': Quantity;
    /** Speed reached at full throttle, by an independent tachometer */
    readonly 'reached-rotation': Quantity;
    /** Speed shown at the helm */
    readonly 'dash-rotation': Quantity;
    /** Running hours, as the meter shows */
    readonly 'hours': Quantity;
    /** Fuel */
    readonly 'fuel': Word<'diesel' | 'gasoline' | 'electric'>;
    /** Cylinders */
    readonly 'cylinders': Quantity;
    /** Which meter or paper the hours come from */
    readonly 'hours-source': Text;
    /** Running hours by papers or word of mouth, where they differ from the meter */
    readonly 'hours-stated': Quantity;
    /** When the hour meter was changed */
    readonly 'meter-changed': DateValue;
    /** Hours run before the hour meter was changed */
    readonly 'hours-before-meter': Quantity;
    /** Running hours in an earlier report or log */
    readonly 'earlier-hours': Quantity;
    /** Date of that report or log */
    readonly 'earlier-date': DateValue;
    /** Which report or log */
    readonly 'earlier-source': Text;
    /** Compression of each cylinder, in order */
    readonly 'compression': Quantity;
    /** Least compression the maker allows */
    readonly 'least-compression': Quantity;
    /** Its oil */
    readonly 'oil': Word<'clear' | 'dark' | 'milky' | 'diluted' | 'not-seen'>;
    /** Hours on the oil */
    readonly 'oil-hours': Quantity;
    /** Temperature of the coolant under load */
    readonly 'running-temperature': Quantity;
    /** How it starts from cold */
    readonly 'cold-start': Word<'at-once' | 'slow' | 'no' | 'not-tried'>;
    /** Whether water was found in a cylinder */
    readonly 'water-in-cylinders': Word<'yes' | 'no'>;
    /** Leaks of oil, fuel or water */
    readonly 'leaks-seen': Text;
    /** Whether backfire flame control is fitted to its intake (gasoline) */
    readonly 'flame-arrester': Word<'yes' | 'no'>;
    /** Mark on it, as SAE J-1928, UL 1111 or an approval number */
    readonly 'flame-arrester-mark': Text;
}

/** Main engine. An engine that drives her. */
export interface MainEngineFacts extends EngineFacts {
}

/** Generator. An engine that makes electricity. */
export interface GeneratorFacts extends EngineFacts {
    /** Rated output */
    readonly 'output': Quantity;
}

/** Gearbox. Between engine and shaft. */
export interface GearboxFacts extends ComponentFacts {
    /** Turns of the engine for one of the shaft */
    readonly 'ratio': Quantity;
    /** Its oil */
    readonly 'oil': Word<'clear' | 'dark' | 'milky' | 'not-seen'>;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** How it shifts */
    readonly 'shift': Word<'clean' | 'stiff' | 'slips' | 'not-tried'>;
    /** How it shifts gear */
    readonly 'works-by': Word<'mechanical' | 'hydraulic'>;
    /** Temperature under load */
    readonly 'temperature': Quantity;
}

/** Engine mounts. Carry the engine. */
export interface EngineMountFacts extends ComponentFacts {
    /** Its rubber */
    readonly 'rubber': Word<'sound' | 'soft' | 'parted' | 'not-seen'>;
    /** Its bolts */
    readonly 'bolts': Word<'tight' | 'loose' | 'missing' | 'not-seen'>;
    /** Whether a bracket is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Coolant. Water and glycol in the closed circuit of an engine. */
export interface CoolantFacts extends ComponentFacts {
    /** Share of glycol by volume */
    readonly 'glycol': Quantity;
    /** Which glycol */
    readonly 'glycol-kind': Word<'ethylene' | 'propylene' | 'mixed' | 'unknown'>;
    /** Its inhibitors */
    readonly 'inhibitor': Word<'plain' | 'organic' | 'hybrid' | 'unknown'>;
    /** Freezing point as read */
    readonly 'freeze-point': Quantity;
    /** What it was read with */
    readonly 'instrument': Word<'hydrometer' | 'refractometer' | 'strip' | 'stated'>;
    /** Volume of the system */
    readonly 'volume': Quantity;
    /** What it lacks to be full */
    readonly 'short-by': Quantity;
    /** When it was last changed */
    readonly 'changed': DateValue;
    /** Least share the engine's maker allows */
    readonly 'maker-low': Quantity;
    /** Greatest share the engine's maker allows */
    readonly 'maker-high': Quantity;
    /** Pressure of the cap */
    readonly 'cap-pressure': Quantity;
    /** What is filled in when it is corrected */
    readonly 'added': Word<'concentrate' | 'premix' | 'water'>;
    /** pH */
    readonly 'acidity': Quantity;
    /** How full the header tank stood */
    readonly 'filled': Word<'full' | 'low' | 'empty' | 'not-seen'>;
    /** How long the maker lets it stay */
    readonly 'makers-term': Quantity;
}

/** Raw-water pump. Draws sea water to cool an engine. */
export interface RawWaterPumpFacts extends PumpFacts {
    /** When its impeller was fitted */
    readonly 'impeller-fitted': DateValue;
    /** Whether it weeps at its shaft */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Flow it gives */
    readonly 'flow': Quantity;
}

/** Heat exchanger. Cools the engine's coolant with sea water. */
export interface HeatExchangerFacts extends ApplianceFacts {
    /** When it was last opened */
    readonly 'opened': DateValue;
    /** What is left of its anode */
    readonly 'anode-left': Quantity;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Keel cooler. Pipes outside the hull that cool the engine. */
export interface KeelCoolerFacts extends ComponentFacts {
    /** Whether growth or paint covers it */
    readonly 'fouled': Word<'yes' | 'no'>;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Exhaust riser. Carries the exhaust up and takes in the cooling water. */
export interface ExhaustRiserFacts extends FittingFacts {
    /** Height of the water injection above the loaded waterline */
    readonly 'injection-above-waterline': Quantity;
    /** Temperature of its skin */
    readonly 'temperature': Quantity;
    /** When it was last opened */
    readonly 'opened': DateValue;
    /** Whether its hot part is lagged */
    readonly 'lagged': Word<'yes' | 'no'>;
    /** Whether a hand can touch its hot part in ordinary use */
    readonly 'within-reach': Word<'yes' | 'no'>;
    /** Speed of the engine when its temperature was taken */
    readonly 'rotation': Quantity;
    /** Least height of the injection that the engine's manual asks for */
    readonly 'makers-least': Quantity;
    /** Whether a vented loop stands in its injection hose */
    readonly 'loop': Word<'fitted' | 'none' | 'not-seen'>;
    /** Whether water was found on the engine's side of it */
    readonly 'water-found': Word<'yes' | 'no'>;
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

/** Exhaust hose. A hose of the wet exhaust. */
export interface ExhaustHoseFacts extends HoseFacts {
    /** Temperature of its skin under load */
    readonly 'temperature': Quantity;
    /** How far it falls from elbow to outlet */
    readonly 'drop': Quantity;
    /** Speed of the engine when its temperature was taken */
    readonly 'rotation': Quantity;
    /** Highest temperature it is marked or sold for */
    readonly 'rated-temperature': Quantity;
}

/** Muffler. Silences the exhaust and holds what runs back when the engine stops. */
export interface MufflerFacts extends FittingFacts {
    /** Volume */
    readonly 'volume': Quantity;
    /** Height of its inlet above the waterline */
    readonly 'inlet-above-waterline': Quantity;
    /** Inside diameter of the hose that runs back into it */
    readonly 'outlet-bore': Quantity;
    /** Length of that hose from the muffler up to its highest point */
    readonly 'drain-back-length': Quantity;
    /** Kind */
    readonly 'pattern': Word<'lift' | 'pot' | 'in-line' | 'separator'>;
}

/** Turbocharger. Driven by the exhaust, presses air into the engine. */
export interface TurboFacts extends ComponentFacts {
    /** Boost under load */
    readonly 'boost': Quantity;
    /** Temperature of its skin */
    readonly 'temperature': Quantity;
    /** Whether a hand can touch its hot part in ordinary use */
    readonly 'within-reach': Word<'yes' | 'no'>;
    /** Speed of the engine when its temperature was taken */
    readonly 'rotation': Quantity;
    /** Whether its hot part is lagged */
    readonly 'lagged': Word<'yes' | 'no'>;
    /** Whether oil or gas leaks from it */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Blower. Draws vapor out of a space before an engine is started. */
export interface BlowerFacts extends ComponentFacts {
    /** Rating on it */
    readonly 'rated-flow': Quantity;
    /** Flow measured at its outlet */
    readonly 'measured-flow': Quantity;
    /** Net volume of the space it serves */
    readonly 'space-volume': Quantity;
    /** Whether the space is open to the air, 15 in2 for each ft3 of it */
    readonly 'space-open': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Ventilation duct. Carries air into or out of an engine or tank space. */
export interface VentDuctFacts extends ComponentFacts {
    /** Which way the air goes */
    readonly 'way': Word<'supply' | 'exhaust'>;
    /** Clear area */
    readonly 'area': Quantity;
    /** Inside diameter */
    readonly 'bore': Quantity;
    /** Whether its inner end lies in the lower third of the space */
    readonly 'in-lower-third': Word<'yes' | 'no'>;
    /** Whether its inner end lies above the usual bilge water */
    readonly 'above-bilge-water': Word<'yes' | 'no'>;
    /** Net volume of the space it serves */
    readonly 'space-volume': Quantity;
    /** Whether the space is open to the air, 15 in2 for each ft3 of it */
    readonly 'space-open': Word<'yes' | 'no'>;
}

/** Machinery or tank space. A closed space with an engine or a tank in it, which blowers and ducts serve. */
export interface MachinerySpaceFacts extends ComponentFacts {
    /** Net volume */
    readonly 'volume': Quantity;
    /** Whether a gasoline engine, tank or fuel fitting is in it */
    readonly 'gasoline': Word<'yes' | 'no'>;
    /** Openings straight to the open air */
    readonly 'open-area': Quantity;
    /** Electrical parts in it, not parted from the gasoline, that bear no mark of ignition protection */
    readonly 'unmarked-parts': ComponentRef;
    /** Whether it is open to the air, 15 in2 for each ft3 of it */
    readonly 'space-open': Word<'yes' | 'no'>;
}

/** Electrical part. A relay, solenoid, switch, motor or other electrical part without a kind of its own. */
export interface ElectricalPartFacts extends ComponentFacts {
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Cowl. The outer end of the ventilation duct that it serves. */
export interface CowlFacts extends ComponentFacts {
    /** Clear area */
    readonly 'area': Quantity;
    /** Which way it faces */
    readonly 'faces': Word<'forward' | 'aft' | 'turning'>;
}

/** Pipe. A rigid pipe of a run. */
export interface PipeFacts extends FittingFacts {
    /** Length */
    readonly 'length': Quantity;
}

/** Exhaust pipe. A dry part of the exhaust, or a pipe of the wet one. */
export interface ExhaustPipeFacts extends PipeFacts {
    /** Temperature of its skin under load */
    readonly 'temperature': Quantity;
    /** Whether it is lagged where a hand can reach it */
    readonly 'lagged': Word<'yes' | 'no'>;
    /** Whether it is held and free to grow with heat */
    readonly 'supported': Word<'yes' | 'no'>;
}

/** Fire extinguisher. A portable fire extinguisher. */
export interface ExtinguisherFacts extends ComponentFacts {
    /** Rating as marked: 5-B, 10-B, 20-B, or the older B-I and B-II */
    readonly 'rating': Word<'b-5' | 'b-10' | 'b-20' | 'b-i' | 'b-ii' | 'other'>;
    /** Whether it is a disposable bottle */
    readonly 'disposable': Word<'yes' | 'no'>;
    /** What its gauge shows */
    readonly 'gauge': Word<'in-range' | 'out-of-range' | 'none'>;
    /** Its pin */
    readonly 'pin': Word<'in-place' | 'loose' | 'gone'>;
    /** Mass as weighed */
    readonly 'mass': Quantity;
    /** Whether it hangs in a bracket */
    readonly 'bracket': Word<'yes' | 'no'>;
    /** What it is filled with */
    readonly 'agent': Word<'dry-chemical' | 'clean-agent' | 'carbon-dioxide' | 'foam' | 'other'>;
}

/** Fixed extinguisher. A fixed system in the machinery space. */
export interface FixedExtinguisherFacts extends ComponentFacts {
    /** Volume it is rated for */
    readonly 'covers': Quantity;
    /** Net volume of the space it protects */
    readonly 'space-volume': Quantity;
    /** When it was last serviced */
    readonly 'serviced': DateValue;
    /** Whether it stops the engine */
    readonly 'stops-engine': Word<'yes' | 'no'>;
    /** Agent */
    readonly 'agent': Word<'clean-agent' | 'carbon-dioxide' | 'aerosol' | 'other'>;
    /** Mass of the agent on its label */
    readonly 'agent-mass': Quantity;
    /** Mass of the agent as weighed */
    readonly 'agent-mass-now': Quantity;
    /** Its pin or seal */
    readonly 'pin': Word<'in-place' | 'loose' | 'gone'>;
}

/** Fire blanket. A fire blanket by the stove. */
export interface FireBlanketFacts extends ComponentFacts {
}

/** Smoke alarm. Tells of smoke. */
export interface SmokeAlarmFacts extends ComponentFacts {
    /** Date to be replaced by */
    readonly 'replace-by': DateValue;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Carbon-monoxide alarm. Tells of carbon monoxide. */
export interface CoAlarmFacts extends ComponentFacts {
    /** Date to be replaced by */
    readonly 'replace-by': DateValue;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Gas alarm. Tells of cooking gas or gasoline vapor. */
export interface GasAlarmFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Date to be replaced by */
    readonly 'replace-by': DateValue;
}

/** Escape. A way out other than the main one. */
export interface EscapeFacts extends ComponentFacts {
    /** Clear opening */
    readonly 'clear-opening': Text;
    /** Least clear width of the opening */
    readonly 'clear-least': Quantity;
    /** Whether it opens from inside */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Life jackets. Wearable life jackets. Record how many with quantity. */
export interface LifejacketFacts extends ComponentFacts {
    /** Kind */
    readonly 'wear': Word<'foam' | 'inflatable'>;
    /** Sizes */
    readonly 'sizes': Text;
    /** When they were last serviced */
    readonly 'serviced': DateValue;
    /** How many are child sizes */
    readonly 'child-sizes': Quantity;
    /** How many of them are in order */
    readonly 'in-order': Quantity;
    /** Whether they carry the mark of their approval */
    readonly 'approved': Word<'yes' | 'no'>;
}

/** Throwable device. A ring, horseshoe or cushion. */
export interface ThrowableFacts extends ComponentFacts {
    /** Its form */
    readonly 'form': Word<'ring' | 'horseshoe' | 'cushion' | 'other'>;
    /** Whether it carries the mark of its approval */
    readonly 'approved': Word<'yes' | 'no'>;
    /** Whether a light is attached */
    readonly 'light': Word<'yes' | 'no'>;
}

/** Life raft. A life raft. */
export interface LiferaftFacts extends ComponentFacts {
    /** Persons it is rated for */
    readonly 'persons': Quantity;
    /** When its service is due */
    readonly 'service-due': DateValue;
    /** Whether its painter is made fast */
    readonly 'painter-fast': Word<'yes' | 'no'>;
    /** What it is packed in */
    readonly 'container': Word<'canister' | 'valise'>;
}

/** Hydrostatic release. Frees the raft or beacon when she sinks. Record when it was fitted. */
export interface HydrostaticReleaseFacts extends ComponentFacts {
    /** Marked month; left out where nothing is marked on it */
    readonly 'expires': DateValue;
    /** Whether a month is marked on it */
    readonly 'marked': Word<'yes' | 'no'>;
}

/** Distress signals. Flares and other signals. */
export interface DistressSignalFacts extends ComponentFacts {
    /** Kind */
    readonly 'signal': Word<'red-hand' | 'red-parachute' | 'red-meteor' | 'orange-smoke' | 'flag' | 'electric-light'>;
    /** Whether it counts by day */
    readonly 'day': Word<'yes' | 'no'>;
    /** Whether it counts by night */
    readonly 'night': Word<'yes' | 'no'>;
    /** Marked month; it counts to the last day of it */
    readonly 'expires': DateValue;
    /** Whether it carries the mark of its approval */
    readonly 'approved': Word<'yes' | 'no'>;
    /** Whether an electric light works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Distress beacon. A radio beacon. */
export interface BeaconFacts extends ComponentFacts {
    /** Marked month of its battery */
    readonly 'battery-expires': DateValue;
    /** Whether it is registered to this vessel and owner */
    readonly 'registered': Word<'yes' | 'no'>;
    /** Vessel it is registered to */
    readonly 'registered-boat': Text;
    /** When its registration is due to be renewed */
    readonly 'registration-expires': DateValue;
    /** Its code, as marked */
    readonly 'code': Text;
    /** Its code, as the registration has it */
    readonly 'code-on-papers': Text;
    /** How it is let go */
    readonly 'release': Word<'float-free' | 'manual' | 'personal'>;
    /** What its own test said */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Harnesses. Harnesses and tethers. */
export interface HarnessFacts extends ComponentFacts {
}

/** First-aid kit. A first-aid kit. */
export interface FirstAidFacts extends ComponentFacts {
}

/** Navigation light. A navigation light. */
export interface NavigationLightFacts extends ComponentFacts {
    /** Which */
    readonly 'light': Word<'masthead' | 'side-port' | 'side-starboard' | 'stern' | 'all-round' | 'anchor' | 'tricolor' | 'sides-combined' | 'towing'>;
    /** Range */
    readonly 'range': Quantity;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Height above the gunwale */
    readonly 'height': Quantity;
    /** Arc that is hidden by spars or gear */
    readonly 'masked': Quantity;
    /** Height above the side lights */
    readonly 'above-sidelights': Quantity;
    /** Arc over which it shows */
    readonly 'arc': Quantity;
    /** Color */
    readonly 'color': Word<'white' | 'red' | 'green' | 'yellow'>;
    /** In which modes it is switched on with the others */
    readonly 'shines': Word<'sail' | 'engine' | 'anchor'>;
}

/** Sound device. A horn, whistle or bell. */
export interface SoundDeviceFacts extends ComponentFacts {
    /** Which */
    readonly 'device': Word<'horn' | 'whistle' | 'bell' | 'gong'>;
    /** How far it is heard, by its maker */
    readonly 'range': Quantity;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Compass. The steering compass. */
export interface CompassFacts extends ComponentFacts {
    /** Whether there is a deviation card */
    readonly 'deviation-card': Word<'yes' | 'no'>;
    /** When it was last adjusted */
    readonly 'swung': DateValue;
}

/** VHF radio. A VHF radio. */
export interface VhfFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Its identity number */
    readonly 'identity-number': Text;
    /** Whether it has a distress button that sends her identity */
    readonly 'distress-button': Word<'yes' | 'no'>;
}

/** Instrument. An electronic instrument of navigation. */
export interface InstrumentFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Placard. A placard or plan that is to be aboard. */
export interface PlacardFacts extends ComponentFacts {
    /** What it speaks of */
    readonly 'placard-for': Word<'oil' | 'garbage' | 'waste-plan' | 'other'>;
    /** What it says */
    readonly 'text': Text;
    /** Width */
    readonly 'width': Quantity;
    /** Height */
    readonly 'height': Quantity;
    /** Height of its letters */
    readonly 'letter-height': Quantity;
    /** Whether it is posted where it is to be */
    readonly 'posted': Word<'yes' | 'no'>;
    /** When it expires */
    readonly 'expires': DateValue;
}

/** Radar. Shows shores and vessels by radio echo. */
export interface RadarFacts extends InstrumentFacts {
}

/** Identification transceiver. Sends and receives the names and positions of vessels. */
export interface AisFacts extends InstrumentFacts {
}

/** Chart plotter. Shows her position on a chart. */
export interface PlotterFacts extends InstrumentFacts {
}

/** Depth sounder. Tells the depth of water. */
export interface DepthSounderFacts extends InstrumentFacts {
}

/** Certificate. A paper of the vessel: title, registration, document. */
export interface CertificateFacts extends ComponentFacts {
    /** Which paper */
    readonly 'paper': Word<'title' | 'registration' | 'documentation' | 'builders-certificate' | 'bill-of-sale' | 'survey-report' | 'other'>;
    /** Number on it */
    readonly 'number': Text;
    /** Vessel and owner as it names them */
    readonly 'names': Text;
    /** Hull number as it gives it */
    readonly 'hull-number': Text;
    /** When it was issued */
    readonly 'issued': DateValue;
    /** When it expires */
    readonly 'expires': DateValue;
}

/** Radio license. The license of the radio station aboard. */
export interface RadioLicenseFacts extends CertificateFacts {
    /** Call sign */
    readonly 'call-sign': Text;
    /** Identity number it gives */
    readonly 'identity-number': Text;
}

/** Insurance. The policy she is insured under, as shown. */
export interface InsuranceFacts extends CertificateFacts {
    /** Who insures her */
    readonly 'insurer': Text;
    /** Waters the policy holds in */
    readonly 'waters': Text;
}

/** Hull number. The hull identification number as read at one place on the hull. */
export interface HullNumberFacts extends ComponentFacts {
    /** The number as read there */
    readonly 'text': Text;
    /** Which of her numbers */
    readonly 'mark': Word<'primary' | 'duplicate' | 'plate' | 'other'>;
    /** Height of its characters */
    readonly 'letter-height': Quantity;
    /** Whether taking it off would leave a trace */
    readonly 'permanent': Word<'yes' | 'no'>;
    /** Whether it shows signs of having been altered */
    readonly 'altered': Word<'yes' | 'no'>;
}

/** Official number. The official number of a documented vessel as marked inside her. */
export interface OfficialNumberFacts extends ComponentFacts {
    /** What it says, with the letters before it */
    readonly 'text': Text;
    /** Height of its figures */
    readonly 'letter-height': Quantity;
    /** Whether taking it off would leave a trace */
    readonly 'permanent': Word<'yes' | 'no'>;
}

/** Capacity label. The builder's label of persons, load and engine power. */
export interface CapacityLabelFacts extends ComponentFacts {
    /** Persons on the label */
    readonly 'persons': Quantity;
    /** Load of the persons on the label */
    readonly 'persons-load': Quantity;
    /** Load of persons, engine and gear on the label */
    readonly 'limit': Quantity;
    /** Engine power on the label */
    readonly 'engine-power': Quantity;
}

/** Marking. Name, port, official number or registration as marked on her. */
export interface MarkingFacts extends ComponentFacts {
    /** What it gives */
    readonly 'marked': Word<'name' | 'hailing-port' | 'name-and-port' | 'official-number' | 'state-number' | 'draft' | 'other'>;
    /** What it says */
    readonly 'text': Text;
    /** Height of the letters */
    readonly 'letter-height': Quantity;
    /** Whether taking it off would leave a trace */
    readonly 'permanent': Word<'yes' | 'no'>;
}

/** Manual. A manual that is aboard. */
export interface ManualFacts extends ComponentFacts {
    /** What it is for */
    readonly 'manual-for': Text;
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
    /** When urgent matters were told */
    readonly 'told-on': DateValue;
    /** To whom urgent matters were told */
    readonly 'told-to': Text;
    /** How urgent matters were told, and at what hour */
    readonly 'told-how': Text;
    /** Whom the letter of compliance goes to */
    readonly 'underwriter': Text;
    /** The underwriter's number for the vessel */
    readonly 'policy': Text;
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
    /** Why she was not seen out of the water */
    readonly 'not-hauled': Text;
    /** Why no value is given */
    readonly 'no-value': Text;
    /** At a damage survey: what happened, as told, and by whom */
    readonly 'occurrence': Text;
    /** When it happened, as told */
    readonly 'occurrence-date': DateValue;
    /** At what time of day, as told */
    readonly 'occurrence-time': Quantity;
    /** Where it happened, as told */
    readonly 'occurrence-place': Text;
    /** The cause as it is alleged, and by whom */
    readonly 'cause-stated': Text;
    /** What was found that bears on the cause */
    readonly 'evidence': Text;
    /** The cause as far as the evidence goes, in the surveyor's opinion */
    readonly 'cause-opinion': Text;
    /** Extent of the damage, and what was opened up to see it */
    readonly 'extent': Text;
    /** How it is to be repaired */
    readonly 'repair-method': Text;
    /** Time the repair takes */
    readonly 'repair-time': Quantity;
    /** Damage that is likely beyond what was seen, or cannot be ruled out */
    readonly 'further-damage': Text;
    /** At a delivery: the contract, its date and its specification */
    readonly 'contract': Text;
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
    /** Depth of the hull alone below the water, without keel, drive or rudder */
    readonly 'hull-draft': Quantity;
    /** Width of one hull of a multihull */
    readonly 'hull-beam': Quantity;
    /** For tonnage: from the sheer to the outside of the bottom */
    readonly 'depth': Quantity;
    /** For tonnage: form of the hull by simplified measurement */
    readonly 'tonnage-form': Word<'ship' | 'sailing' | 'sailing-keel-in-depth' | 'box'>;
    /** How the certificate measured her */
    readonly 'tonnage-system': Word<'simplified' | 'formal'>;
    /** For tonnage: whether her engine stands inside the hull */
    readonly 'engine-in-hull': Word<'yes' | 'no'>;
    /** How her hull runs at its best speed */
    readonly 'running': Word<'displacement' | 'semi-displacement' | 'planing'>;
    /** Speed she cruises at */
    readonly 'cruising-speed': Quantity;
    /** Greatest speed under power */
    readonly 'top-speed': Quantity;
    /** All her fuel tanks together */
    readonly 'fuel-capacity': Quantity;
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
    /** Whether she works commercially */
    readonly 'commercial': Word<'yes' | 'no'>;
    /** Children among them */
    readonly 'children': Quantity;
    /** Waters she is used on; the Great Lakes count as coastal */
    readonly 'used-on': Word<'inland' | 'coastal' | 'offshore'>;
    /** Enclosed spaces with berths */
    readonly 'sleeping-cabins': Quantity;
    /** Greatest width of the transom without fittings */
    readonly 'transom-width': Quantity;
    /** Height of the transom where an outboard engine hangs */
    readonly 'transom-height': Quantity;
    /** Whether she is steered by wheel and cable or hydraulics, not by the tiller of her outboard engine */
    readonly 'remote-steering': Word<'yes' | 'no'>;
    /** Whether her bottom is flat with hard chines */
    readonly 'flat-bottom': Word<'yes' | 'no'>;
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
    /** Where they lie, if no water joins them: in spray and salt air, in the cabin, or in a dry heated one */
    readonly 'environment': Word<'weather' | 'indoors' | 'controlled'>;
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
    /** Its number in the report that is followed up */
    readonly 'earlier': Text;
    /** At a damage survey: whether it is of the occurrence, or older */
    readonly 'relation': Word<'new' | 'old' | 'related' | 'unrelated' | 'unknown'>;
    /** Part of the cost that leaves her better than before the damage */
    readonly 'betterment': Quantity;
    /** At a re-inspection: what became of the recommendation */
    readonly 'outcome': Word<'done-and-seen' | 'done-as-stated' | 'in-part' | 'open' | 'declined'>;
    /** What shows the outcome: what was seen or tried, an invoice, a test */
    readonly 'evidence': Text;
    /** When the outcome was looked at */
    readonly 'looked-at': DateValue;
}

/** Valuation. The opinion of value and what it rests on. */
export interface ValuationFacts {
    /** What the value is wanted for, and by whom */
    readonly 'purpose': Text;
    /** The definition of value used */
    readonly 'basis': Text;
    /** Assumptions that, found untrue, would change the value */
    readonly 'assumptions': Text;
    /** What is taken for granted of her condition */
    readonly 'condition-assumed': Text;
    /** Services to this vessel in the three years before, or that there were none */
    readonly 'prior-services': Text;
    /** Date the opinion is for */
    readonly 'effective': DateValue;
    /** Approaches used, and why others were left out */
    readonly 'method': Text;
    /** The surveyor's opinion */
    readonly 'opinion': Quantity;
    /** The opinion in words, as it is printed beside the figures */
    readonly 'opinion-words': Text;
    /** The value as the summary of the report states it */
    readonly 'summary': Text;
    /** The value as the covering letter states it */
    readonly 'letter': Text;
    /** Lower end of the range */
    readonly 'low': Quantity;
    /** Upper end of the range */
    readonly 'high': Quantity;
    /** Cost of a like new vessel today */
    readonly 'replacement': Quantity;
    /** What age and wear take off the cost of a like new vessel, as a share of it */
    readonly 'depreciation': Quantity;
    /** What dated design and gear take off it, as a share of it */
    readonly 'obsolescence': Quantity;
    /** The sales comparison approach: what it gave, or why it was left out */
    readonly 'sales-approach': Text;
    /** The cost approach: what it gave, or why it was left out */
    readonly 'cost-approach': Text;
    /** The income approach: what it gave, or why it was left out */
    readonly 'income-approach': Text;
    /** Cost of repairs taken off the value */
    readonly 'repairs-deducted': Quantity;
    /** What the repairs taken off are for */
    readonly 'repairs': Text;
    /** Components whose repair is taken off */
    readonly 'repairs-of': ComponentRef;
    /** How the approaches and the comparables were weighed into the opinion */
    readonly 'reconciled': Text;
    /** Why the opinion, its sales or their spread stand although a limit says otherwise */
    readonly 'explained': Text;
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
    /** Year she was built */
    readonly 'built': Quantity;
    /** Her length overall */
    readonly 'length': Quantity;
    /** Running hours of her engine */
    readonly 'engine-hours': Quantity;
    /** Her condition against the vessel surveyed */
    readonly 'condition': Word<'better' | 'same' | 'worse'>;
    /** Her gear, sails and electronics against the vessel surveyed */
    readonly 'gear': Word<'better' | 'same' | 'worse'>;
    /** Why she is used although a limit says otherwise */
    readonly 'explained': Text;
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
    /** Line under the name on its papers */
    readonly 'motto': Text;
    /** The firm’s mark for the head of its papers: an SVG or PNG file beside this one */
    readonly 'mark': Text;
    /** The firm’s one color, as #0b4a63 */
    readonly 'color': Text;
    /** Paper that its reports are printed on */
    readonly 'paper': Word<'a4' | 'letter'>;
    /** Standing words of the definitions */
    readonly 'definitions': Text;
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

/** Gas locker. Holds the cylinders, open to the outside only. */
export interface GasLockerFacts extends ComponentFacts {
    /** Whether it has a vent over the side */
    readonly 'vented': Word<'yes' | 'no'>;
    /** Bore of its vent */
    readonly 'vent-bore': Quantity;
    /** Whether its vent comes out below the floor of the locker */
    readonly 'vent-outlet-below-floor': Word<'yes' | 'no'>;
    /** Height of the vent's outlet above the waterline */
    readonly 'vent-outlet-above-waterline': Quantity;
    /** From the vent's outlet to the nearest opening into the hull */
    readonly 'distance-to-opening': Quantity;
    /** Whether gas could run from it into the hull */
    readonly 'open-to-hull': Word<'yes' | 'no'>;
    /** How it opens */
    readonly 'lid': Word<'top' | 'side' | 'none'>;
    /** Whether it is tight to the inside of the boat */
    readonly 'vapor-tight': Word<'yes' | 'no'>;
    /** Whether its vent leaves from the bottom */
    readonly 'vent-at-bottom': Word<'yes' | 'no'>;
    /** Whether its vent is shared */
    readonly 'vent-shared': Word<'yes' | 'no'>;
    /** Whether its vent dips or rises on the way */
    readonly 'vent-dips': Word<'yes' | 'no'>;
}

/** Gas cylinder. A cylinder of cooking gas. */
export interface GasCylinderFacts extends ComponentFacts {
    /** When it was last requalified, as stamped */
    readonly 'requalified': DateValue;
    /** When it is to be requalified, as marked */
    readonly 'requalify-by': DateValue;
    /** Whether it stands in a locker or on deck in the open, and not in the hull */
    readonly 'in-locker': Word<'yes' | 'no'>;
    /** What it holds when full */
    readonly 'contents': Quantity;
    /** What it holds */
    readonly 'gas': Word<'propane' | 'butane' | 'natural-gas'>;
    /** Whether it is secured */
    readonly 'secured': Word<'yes' | 'no'>;
}

/** Gas regulator. Brings the gas to working pressure. */
export interface RegulatorFacts extends ComponentFacts {
    /** Pressure it gives */
    readonly 'pressure': Quantity;
    /** How long its maker lets it serve */
    readonly 'makers-term': Quantity;
    /** Whether it is in the locker */
    readonly 'in-locker': Word<'yes' | 'no'>;
}

/** Gas gauge. Shows the pressure of the cylinder, for the leak test. */
export interface GasGaugeFacts extends ComponentFacts {
    /** Whether it is in the locker */
    readonly 'in-locker': Word<'yes' | 'no'>;
}

/** Gas hose. A hose for cooking gas. */
export interface GasHoseFacts extends HoseFacts {
    /** Joints between the locker and the appliance */
    readonly 'joints-inboard': Quantity;
    /** Whether its joint inboard is the one by which a stove that swings hangs on its hose */
    readonly 'joint-for-gimbal': Word<'yes' | 'no'>;
    /** How long its maker lets it serve */
    readonly 'makers-term': Quantity;
    /** How its ends are made */
    readonly 'end-fittings': Word<'crimped' | 'screwed' | 'worm-clip'>;
}

/** Gas line. A rigid line for cooking gas. */
export interface GasLineFacts extends PipeFacts {
    /** Joints between the locker and the appliance */
    readonly 'joints-inboard': Quantity;
    /** Whether its joint inboard is the one by which a stove that swings hangs on its hose */
    readonly 'joint-for-gimbal': Word<'yes' | 'no'>;
    /** Whether it is held and guarded against chafe */
    readonly 'supported': Word<'yes' | 'no'>;
}

/** Gas shut-off. Shuts the gas off. */
export interface GasValveFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
    /** Whether it can be worked from the galley without reaching over the flame */
    readonly 'at-galley': Word<'yes' | 'no'>;
    /** How it is worked */
    readonly 'drive': Word<'manual' | 'electric'>;
}

/** Gas test. A test of tightness: cylinder shut, line charged, appliances shut. */
export interface GasTestFacts extends ComponentFacts {
    /** Pressure at the start */
    readonly 'start-pressure': Quantity;
    /** Pressure at the end */
    readonly 'end-pressure': Quantity;
    /** How long it was watched */
    readonly 'duration': Quantity;
    /** Whether the cylinder was shut */
    readonly 'cylinder-shut': Word<'yes' | 'no'>;
    /** Whether the appliances were shut */
    readonly 'appliances-shut': Word<'yes' | 'no'>;
    /** Whether the line was charged with its solenoid open */
    readonly 'line-charged': Word<'yes' | 'no'>;
}

/** Stove. A stove or oven. */
export interface StoveFacts extends ApplianceFacts {
    /** Fuel */
    readonly 'fuel': Word<'gas' | 'diesel' | 'alcohol' | 'electric'>;
    /** Whether each burner shuts off when its flame goes out */
    readonly 'flame-failure': Word<'yes' | 'no'>;
    /** Whether it swings */
    readonly 'gimbaled': Word<'yes' | 'no'>;
    /** From hot parts to what can burn */
    readonly 'clearance': Quantity;
    /** Whether it is held against coming loose */
    readonly 'fixed': Word<'yes' | 'no'>;
}

/** Oven. An oven apart from the stove. */
export interface OvenFacts extends StoveFacts {
}

/** Heater. Heats the cabin. */
export interface HeaterFacts extends ApplianceFacts {
    /** Fuel */
    readonly 'fuel': Word<'gas' | 'diesel' | 'solid' | 'electric'>;
    /** Its flue */
    readonly 'flue': Word<'sound' | 'leaking' | 'none' | 'not-seen'>;
    /** From hot parts to what can burn */
    readonly 'clearance': Quantity;
    /** Whether it is held against coming loose */
    readonly 'fixed': Word<'yes' | 'no'>;
    /** Whether it shuts off when its flame goes out */
    readonly 'flame-failure': Word<'yes' | 'no'>;
}

/** Fireplace. A stove for wood, coal or charcoal. */
export interface FireplaceFacts extends HeaterFacts {
    /** Whether it stands on a hearth that cannot burn */
    readonly 'hearth': Word<'yes' | 'no'>;
}

/** Refrigeration. Keeps food cold. */
export interface RefrigerationFacts extends ApplianceFacts {
    /** What drives it */
    readonly 'fuel': Word<'electric' | 'gas'>;
}

/** Hull shell. The skin of the hull. */
export interface HullShellFacts extends ComponentFacts {
    /** Thickness */
    readonly 'thickness': Quantity;
    /** How it is laid up */
    readonly 'layup': Text;
    /** Bottom paint */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'>;
    /** Whether a barrier coat lies under the paint */
    readonly 'barrier-coat': Word<'yes' | 'no'>;
    /** Deepest pit */
    readonly 'pit-depth': Quantity;
    /** What the meter read, on its own scale */
    readonly 'moisture': Text;
    /** Highest reading of the meter, on its own scale */
    readonly 'moisture-reading': Quantity;
    /** Reading of a place known dry, same meter and mode */
    readonly 'dry-reference': Quantity;
    /** What lies behind the place read */
    readonly 'meter-behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    /** What it sounded like where the meter read highest */
    readonly 'sounds': Word<'clear' | 'dull' | 'hollow'>;
    /** What sounding told */
    readonly 'percussion': Text;
    /** Area of the panel sounded */
    readonly 'panel-area': Quantity;
    /** Area of each patch that sounds dull or hollow */
    readonly 'hollow-area': Quantity;
    /** What bears on the hollow place */
    readonly 'load-point': Word<'mast' | 'chainplate' | 'engine' | 'none'>;
    /** Thickness of paint and barrier coat together */
    readonly 'coating': Quantity;
}

/** Plate. Plating of a metal hull. */
export interface PlateFacts extends ComponentFacts {
    /** Original thickness */
    readonly 'original-thickness': Quantity;
    /** Gauged thickness, mean of the readings */
    readonly 'thickness': Quantity;
    /** Least thickness allowed, as class, designer or insurer states it */
    readonly 'least-thickness': Quantity;
    /** Whether the plating is that of a lightly built craft */
    readonly 'lightly-built': Word<'yes' | 'no'>;
    /** Deepest pit */
    readonly 'pit-depth': Quantity;
    /** Where the original thickness comes from */
    readonly 'original-basis': Word<'plan' | 'thickest-reading' | 'assumed'>;
    /** How the pits lie */
    readonly 'pits': Word<'none' | 'lone' | 'grouped'>;
    /** Strake and frames it lies in */
    readonly 'strake': Text;
    /** State of its welds */
    readonly 'weld': Word<'sound' | 'wasted' | 'cracked' | 'not-seen'>;
}

/** Planking. Planks of a wooden hull. */
export interface PlankFacts extends ComponentFacts {
    /** Thickness */
    readonly 'thickness': Quantity;
    /** Wood */
    readonly 'species': MaterialValue;
    /** Moisture, percent of the dry wood */
    readonly 'moisture': Quantity;
    /** Whether it lies under water when she is afloat */
    readonly 'immersed': Word<'yes' | 'no'>;
    /** Whether fresh water stands on it or drips on it */
    readonly 'fresh-water': Word<'yes' | 'no'>;
    /** Where it lies: garboard strake, stem, or elsewhere */
    readonly 'lies-in': Word<'garboard' | 'stem' | 'elsewhere'>;
    /** Seams and caulking */
    readonly 'seams': Word<'tight' | 'weeping' | 'open' | 'not-seen'>;
    /** Ends of the planks */
    readonly 'butts': Word<'sound' | 'parted' | 'not-seen'>;
    /** How far a probe went in */
    readonly 'probe': Quantity;
}

/** Timber. A wooden member other than a plank: stem, deadwood, beam, deckhouse post. */
export interface TimberFacts extends ComponentFacts {
    /** Wood */
    readonly 'species': MaterialValue;
    /** Moisture, percent of the dry wood */
    readonly 'moisture': Quantity;
    /** Whether it lies under water when she is afloat */
    readonly 'immersed': Word<'yes' | 'no'>;
    /** Whether fresh water stands on it or drips on it */
    readonly 'fresh-water': Word<'yes' | 'no'>;
    /** Where it lies: garboard strake, stem, or elsewhere */
    readonly 'lies-in': Word<'garboard' | 'stem' | 'elsewhere'>;
    /** How far a probe went in */
    readonly 'probe': Quantity;
}

/** Frame. A rib of the hull. */
export interface FrameFacts extends ComponentFacts {
    /** Spacing */
    readonly 'spacing': Quantity;
    /** How many are broken */
    readonly 'broken': Quantity;
    /** How many have a sister */
    readonly 'sistered': Quantity;
    /** How it is made */
    readonly 'build': Word<'sawn' | 'steamed' | 'laminated' | 'angle' | 'other'>;
    /** Section, as 2 in by 1-1/2 in */
    readonly 'section': Text;
}

/** Fastenings. Screws, rivets or nails that hold the planks. A sample drawn from several places speaks for the rest. */
export interface FasteningFacts extends ComponentFacts {
    /** How many were drawn */
    readonly 'sampled': Quantity;
    /** How many of these were wasted */
    readonly 'bad': Quantity;
    /** How many were drawn to port */
    readonly 'drawn-port': Quantity;
    /** How many were drawn to starboard */
    readonly 'drawn-starboard': Quantity;
    /** From how many places they were drawn */
    readonly 'places-drawn': Quantity;
    /** Where they were drawn */
    readonly 'from': Text;
    /** Spacing */
    readonly 'spacing': Quantity;
    /** Loss of the shank, the worst of the sample */
    readonly 'shank-loss': Quantity;
}

/** Stringer. A lengthwise stiffener. */
export interface StringerFacts extends ComponentFacts {
    /** How it is bonded */
    readonly 'bond': Word<'sound' | 'parted' | 'not-seen'>;
    /** Whether a crack was seen */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Floor. A cross member over the keel. */
export interface FloorFacts extends ComponentFacts {
    /** How it is bonded */
    readonly 'bond': Word<'sound' | 'parted' | 'not-seen'>;
    /** Whether a crack was seen */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Bulkhead. An upright partition that stiffens the hull. */
export interface BulkheadFacts extends ComponentFacts {
    /** Whether it is meant to be watertight */
    readonly 'watertight': Word<'yes' | 'no'>;
    /** Whether its penetrations are sealed */
    readonly 'penetrations-sealed': Word<'yes' | 'no'>;
    /** How it is fixed to the hull */
    readonly 'tabbing': Word<'sound' | 'parted' | 'not-seen'>;
    /** Whether decay was found in it */
    readonly 'decayed': Word<'yes' | 'no'>;
}

/** Transom. The flat stern. */
export interface TransomFacts extends ComponentFacts {
    /** What sounding told */
    readonly 'percussion': Text;
    /** Area of the panel sounded */
    readonly 'panel-area': Quantity;
    /** Area of each patch that sounds dull or hollow */
    readonly 'hollow-area': Quantity;
    /** What bears on the hollow place */
    readonly 'load-point': Word<'mast' | 'chainplate' | 'engine' | 'none'>;
    /** What the meter read, on its own scale */
    readonly 'moisture': Text;
    /** Highest reading of the meter, on its own scale */
    readonly 'moisture-reading': Quantity;
    /** Reading of a place known dry, same meter and mode */
    readonly 'dry-reference': Quantity;
    /** What lies behind the place read */
    readonly 'meter-behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    /** What it sounded like where the meter read highest */
    readonly 'sounds': Word<'clear' | 'dull' | 'hollow'>;
    /** Whether it gives under load */
    readonly 'flexes': Word<'yes' | 'no'>;
}

/** Keel. The fin or bar under the hull, with its ballast. */
export interface KeelFacts extends ComponentFacts {
    /** How it is made */
    readonly 'build': Word<'bolted' | 'encapsulated' | 'box' | 'lifting' | 'integral'>;
    /** Gap at the hull joint */
    readonly 'joint-gap': Quantity;
    /** Whether its joint weeps */
    readonly 'weeps': Word<'yes' | 'no'>;
    /** Whether it shows marks of striking */
    readonly 'strike-marks': Word<'yes' | 'no'>;
    /** Mass */
    readonly 'mass': Quantity;
}

/** Keel bolts. Bolts that hold the keel. */
export interface KeelBoltFacts extends ComponentFacts {
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Year last drawn or imaged */
    readonly 'drawn': Quantity;
    /** Gap at the joint they hold */
    readonly 'joint-gap': Quantity;
    /** Whether they weep */
    readonly 'weeps': Word<'yes' | 'no'>;
    /** Torque they stood */
    readonly 'torque': Quantity;
}

/** Hull to deck joint. Where hull and deck meet. */
export interface HullDeckJointFacts extends ComponentFacts {
    /** How it is made */
    readonly 'build': Word<'bolted' | 'bonded' | 'laminated' | 'screwed' | 'unknown'>;
    /** Spacing of its fasteners */
    readonly 'fastener-spacing': Quantity;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Rubbing strake. A strip along the side that takes the chafe of docks. */
export interface RubbingStrakeFacts extends ComponentFacts {
    /** Whether water comes in at its fastenings */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Whether it is loose */
    readonly 'loose': Word<'yes' | 'no'>;
    /** Spacing of its fasteners */
    readonly 'fastener-spacing': Quantity;
}

/** Crossbeam. Joins the hulls of a multihull. */
export interface CrossbeamFacts extends ComponentFacts {
    /** Whether a crack was seen at its ends */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** What holds it */
    readonly 'fasteners': Word<'tight' | 'loose' | 'wasted' | 'not-seen'>;
}

/** Bridge deck. The deck between the hulls of a multihull. */
export interface BridgeDeckFacts extends ComponentFacts {
    /** Height of its underside above the water at rest */
    readonly 'clearance': Quantity;
    /** Whether its underside is cracked */
    readonly 'slam-cracks': Word<'yes' | 'no'>;
}

/** Pontoon. A closed float that carries a houseboat or raft. */
export interface PontoonFacts extends ComponentFacts {
    /** Closed chambers */
    readonly 'chambers': Quantity;
    /** Whether water was found inside */
    readonly 'water-inside': Word<'yes' | 'no'>;
    /** Gauged thickness */
    readonly 'thickness': Quantity;
}

/** Blisters. Bubbles in gelcoat or laminate. */
export interface BlisterFacts extends ComponentFacts {
    /** Count on a square meter */
    readonly 'density': Quantity;
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Depth */
    readonly 'depth': Quantity;
    /** How many were counted */
    readonly 'count': Quantity;
    /** Area they were counted on */
    readonly 'counted-on': Quantity;
    /** Whether they reach the laminate under the gelcoat */
    readonly 'into-laminate': Word<'yes' | 'no'>;
    /** Whether the fluid is acid */
    readonly 'acid': Word<'yes' | 'no'>;
}

/** Rudder. The rudder with its stock and bearings. */
export interface RudderFacts extends ComponentFacts {
    /** Diameter of the stock */
    readonly 'stock-diameter': Quantity;
    /** Clearance in the bearings */
    readonly 'bearing-clearance': Quantity;
    /** Play at the tip */
    readonly 'tip-play': Quantity;
    /** Whether water comes from its core */
    readonly 'wet-core': Word<'yes' | 'no'>;
}

/** Coating. Paint on the hull or on a metal part, with what lies under it. */
export interface CoatingFacts extends ComponentFacts {
    /** What it is */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'barrier' | 'topside' | 'none' | 'unknown'>;
    /** Thickness, all coats together */
    readonly 'thickness': Quantity;
    /** How it holds */
    readonly 'adhesion': Word<'sound' | 'lifting' | 'bare' | 'not-tried'>;
}

/** Anode. Soft metal fitted to waste away in place of better metal. */
export interface AnodeFacts extends ComponentFacts {
    /** Mass when new */
    readonly 'original-mass': Quantity;
    /** Mass now */
    readonly 'present-mass': Quantity;
    /** What is left of it, by eye or measure */
    readonly 'left': Quantity;
    /** From the anode to the part it protects */
    readonly 'resistance': Quantity;
    /** Months until she is next hauled */
    readonly 'months-to-haul-out': Quantity;
    /** What it protects */
    readonly 'protects': ComponentRef;
    /** Volume when new, from its sizes */
    readonly 'original-volume': Quantity;
    /** Volume now, from its sizes */
    readonly 'present-volume': Quantity;
    /** Whether it was painted over, which stops it working */
    readonly 'painted': Word<'yes' | 'no'>;
}

/** Bonding. Wires that join underwater metals together. */
export interface BondingFacts extends ComponentFacts {
    /** From the fitting to the bus */
    readonly 'resistance': Quantity;
    /** Whether the fitting is isolated on purpose */
    readonly 'isolated': Word<'yes' | 'no'>;
    /** Whether a lead is broken */
    readonly 'broken': Word<'yes' | 'no'>;
    /** Size of the lead, as 8 AWG */
    readonly 'gauge': Quantity;
    /** Color of the lead */
    readonly 'color': Text;
}

/** Impressed-current protection. Protects metals by a controlled current. */
export interface ImpressedCurrentFacts extends ComponentFacts {
    /** Potential it holds */
    readonly 'set-point': Quantity;
    /** Current it gives */
    readonly 'output': Quantity;
    /** When its reference cell was fitted */
    readonly 'reference-fitted': DateValue;
}

/** Strut. Carries the shaft under water. */
export interface StrutFacts extends ComponentFacts {
    /** Color of the bare metal when scraped */
    readonly 'scrape-color': Word<'yellow' | 'pink' | 'red-brown' | 'gray'>;
    /** Play */
    readonly 'play': Quantity;
}

/** Trim tab. A plate at the transom that trims her under way. */
export interface TrimTabFacts extends ComponentFacts {
    /** Whether its cylinder leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Bow thruster. A propeller across the bow. */
export interface BowThrusterFacts extends ComponentFacts {
    /** What is left of its anode */
    readonly 'tunnel-anode-left': Quantity;
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Hull potential. The potential of a fitting or of the whole bonded system, read with a reference cell in the water. */
export interface HullPotentialFacts extends ComponentFacts {
    /** Reading */
    readonly 'potential': Quantity;
    /** Reference cell */
    readonly 'cell': Word<'silver-chloride' | 'copper-sulfate' | 'zinc'>;
    /** What the range is for */
    readonly 'gear': Word<'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood'>;
    /** Reading with the DC main switch on */
    readonly 'potential-dc-on': Quantity;
    /** Reading with the DC main switch off */
    readonly 'potential-dc-off': Quantity;
    /** Reading with the shore lead in */
    readonly 'potential-shore-in': Quantity;
    /** Reading with the shore lead out */
    readonly 'potential-shore-out': Quantity;
    /** Potential of the metal by itself, unprotected */
    readonly 'own-potential': Quantity;
    /** How long she had lain there */
    readonly 'hours-lain': Quantity;
    /** The part read, where it is not the whole system */
    readonly 'part': ComponentRef;
}

/** Bolts. A set of bolts or machine screws that holds one fitting; the bolts of the keel and the fastenings of planks are kinds of their own. */
export interface BoltsFacts extends ComponentFacts {
    /** Diameter of the shank */
    readonly 'diameter': Quantity;
    /** Share of the width of their heads that is gone */
    readonly 'heads-wasted': Quantity;
    /** Year one was last drawn */
    readonly 'drawn': Quantity;
    /** Whether they are tight */
    readonly 'tightness': Word<'tight' | 'loose' | 'not-tried'>;
}

/** Hull opening. A hole through the hull. The hose, valve and tail behind it are recorded in its run. */
export interface HullOpeningFacts extends Omit<FittingFacts, 'size'> {
    /** Nominal size as marked; a pipe size is not a hose size */
    readonly 'size': Quantity;
    /** What it is for */
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    /** Depth of its center below the waterline at rest */
    readonly 'below-waterline': Quantity;
    /** Height of its center above the waterline at rest */
    readonly 'above-waterline': Quantity;
    /** Distance abaft the foremost point of the hull, for the plan of the openings */
    readonly 'from-bow': Quantity;
    /** Distance before the aftermost point of the hull, for the plan of the openings */
    readonly 'from-stern': Quantity;
    /** Distance from the centerline, to the side recorded */
    readonly 'from-centerline': Quantity;
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
    /** Whether it is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** Whether it lies in the sun, which makes plastic brittle */
    readonly 'sun-exposed': Word<'yes' | 'no'>;
}

/** Through-hull. A flanged or mushroom fitting through the hull, with its stem inside. */
export interface ThroughHullFacts extends HullOpeningFacts {
}

/** Skin fitting. A flanged outlet or inlet through the skin, with a tail inside and no valve of its own. */
export interface SkinFittingFacts extends HullOpeningFacts {
}

/** Sea chest. A box built into the hull that feeds several valves from one opening. */
export interface SeaChestFacts extends HullOpeningFacts {
    /** Whether a grating covers it */
    readonly 'grating': Word<'yes' | 'no'>;
    /** Valves on it */
    readonly 'branches': Quantity;
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
export interface ValveFacts extends Omit<FittingFacts, 'size'> {
    /** Nominal size as marked, which is a pipe size, not a hose size */
    readonly 'size': Quantity;
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
    /** Whether its stem or wheel turns without moving the gate */
    readonly 'spins': Word<'yes' | 'no'>;
    /** Whether its body is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** Whether tools are needed to reach or to work it */
    readonly 'needs-tools': Word<'yes' | 'no'>;
    /** How it is secured in its position */
    readonly 'secured-by': Word<'handle-off' | 'padlock' | 'tie' | 'none' | 'not-seen'>;
}

/** Seacock. A valve fixed to the hull at an opening, with a lever. */
export interface SeacockFacts extends ValveFacts {
}

/** Check valve. Lets water pass one way; it is no means of closing an opening. */
export interface CheckValveFacts extends ValveFacts {
}

/** Hose clamps. Clamps as parts of their own, such as a set renewed or spares; those that hold a joint are recorded at the joint. */
export interface ClampFacts extends ComponentFacts {
    /** How they close */
    readonly 'pattern': Word<'worm' | 'bolt' | 'spring' | 'swaged'>;
    /** Width of the band */
    readonly 'band': Quantity;
    /** Range they are made for, as 32 mm..50 mm */
    readonly 'range': Quantity;
}

/** Stepped hose. A molded hose of two bores, which joins tails of two diameters. */
export interface SteppedHoseFacts extends HoseFacts {
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
    /** Way it is set */
    readonly 'set-to': Word<'holding-tank' | 'overboard'>;
}

/** Diverter. Sends sewage overboard or to the holding tank. */
export interface DiverterFacts extends YValveFacts {
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

/** Toilet. A marine toilet. */
export interface ToiletFacts extends ApplianceFacts {
    /** How it is worked */
    readonly 'drive': Word<'manual' | 'electric' | 'vacuum'>;
    /** Device it discharges through */
    readonly 'treatment': Word<'none' | 'type-i' | 'type-ii' | 'type-iii'>;
    /** Whether it is a portable toilet, emptied ashore */
    readonly 'portable': Word<'yes' | 'no'>;
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
    /** Whether it carries the label of a device */
    readonly 'labeled': Word<'yes' | 'no'>;
}

/** Treatment device. Treats sewage aboard before it goes over the side. */
export interface TreatmentDeviceFacts extends ApplianceFacts {
    /** Type on its label */
    readonly 'certified-type': Word<'type-i' | 'type-ii' | 'type-iii' | 'unlabeled'>;
    /** How it is secured where sewage may not be let out */
    readonly 'secured-by': Word<'locked-door' | 'none' | 'not-seen'>;
}

/** Air conditioner. Cooled by raw water. */
export interface AirConditionerFacts extends ApplianceFacts {
}

/** Wash-down pump. Pumps raw water on deck. */
export interface WashDownPumpFacts extends PumpFacts {
}

/** Grating. A grating or guard over an opening in the hull. */
export interface GratingFacts extends FittingFacts {
    /** Whether growth or paint blocks it */
    readonly 'blocked': Word<'yes' | 'no'>;
}

/** Propeller shaft. Carries the propeller. */
export interface ShaftFacts extends ComponentFacts {
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Run-out */
    readonly 'run-out': Quantity;
    /** Whether it is pitted */
    readonly 'pitted': Word<'yes' | 'no'>;
    /** Its key and keyway */
    readonly 'key': Word<'sound' | 'worn' | 'sheared' | 'not-seen'>;
    /** Greatest run-out that the maker allows */
    readonly 'makers-run-out': Quantity;
}

/** Coupling. Joins gearbox and shaft. */
export interface CouplingFacts extends ComponentFacts {
    /** Difference of the gap around its faces */
    readonly 'gap': Quantity;
    /** Diameter of its faces */
    readonly 'diameter': Quantity;
    /** How it joins */
    readonly 'pattern': Word<'rigid' | 'flexible'>;
    /** Its bolts */
    readonly 'bolts': Word<'tight' | 'loose' | 'missing' | 'not-seen'>;
    /** How she lay when the gap was measured */
    readonly 'measured': Word<'afloat' | 'ashore'>;
    /** Greatest difference that the maker allows */
    readonly 'makers-limit': Quantity;
    /** Whether it, or the rubber of a flexible one, is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Shaft seal. Keeps the sea out where the shaft leaves the hull. */
export interface ShaftSealFacts extends FittingFacts {
    /** Drops a minute at rest */
    readonly 'drips-at-rest': Quantity;
    /** Drops a minute under way */
    readonly 'drips-under-way': Quantity;
    /** Whether it runs hot */
    readonly 'runs-hot': Word<'yes' | 'no'>;
    /** Term that the maker sets for its rubber */
    readonly 'makers-term': Quantity;
    /** When its bellows or lips were fitted, where they are younger than the seal */
    readonly 'rubber-fitted': DateValue;
    /** Whether its rubber is cracked */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Packed gland. A stuffing box with greased packing; a few drops a minute under way keep it cool. */
export interface PackedGlandFacts extends ShaftSealFacts {
    /** Thread left to take up the packing */
    readonly 'adjustment-left': Quantity;
}

/** Face seal. A seal with a rubber bellows and two faces. */
export interface FaceSealFacts extends ShaftSealFacts {
}

/** Lip seal. A seal with rubber lips on the shaft. */
export interface LipSealFacts extends ShaftSealFacts {
}

/** Stern bearing. Carries the shaft at the propeller. */
export interface SternBearingFacts extends ComponentFacts {
    /** Clearance, measured */
    readonly 'clearance': Quantity;
    /** Diameter of the shaft in it */
    readonly 'shaft-diameter': Quantity;
    /** Limit that the maker sets */
    readonly 'makers-limit': Quantity;
    /** Shell that holds the rubber or wood */
    readonly 'shell': Word<'bronze' | 'brass' | 'composite' | 'stainless' | 'none'>;
    /** What the shaft runs on */
    readonly 'lining': Word<'rubber' | 'wood' | 'polymer' | 'white-metal' | 'bronze'>;
    /** Side on which it is worn */
    readonly 'worn-side': Word<'even' | 'port' | 'starboard' | 'top' | 'bottom'>;
}

/** Propeller. The propeller. */
export interface PropellerFacts extends ComponentFacts {
    /** Blades */
    readonly 'blades': Quantity;
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Pitch */
    readonly 'pitch': Quantity;
    /** Gap from tip to hull */
    readonly 'tip-gap': Quantity;
    /** Color of the bare metal when scraped */
    readonly 'scrape-color': Word<'yellow' | 'pink' | 'red-brown' | 'gray'>;
    /** Dings, bent or eroded blades */
    readonly 'damage': Text;
    /** Speed of the engine at the trial run, by an independent tachometer */
    readonly 'rotation': Quantity;
    /** Speed at that run; the mean, where only one is written */
    readonly 'speed': Quantity;
    /** Speed the opposite way at the same speed of the engine */
    readonly 'speed-against': Quantity;
    /** Which way it turns, seen from astern */
    readonly 'hand': Word<'right' | 'left'>;
}

/** Saildrive. A drive leg through the bottom. */
export interface SaildriveFacts extends ComponentFacts {
    /** Turns of the engine for one of the propeller */
    readonly 'ratio': Quantity;
    /** Term that the maker sets for its diaphragm */
    readonly 'makers-term': Quantity;
    /** Whether its diaphragm is cracked */
    readonly 'seal-cracked': Word<'yes' | 'no'>;
    /** When its diaphragm was fitted */
    readonly 'seal-fitted': DateValue;
    /** Deepest pit of its castings */
    readonly 'pit-depth': Quantity;
    /** Whether its oil is milky */
    readonly 'oil-milky': Word<'yes' | 'no'>;
    /** Paint on the leg */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'>;
    /** Whether a barrier coat lies under the paint */
    readonly 'barrier-coat': Word<'yes' | 'no'>;
}

/** Outdrive. A drive leg on the transom. */
export interface OutdriveFacts extends ComponentFacts {
    /** Turns of the engine for one of the propeller */
    readonly 'ratio': Quantity;
    /** Term that the maker sets for its bellows */
    readonly 'makers-term': Quantity;
    /** When its bellows were fitted */
    readonly 'bellows-fitted': DateValue;
    /** Deepest pit of its castings */
    readonly 'pit-depth': Quantity;
    /** Whether its oil is milky */
    readonly 'oil-milky': Word<'yes' | 'no'>;
    /** Paint on the leg */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'>;
    /** Whether a barrier coat lies under the paint */
    readonly 'barrier-coat': Word<'yes' | 'no'>;
    /** Whether a bellows is cracked */
    readonly 'bellows-cracked': Word<'yes' | 'no'>;
    /** Play at its end */
    readonly 'play': Quantity;
    /** Its trim and tilt */
    readonly 'trim': Word<'works' | 'slow' | 'stuck' | 'not-tried'>;
}

/** Outboard. An engine that hangs on the transom with its own leg. */
export interface OutboardFacts extends EngineFacts {
    /** Turns of the engine for one of the propeller */
    readonly 'ratio': Quantity;
    /** How it is mounted */
    readonly 'mounted': Word<'clamped' | 'bolted'>;
    /** Mass */
    readonly 'mass': Quantity;
    /** Deepest pit of its castings */
    readonly 'pit-depth': Quantity;
    /** Whether the oil of its leg is milky */
    readonly 'oil-milky': Word<'yes' | 'no'>;
    /** Paint on the leg */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'>;
}

/** Jet drive. A pump in the bottom that drives her by a jet. */
export interface JetDriveFacts extends ComponentFacts {
    /** Gap from impeller to wear ring */
    readonly 'wear-ring-gap': Quantity;
    /** Its reversing bucket */
    readonly 'bucket': Word<'works' | 'stiff' | 'stuck' | 'not-tried'>;
    /** Whether water comes in at it */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Pod drive. A steerable drive leg through the bottom. */
export interface PodFacts extends ComponentFacts {
    /** Turns of the engine for one of the propeller */
    readonly 'ratio': Quantity;
    /** Term that the maker sets for its hull seal */
    readonly 'makers-term': Quantity;
    /** Whether its hull seal is cracked */
    readonly 'seal-cracked': Word<'yes' | 'no'>;
    /** When its hull seal was fitted */
    readonly 'seal-fitted': DateValue;
    /** Deepest pit of its castings */
    readonly 'pit-depth': Quantity;
    /** Whether its oil is milky */
    readonly 'oil-milky': Word<'yes' | 'no'>;
    /** Paint on the leg */
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'>;
}

/** Steering. From wheel or tiller to rudder. */
export interface SteeringFacts extends ComponentFacts {
    /** Turns from lock to lock */
    readonly 'turns': Quantity;
    /** Play at the wheel */
    readonly 'play': Quantity;
    /** Emergency tiller */
    readonly 'emergency-tiller': Word<'fits' | 'does-not-fit' | 'none' | 'not-tried'>;
    /** How full its fluid stood */
    readonly 'fluid': Word<'full' | 'low' | 'empty' | 'not-seen'>;
    /** Pressure of its fluid, hard over */
    readonly 'pressure': Quantity;
    /** How the wheel moves the rudder */
    readonly 'drive': Word<'hydraulic' | 'cable' | 'rod' | 'tiller' | 'power'>;
    /** Whether fluid leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** Whether stops keep the rudder from going too far */
    readonly 'stops': Word<'yes' | 'no'>;
}

/** Reading. A table of readings. */
export interface ReadingFacts {
    /** What is measured; it decides the columns */
    readonly 'measures': Word<'moisture' | 'wood-moisture' | 'percussion' | 'thickness' | 'potential' | 'bonding' | 'compression' | 'temperature' | 'trial' | 'oil-sample' | 'battery' | 'charging' | 'voltage-drop' | 'insulation' | 'leakage' | 'polarity' | 'level' | 'freeboard' | 'play' | 'tension' | 'gas-test' | 'tube-pressure' | 'pressure' | 'contract' | 'handover' | 'other'>;
    /** Instrument */
    readonly 'instrument': Text;
    /** Serial of the instrument */
    readonly 'serial': Text;
    /** Range it is made for, as 0..100 or 0 mm..200 mm */
    readonly 'instrument-range': Quantity | DateValue;
    /** Calibration, test block or reference reading */
    readonly 'calibration': Text;
    /** True thickness of the test block */
    readonly 'block-original': Quantity;
    /** What the gauge read on it */
    readonly 'block-reading': Quantity;
    /** Who took the readings */
    readonly 'operator': Text;
    /** Surface, hours since lifting, air and water */
    readonly 'conditions': Text;
    /** Where they were taken */
    readonly 'place': Text;
    /** Date */
    readonly 'taken': DateValue;
    /** Time of day */
    readonly 'started': Quantity;
    /** Air */
    readonly 'air-temperature': Quantity;
    /** Water */
    readonly 'water-temperature': Quantity;
    /** Water she lay in */
    readonly 'water': Word<'salt' | 'brackish' | 'fresh'>;
    /** Scale of the readings */
    readonly 'scale': Text;
    /** Reading of the dry or sound reference, same meter and mode */
    readonly 'reference': Quantity;
    /** Depth the meter reads to */
    readonly 'mode': Word<'deep' | 'shallow'>;
    /** How long she had been out of the water */
    readonly 'hours-since-lift': Quantity;
    /** How long since she was washed */
    readonly 'hours-since-wash': Quantity;
    /** What lies behind the places read */
    readonly 'behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    /** Area of the panel sounded */
    readonly 'panel-area': Quantity;
    /** Where the original thickness comes from */
    readonly 'original-basis': Word<'plan' | 'thickest-reading' | 'assumed'>;
    /** Reference cell */
    readonly 'cell': Word<'silver-chloride' | 'copper-sulfate' | 'zinc'>;
    /** What the range is for */
    readonly 'gear': Word<'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood'>;
    /** How long she had lain there */
    readonly 'hours-lain': Quantity;
    /** Whether the leads were zeroed */
    readonly 'leads-zeroed': Word<'yes' | 'no'>;
    /** Test voltage */
    readonly 'test-voltage': Quantity;
    /** Whether electronics were disconnected */
    readonly 'electronics-disconnected': Word<'yes' | 'no'>;
    /** How long since the batteries were charged */
    readonly 'hours-since-charge': Quantity;
    /** Wind */
    readonly 'wind': Text;
    /** Sea and current */
    readonly 'sea': Text;
    /** Persons aboard */
    readonly 'persons': Quantity;
    /** How full the tanks were */
    readonly 'tanks': Quantity;
    /** Whether the tanks of both sides were equally full */
    readonly 'tanks-even': Word<'yes' | 'no'>;
    /** The columns, by their names here, or headings in quotes */
    readonly 'columns': Word | Text;
    /** In the surveyor's words */
    readonly 'remarks': Text;
}

/** Row of readings. One place, run or item of a table. */
export interface ReadingRowFacts {
    /** What else was seen there */
    readonly 'remark': Text;
}

/** Row of a moisture grid. Readings of one row, station by station, on the meter's own scale: never percent on laminate. */
export interface MoistureRowFacts extends ReadingRowFacts {
    /** Reading on the meter's own scale */
    readonly 'reading': Quantity | DateValue;
    /** What lies behind the places of this row */
    readonly 'behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
}

/** Row of moisture in wood. Moisture of one place in wood; percent is proper here. */
export interface WoodMoistureRowFacts extends ReadingRowFacts {
    /** Moisture */
    readonly 'moisture': Quantity;
    /** Depth of the pins */
    readonly 'depth': Quantity;
    /** How far a probe went in */
    readonly 'probe': Quantity;
    /** Wood */
    readonly 'species': MaterialValue;
    /** Whether the place lies under water */
    readonly 'immersed': Word<'yes' | 'no'>;
}

/** Row of a percussion map. What sounding told at one place. */
export interface PercussionRowFacts extends ReadingRowFacts {
    /** What it sounded like */
    readonly 'sound': Word<'clear' | 'dull' | 'hollow'>;
    /** Area that sounded so */
    readonly 'area': Quantity;
    /** Area of the panel it lies in */
    readonly 'panel': Quantity;
    /** What bears on it */
    readonly 'load-point': Word<'mast' | 'chainplate' | 'engine' | 'none'>;
}

/** Row of gauging. Gauging of one place: the original, the readings, and the deepest pit kept apart. */
export interface ThicknessRowFacts extends ReadingRowFacts {
    /** Original thickness */
    readonly 'original': Quantity;
    /** Gauge reading */
    readonly 'reading': Quantity;
    /** Deepest pit, written where columns names it */
    readonly 'pit': Quantity;
}

/** Row of potentials. Potential of one fitting against the reference cell. */
export interface PotentialRowFacts extends ReadingRowFacts {
    /** The part read */
    readonly 'part': ComponentRef;
    /** Reading */
    readonly 'potential': Quantity;
    /** With the DC main switch on */
    readonly 'dc-on': Quantity;
    /** With the DC main switch off */
    readonly 'dc-off': Quantity;
    /** With the shore lead in */
    readonly 'shore-in': Quantity;
    /** With the shore lead out */
    readonly 'shore-out': Quantity;
}

/** Row of bonding. Resistance of one fitting to the bonding bus. */
export interface BondingRowFacts extends ReadingRowFacts {
    /** The part read */
    readonly 'part': ComponentRef;
    /** To the bus, leads zeroed */
    readonly 'resistance': Quantity;
}

/** Row of compression. Compression of one cylinder. */
export interface CompressionRowFacts extends ReadingRowFacts {
    /** Compression */
    readonly 'pressure': Quantity;
    /** Loss at the leak-down test */
    readonly 'leak': Quantity;
    /** Cold or hot */
    readonly 'state': Word<'cold' | 'hot'>;
}

/** Row of temperatures. Temperature of one point under load. */
export interface TemperatureRowFacts extends ReadingRowFacts {
    /** The part it was taken on */
    readonly 'part': ComponentRef;
    /** Engine speed */
    readonly 'rotation': Quantity;
    /** Temperature */
    readonly 'temperature': Quantity;
}

/** Row of a trial. One run of the trial; a run and its opposite are averaged. */
export interface TrialRowFacts extends ReadingRowFacts {
    /** The engine */
    readonly 'engine': ComponentRef;
    /** Engine speed by an independent tachometer */
    readonly 'rotation': Quantity;
    /** Engine speed shown at the helm */
    readonly 'rotation-shown': Quantity;
    /** Speed, or speed one way */
    readonly 'speed': Quantity;
    /** Speed the other way */
    readonly 'speed-against': Quantity;
    /** Coolant */
    readonly 'coolant': Quantity;
    /** Oil pressure */
    readonly 'oil-pressure': Quantity;
    /** Boost */
    readonly 'boost': Quantity;
    /** Exhaust */
    readonly 'exhaust': Quantity;
    /** Smoke */
    readonly 'smoke': Word<'none' | 'white' | 'blue' | 'black' | 'gray'>;
    /** Vibration */
    readonly 'vibration': Word<'none' | 'slight' | 'heavy'>;
    /** Noise */
    readonly 'noise': Text;
}

/** Row of oil samples. One sample with its chain: hours on the engine and on the oil, laboratory, date; the result may follow. */
export interface OilSampleRowFacts extends ReadingRowFacts {
    /** Engine or gearbox */
    readonly 'unit': ComponentRef;
    /** Number of the sample */
    readonly 'sample': Text;
    /** Hours on the engine */
    readonly 'engine-hours': Quantity;
    /** Hours on the oil */
    readonly 'oil-hours': Quantity;
    /** When it was drawn */
    readonly 'drawn': DateValue;
    /** Laboratory */
    readonly 'laboratory': Text;
    /** What it found */
    readonly 'result': Text;
}

/** Row of batteries. One battery of a bank. */
export interface BatteryRowFacts extends ReadingRowFacts {
    /** The battery */
    readonly 'unit': ComponentRef;
    /** At rest */
    readonly 'rest': Quantity;
    /** Rated cold-cranking current */
    readonly 'rated': Quantity;
    /** Measured cold-cranking current */
    readonly 'measured': Quantity;
    /** Rated capacity */
    readonly 'rated-capacity': Quantity;
    /** Measured capacity */
    readonly 'measured-capacity': Quantity;
    /** Date code */
    readonly 'made': DateValue;
}

/** Row of charging. One source of charge. */
export interface ChargingRowFacts extends ReadingRowFacts {
    /** The charger, alternator or panel */
    readonly 'source': ComponentRef;
    /** At the battery */
    readonly 'voltage': Quantity;
    /** Current */
    readonly 'current': Quantity;
    /** Engine speed */
    readonly 'rotation': Quantity;
}

/** Row of voltage drop. One circuit under load. */
export interface VoltageDropRowFacts extends ReadingRowFacts {
    /** The wire */
    readonly 'conductor': ComponentRef;
    /** At the source */
    readonly 'source': Quantity;
    /** At the load */
    readonly 'load': Quantity;
    /** Load */
    readonly 'current': Quantity;
}

/** Row of insulation. Insulation of one circuit to earth. */
export interface InsulationRowFacts extends ReadingRowFacts {
    /** The circuit */
    readonly 'circuit': ComponentRef;
    /** To earth */
    readonly 'resistance': Quantity;
}

/** Row of leakage. Current by a clamp on the whole shore cord, by the loads that are on. */
export interface LeakageRowFacts extends ReadingRowFacts {
    /** The cord */
    readonly 'cord': ComponentRef;
    /** Leakage */
    readonly 'current': Quantity;
    /** Loads that are on */
    readonly 'loads': Text;
}

/** Row of outlets. Polarity and earth of one outlet, and how its leakage device trips. */
export interface PolarityRowFacts extends ReadingRowFacts {
    /** The outlet */
    readonly 'outlet': ComponentRef;
    /** Polarity */
    readonly 'polarity': Word<'right' | 'reversed' | 'not-tried'>;
    /** To earth */
    readonly 'earth': Quantity;
    /** Current it tripped at */
    readonly 'trip-current': Quantity;
    /** Time it took */
    readonly 'trip-time': Quantity;
}

/** Row of levels. Level of one tank at the start and end of the day. */
export interface LevelRowFacts extends ReadingRowFacts {
    /** The tank */
    readonly 'tank': ComponentRef;
    /** At the start */
    readonly 'at-start': Quantity;
    /** At the end */
    readonly 'at-end': Quantity;
    /** How it is known */
    readonly 'basis': Word<'seen' | 'stated' | 'measured' | 'operated'>;
}

/** Row of freeboards. Freeboard at one station, both sides. */
export interface FreeboardRowFacts extends ReadingRowFacts {
    /** Port */
    readonly 'port': Quantity;
    /** Starboard */
    readonly 'starboard': Quantity;
    /** Breadth of the hull there */
    readonly 'width': Quantity;
}

/** Row of play. Play of one bearing. */
export interface PlayRowFacts extends ReadingRowFacts {
    /** The bearing */
    readonly 'part': ComponentRef;
    /** Radial clearance */
    readonly 'radial': Quantity;
    /** Axial play, written where columns names it */
    readonly 'axial': Quantity;
    /** Diameter of the shaft or stock, written where columns names it */
    readonly 'shaft': Quantity;
}

/** Row of rig tension. Tension of one wire. */
export interface TensionRowFacts extends ReadingRowFacts {
    /** The wire */
    readonly 'wire': ComponentRef;
    /** Diameter */
    readonly 'diameter': Quantity;
    /** Reading of the gauge */
    readonly 'gauge': Quantity;
    /** Share of its breaking load */
    readonly 'tension': Quantity;
}

/** Row of a gas test. One test of tightness. */
export interface GasTestRowFacts extends ReadingRowFacts {
    /** What was tested */
    readonly 'system': ComponentRef;
    /** Pressure at the start */
    readonly 'start': Quantity;
    /** Pressure at the end */
    readonly 'end': Quantity;
    /** How long it was watched */
    readonly 'duration': Quantity;
    /** What was open and what was shut */
    readonly 'valves': Text;
}

/** Row of tube pressures. One chamber. */
export interface TubePressureRowFacts extends ReadingRowFacts {
    /** At the start */
    readonly 'start': Quantity;
    /** At the end */
    readonly 'end': Quantity;
    /** How long it was watched */
    readonly 'duration': Quantity;
    /** Air at the start */
    readonly 'air-start': Quantity;
    /** Air at the end */
    readonly 'air-end': Quantity;
}

/** Row of pressures. One pressure, where nothing more telling fits. */
export interface PressureRowFacts extends ReadingRowFacts {
    /** Pressure */
    readonly 'pressure': Quantity;
}

/** Row of a contract list. One matter of the contract of a new vessel against what was found aboard. */
export interface ContractRowFacts extends ReadingRowFacts {
    /** What the contract says */
    readonly 'contract': Text;
    /** What was found */
    readonly 'found': Text;
    /** Whether the two agree */
    readonly 'agrees': Word<'yes' | 'no' | 'in-part' | 'not-yet' | 'not-seen'>;
}

/** Row of what is handed over. One paper, key or spare that comes with a new vessel. */
export interface HandoverRowFacts extends ReadingRowFacts {
    /** Whether it came with her */
    readonly 'state': Word<'handed-over' | 'to-follow' | 'missing' | 'not-due'>;
}

/** Outline. The sections of a report of a kind of survey, in their order. A section that is not named is left out, except what a reader must be told. The outline any-kind is for a survey without a kind. */
export interface OutlineFacts {
    /** Sections in their order */
    readonly 'sections': Word<'summary' | 'earlier' | 'changes' | 'scope' | 'limits' | 'definitions' | 'standards' | 'particulars' | 'damage' | 'contract' | 'systems' | 'measurements' | 'trial' | 'findings' | 'accepted' | 'recommendations' | 'value' | 'assumptions' | 'statement' | 'photos' | 'documents'>;
    /** Why it is so ordered */
    readonly 'remarks': Text;
}

/** Wording. The standing words of a report. A firm's own, set in its house file, stand in the place of these, one by one. Words that lead into a section may be set empty; cautions, what was not done, and statements may be put otherwise but not left out. Facts may stand in braces, as {vessel.name}. */
export interface WordingFacts {
    /** Leads into the limits */
    readonly 'limits-lead': Text;
    /** Leads into the words used in the report */
    readonly 'definitions-lead': Text;
    /** Leads into the standards cited */
    readonly 'standards-lead': Text;
    /** Leads into the comparison with the contract */
    readonly 'contract-lead': Text;
    /** Leads into the trial */
    readonly 'trial-lead': Text;
    /** Leads into the findings */
    readonly 'findings-lead': Text;
    /** Leads into what is accepted as it stands */
    readonly 'accepted-lead': Text;
    /** Leads into the recommendations in one list */
    readonly 'recommendations-lead': Text;
    /** Leads into the valuation */
    readonly 'value-lead': Text;
    /** Leads into how figures were computed */
    readonly 'assumptions-lead': Text;
    /** Leads into the papers seen */
    readonly 'documents-lead': Text;
    /** Leads into the photographs */
    readonly 'photos-lead': Text;
    /** What the value means, where a valuation does not record it; there is none unless the firm sets it */
    readonly 'definition-of-value': Text;
    /** Stands at the head of the damage, and in the summary of a damage survey */
    readonly 'without-prejudice': Text;
    /** Stands first and last in a survey of a part only */
    readonly 'part-only': Text;
    /** Caution of the day; stands in every report */
    readonly 'caution-day': Text;
    /** Caution of what could be reached; stands in every report */
    readonly 'caution-reach': Text;
    /** Caution of what was told; stands where a fact is recorded as stated */
    readonly 'caution-stated': Text;
    /** Caution of engines; stands where an engine or generator is recorded */
    readonly 'caution-engines': Text;
    /** Caution of wiring; stands where electrical gear is recorded */
    readonly 'caution-wiring': Text;
    /** Caution of tanks; stands where a tank is recorded */
    readonly 'caution-tanks': Text;
    /** Caution of moisture readings; stands where there are any */
    readonly 'caution-moisture': Text;
    /** Caution of sounding; stands where a percussion map is recorded */
    readonly 'caution-sounding': Text;
    /** Caution of gauging; stands where thickness was gauged */
    readonly 'caution-gauging': Text;
    /** Caution of potentials; stands where they were read */
    readonly 'caution-potentials': Text;
    /** Caution of the mast; stands where one is recorded that was neither climbed nor unstepped */
    readonly 'caution-mast': Text;
    /** Caution of sails; stands where one is recorded that was not hoisted */
    readonly 'caution-sails': Text;
    /** Caution of what was not computed; stands in every report */
    readonly 'caution-computed': Text;
    /** Caution of standards; stands in every report */
    readonly 'caution-standards': Text;
    /** Caution of the work; stands in every report */
    readonly 'caution-work': Text;
    /** Caution of value; stands where a value is given */
    readonly 'caution-value': Text;
    /** Caution of title; stands in every report */
    readonly 'caution-title': Text;
    /** Caution of who may rely on the report; stands in every report */
    readonly 'caution-reliance': Text;
    /** Says that no trial is recorded, where the kind of survey has one */
    readonly 'no-trial': Text;
    /** Says that she was not seen out of the water, where the kind of survey asks for it */
    readonly 'not-hauled': Text;
    /** Says that she was not seen afloat, where the kind of survey asks for it */
    readonly 'not-afloat': Text;
    /** Says that no series of measurements is recorded, where the kind of survey has some */
    readonly 'no-measurements': Text;
    /** Says that no value is given, where the kind of survey gives one */
    readonly 'no-value': Text;
    /** Says that the contract was not compared, at a delivery */
    readonly 'no-contract': Text;
    /** Leads into what became of the earlier recommendations */
    readonly 'earlier-lead': Text;
    /** Stands at the foot of the yard's work list */
    readonly 'work-list-limits': Text;
    /** Stands at the foot of the letter on urgent matters */
    readonly 'urgent-letter-limits': Text;
    /** Stands at the foot of a letter of compliance */
    readonly 'compliance-limits': Text;
    /** The statement that is signed */
    readonly 'statement': Text;
    /** Follows it where an attendance is recorded */
    readonly 'statement-attended': Text;
    /** Follows it where none is */
    readonly 'statement-not-attended': Text;
    /** Follows it at a damage survey */
    readonly 'statement-damage': Text;
    /** Follows it where a value is given: the certification of the value */
    readonly 'statement-value': Text;
}

/** Spar. A mast, boom or other spar. */
export interface SparFacts extends ComponentFacts {
    /** How it is stepped */
    readonly 'stepped': Word<'keel' | 'deck' | 'unstepped'>;
    /** Whether a crack was seen */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** Corrosion seen */
    readonly 'corrosion': Text;
    /** Whether decay was found, on wood */
    readonly 'decayed': Word<'yes' | 'no'>;
}

/** Mast. A mast. */
export interface MastFacts extends SparFacts {
    /** How it was inspected */
    readonly 'inspected': Word<'from-deck' | 'climbed' | 'unstepped'>;
}

/** Boom. A boom. */
export interface BoomFacts extends SparFacts {
}

/** Spreader. Holds a shroud away from the mast. */
export interface SpreaderFacts extends Omit<SparFacts, 'cracked'> {
    /** Whether a crack was seen */
    readonly 'cracked': Word<'yes' | 'no'>;
    /** Whether it halves the angle of the shroud */
    readonly 'angle-even': Word<'yes' | 'no'>;
}

/** Standing rigging wire. A shroud or stay. */
export interface WireFacts extends ComponentFacts {
    /** Diameter */
    readonly 'diameter': Quantity;
    /** How it is built */
    readonly 'build': Word<'one-by-nineteen' | 'seven-by-seven' | 'seven-by-nineteen' | 'compacted' | 'rod' | 'synthetic' | 'galvanized'>;
    /** Broken strands */
    readonly 'broken-strands': Quantity;
    /** State of its terminals */
    readonly 'terminal': Word<'sound' | 'cracked' | 'bent' | 'rust-weeping'>;
    /** When a rigger last reported on it */
    readonly 'rigger-report': DateValue;
    /** Age at which the insurer asks for a report or renewal */
    readonly 'insurers-term': Quantity;
    /** Whether rust comes from within its lay */
    readonly 'rust-streak': Word<'yes' | 'no'>;
    /** Tension as a share of its breaking load */
    readonly 'tension': Quantity;
}

/** Shroud. A wire to the side. */
export interface ShroudFacts extends WireFacts {
}

/** Stay. A wire fore or aft. */
export interface StayFacts extends WireFacts {
}

/** Wire terminal. The end fitting of a wire. */
export interface TerminalFacts extends ComponentFacts {
    /** How it is made */
    readonly 'build': Word<'swaged' | 'mechanical' | 'spliced' | 'other'>;
    /** What was seen of it */
    readonly 'state': Word<'sound' | 'cracked' | 'bent' | 'rust-weeping'>;
    /** The wire it ends */
    readonly 'of': ComponentRef;
}

/** Chainplate. Ties a shroud or stay to the hull. */
export interface ChainplateFacts extends ComponentFacts {
    /** When it was last drawn */
    readonly 'drawn': DateValue;
    /** Whether it moves under load */
    readonly 'moves': Word<'yes' | 'no'>;
    /** Whether water comes in at it */
    readonly 'weeps': Word<'yes' | 'no'>;
    /** Moisture reading of the deck core beside it, on the meter's own scale */
    readonly 'core-reading': Quantity;
    /** Reading of a place known dry, same meter and mode */
    readonly 'dry-reference': Quantity;
    /** Whether all of it could be seen */
    readonly 'seen-whole': Word<'yes' | 'no'>;
}

/** Turnbuckle. Tensions a wire. */
export interface TurnbuckleFacts extends ComponentFacts {
    /** Whether it is pinned */
    readonly 'pinned': Word<'yes' | 'no'>;
    /** Whether a crack was seen */
    readonly 'cracked': Word<'yes' | 'no'>;
}

/** Halyard. Hoists a sail. */
export interface HalyardFacts extends ComponentFacts {
    /** Whether it is chafed */
    readonly 'chafed': Word<'yes' | 'no'>;
    /** Diameter */
    readonly 'diameter': Quantity;
}

/** Furler. Rolls a headsail. */
export interface FurlerFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Sail. A sail. */
export interface SailFacts extends ComponentFacts {
    /** Whether it was hoisted for the survey */
    readonly 'hoisted': Word<'yes' | 'no'>;
    /** Area */
    readonly 'area': Quantity;
    /** Which sail */
    readonly 'sail-kind': Text;
    /** Its stitching */
    readonly 'stitching': Word<'sound' | 'worn' | 'parted' | 'not-seen'>;
}

/** Winch. A winch. */
export interface WinchFacts extends ComponentFacts {
    /** Whether it works */
    readonly 'works': Word<'yes' | 'no' | 'not-tried'>;
}

/** Tank. A tank. */
export interface TankFacts extends ApplianceFacts {
    /** Capacity */
    readonly 'capacity': Quantity;
    /** How far it moves when pushed */
    readonly 'moves': Quantity;
    /** Whether its bottom could be seen */
    readonly 'bottom-seen': Word<'yes' | 'no'>;
    /** Pressure it was tested with */
    readonly 'tested': Quantity;
    /** Test pressure on its label */
    readonly 'label-pressure': Quantity;
    /** Whether it held the pressure it was tested with */
    readonly 'held': Word<'yes' | 'no'>;
    /** Whether it leaks */
    readonly 'leaks': Word<'yes' | 'no'>;
    /** How full it stood at the survey */
    readonly 'filled': Quantity;
    /** How it is built in */
    readonly 'build': Word<'fixed' | 'portable' | 'integral' | 'bladder'>;
    /** What it rests on and what holds it */
    readonly 'supports': Text;
    /** Whether foam is all that holds it */
    readonly 'foamed-in': Word<'yes' | 'no'>;
    /** Whether it rests on something that holds water */
    readonly 'wet-pad': Word<'yes' | 'no'>;
}

/** Fuel tank. Holds fuel. */
export interface FuelTankFacts extends TankFacts {
    /** Fuel */
    readonly 'fuel': Word<'diesel' | 'gasoline'>;
    /** Whether it carries its label */
    readonly 'labeled': Word<'yes' | 'no'>;
    /** Whether water stands on its top */
    readonly 'water-on-top': Word<'yes' | 'no'>;
    /** From fill to tank to ground */
    readonly 'bond-resistance': Quantity;
    /** Whether fill, tank and ground are joined by a wire */
    readonly 'fill-bond': Word<'yes' | 'no'>;
    /** Whether its top lies below the inlet of carburetor or injection */
    readonly 'top-below-engine-inlet': Word<'yes' | 'no'>;
    /** Battery that stands straight above or below it */
    readonly 'in-line-with-battery': ComponentRef;
}

/** Water tank. Holds fresh water. */
export interface WaterTankFacts extends TankFacts {
}

/** Water heater. Heats fresh water. */
export interface WaterHeaterFacts extends ApplianceFacts {
    /** Its relief valve */
    readonly 'relief-valve': Word<'works' | 'seized' | 'none' | 'not-tried'>;
    /** Capacity */
    readonly 'capacity': Quantity;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Fuel filter. Filters fuel and parts it from water. */
export interface FuelFilterFacts extends FittingFacts {
    /** What its bowl is */
    readonly 'bowl': Word<'metal' | 'plastic' | 'heat-shielded'>;
    /** Battery that stands straight above or below it */
    readonly 'in-line-with-battery': ComponentRef;
    /** Fire-test mark as read */
    readonly 'mark': Text;
    /** Whether it lies below the top of the tank */
    readonly 'below-tank-top': Word<'yes' | 'no'>;
}

/** Fuel fill. Where fuel is filled in. */
export interface FuelFillFacts extends FittingFacts {
    /** From it to ground */
    readonly 'bond-resistance': Quantity;
    /** Whether spilt fuel runs into the boat */
    readonly 'overflow-aboard': Word<'yes' | 'no'>;
}

/** Fuel vent. Lets air out of the tank. */
export interface FuelVentFacts extends FittingFacts {
    /** Whether it has a flame screen */
    readonly 'flame-screen': Word<'yes' | 'no'>;
}

/** Fuel line. A metal line from tank to engine. */
export interface FuelLineFacts extends PipeFacts {
    /** Whether any of it lies below the top of the tank */
    readonly 'below-tank-top': Word<'yes' | 'no'>;
    /** Whether it is held and guarded against chafe */
    readonly 'supported': Word<'yes' | 'no'>;
}

/** Fuel pump. Lifts fuel from the tank to the carburetor or injection. */
export interface FuelPumpFacts extends Omit<PumpFacts, 'rated-flow' | 'real-flow'> {
    /** Rating on it */
    readonly 'rated-flow': Quantity;
    /** Flow as measured */
    readonly 'real-flow': Quantity;
    /** How it is driven */
    readonly 'drive': Word<'engine' | 'electric' | 'manual'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
    /** Whether it lies below the top of the tank */
    readonly 'below-tank-top': Word<'yes' | 'no'>;
}

/** Carburetor. Mixes gasoline with air at the engine. */
export interface CarburetorFacts extends FittingFacts {
    /** Whether a flame arrester is fitted to it */
    readonly 'flame-arrester': Word<'yes' | 'no'>;
    /** Whether it leaks when the engine is stopped */
    readonly 'leaks': Word<'yes' | 'no'>;
}

/** Fuel hose. A hose for fuel; its marking tells liquid or vapor and whether it stood a fire test. */
export interface FuelHoseFacts extends HoseFacts {
    /** Whether any of it lies below the top of the tank */
    readonly 'below-tank-top': Word<'yes' | 'no'>;
}

/** Fuel valve. Shuts off the fuel. */
export interface FuelValveFacts extends ValveFacts {
    /** Whether it sits at the tank */
    readonly 'at-tank': Word<'yes' | 'no'>;
    /** Whether it sits at the inlet of the engine */
    readonly 'at-engine': Word<'yes' | 'no'>;
    /** How it is worked */
    readonly 'drive': Word<'manual' | 'electric'>;
    /** Whether it can be worked from outside the space it is in */
    readonly 'remote': Word<'yes' | 'no'>;
    /** Battery that stands straight above or below it */
    readonly 'in-line-with-battery': ComponentRef;
}

/** Antisiphon device. Stops fuel from siphoning out of the tank when a line breaks. */
export interface AntiSiphonDeviceFacts extends FittingFacts {
    /** How it works */
    readonly 'drive': Word<'spring' | 'electric'>;
    /** Whether it sits at the tank */
    readonly 'at-tank': Word<'yes' | 'no'>;
}

/** Fresh-water pump. Puts fresh water under pressure. */
export interface WaterPumpFacts extends PumpFacts {
    /** Pressure it stops at */
    readonly 'pressure': Quantity;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Shower sump. Gathers shower water and pumps it over the side. */
export interface ShowerSumpFacts extends ApplianceFacts {
    /** Whether its discharge rises in a loop */
    readonly 'looped': Word<'yes' | 'no'>;
    /** Whether it is marked as ignition-protected */
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    /** Whether it stands in a space with gasoline */
    readonly 'ignition-space': Word<'yes' | 'no'>;
    /** What parts it from the gasoline: a bulkhead, a deck or enclosure, or 2 ft of open air */
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
}

/** Yardsticks. Limits where practice differs. A firm's own, set in its house file, stand in the place of these. */
export interface YardsticksFacts {
    /** Range of potential, fiberglass hull with bronze and stainless gear, against silver chloride */
    readonly 'potential-fiberglass-bronze': Quantity;
    /** Range of potential, fiberglass hull with an aluminum drive */
    readonly 'potential-fiberglass-aluminum-drive': Quantity;
    /** Range of potential, aluminum hull */
    readonly 'potential-aluminum': Quantity;
    /** Range of potential, steel hull */
    readonly 'potential-steel': Quantity;
    /** Range of potential, wooden hull */
    readonly 'potential-wood': Quantity;
    /** Clearance of a stern bearing at which it is worn, as a share of the shaft */
    readonly 'bearing-wear': Quantity;
    /** Clearance of a stern bearing at which it is worn, whatever the shaft */
    readonly 'bearing-wear-most': Quantity;
    /** Clearance of a rudder bearing at which it is worn, as a share of the stock */
    readonly 'rudder-wear': Quantity;
    /** Play at the tip of the rudder that is too much */
    readonly 'rudder-tip-play': Quantity;
    /** Least height of the water injection above the loaded waterline without a vented loop */
    readonly 'riser-height': Quantity;
    /** Age at which a hose is old */
    readonly 'hose-life': Quantity;
    /** Age at which an exhaust hose is old */
    readonly 'exhaust-hose-life': Quantity;
    /** Age at which a gas hose is old */
    readonly 'gas-hose-life': Quantity;
    /** Age at which a gas regulator is old */
    readonly 'gas-regulator-life': Quantity;
    /** Years after which a gas cylinder is requalified, where no date is marked on it */
    readonly 'gas-cylinder-term': Quantity;
    /** Least bore of the vent of a gas locker */
    readonly 'gas-vent-bore': Quantity;
    /** Least distance from the vent of a gas locker to an opening into the hull */
    readonly 'gas-vent-gap': Quantity;
    /** Age from which a metal fuel tank whose bottom was not seen is doubtful */
    readonly 'metal-tank-life': Quantity;
    /** Starts of a bilge pump a day, as she lies, that are too many */
    readonly 'pump-starts': Quantity;
    /** Age at which the rubber of a shaft seal is due */
    readonly 'shaft-bellows-life': Quantity;
    /** Age at which the bellows of an outdrive are due */
    readonly 'outdrive-bellows-life': Quantity;
    /** Age at which the diaphragm of a saildrive is due */
    readonly 'saildrive-seal-life': Quantity;
    /** Age at which wire rigging is old without a rigger's report */
    readonly 'wire-rigging-life': Quantity;
    /** Age at which rod rigging is old without a rigger's report */
    readonly 'rod-rigging-life': Quantity;
    /** Wastage of plating that is watched */
    readonly 'plate-watch': Quantity;
    /** Wastage of plating whose renewal is planned */
    readonly 'plate-plan': Quantity;
    /** The same on a lightly built craft */
    readonly 'plate-plan-light': Quantity;
    /** Wastage of plating that is renewed */
    readonly 'plate-renew': Quantity;
    /** Depth of a lone pit that is repaired, as a share of the original thickness */
    readonly 'lone-pit': Quantity;
    /** Reading over the dry reference of the same meter from which a contrast is told */
    readonly 'moisture-ratio': Quantity;
    /** Whether a second clamp is advised below the waterline, where the tail has room */
    readonly 'second-clamp-below-waterline': Word<'advise' | 'ignore'>;
    /** What a bilge pump moves of its rating, where its curve is not known */
    readonly 'pump-share': Quantity;
    /** Share of glycol under which a coolant is too thin, where the engine's maker says nothing */
    readonly 'glycol-least': Quantity;
    /** Share of glycol under which advice is given */
    readonly 'glycol-working': Quantity;
    /** Share of glycol over which a coolant is too thick, where the engine's maker says nothing */
    readonly 'glycol-most': Quantity;
    /** Discharge coefficient of an opening */
    readonly 'flow-coefficient': Quantity;
    /** How far a shut valve counts as closing an opening that is not in use */
    readonly 'shut-valve-on-unused': Word<'closed-if-capped' | 'never-closed' | 'closed'>;
    /** Steady load on a shore inlet over which load is to be shed, as a share of its rating */
    readonly 'steady-shore-load': Quantity;
    /** Measured capacity or cranking current under which a battery is weak, as a share of its rating */
    readonly 'battery-left': Quantity;
    /** Absorption voltage of a flooded battery of 12 V, where its maker says nothing */
    readonly 'charge-flooded': Quantity;
    /** Highest charging voltage of a gel battery of 12 V, where its maker says nothing */
    readonly 'charge-gel-most': Quantity;
    /** Share of a lead battery that may be used */
    readonly 'usable-lead': Quantity;
    /** Share of a lithium battery that may be used */
    readonly 'usable-lithium': Quantity;
    /** How long a bank is to run the bilge pump with the shore power gone */
    readonly 'pump-endurance': Quantity;
    /** Share of findings in the four most urgent words from which urgency is inflated */
    readonly 'urgent-share': Quantity;
    /** All adjustments of a comparable, signs left out, over which it is weak, as a share of its price */
    readonly 'gross-adjustment': Quantity;
    /** The same with their signs */
    readonly 'net-adjustment': Quantity;
    /** Age of a sale at which it is old */
    readonly 'sale-age': Quantity;
    /** Fewest comparables that an opinion of value rests on */
    readonly 'comparables-least': Quantity;
    /** Pressure lost by an air tube over its test, temperature taken out, from which it leaks, as a share of the pressure at the start */
    readonly 'tube-fall': Quantity;
    /** Spread of the adjusted prices, as a share of their mean, over which it is explained */
    readonly 'comparables-spread': Quantity;
}

/** The facts of each kind, by its id. */
export interface KindFacts {
    readonly 'component': ComponentFacts;
    readonly 'fitting': FittingFacts;
    readonly 'appliance': ApplianceFacts;
    readonly 'pump': PumpFacts;
    readonly 'bilge-pump': BilgePumpFacts;
    readonly 'manual-bilge-pump': ManualBilgePumpFacts;
    readonly 'float-switch': FloatSwitchFacts;
    readonly 'bilge-alarm': BilgeAlarmFacts;
    readonly 'coverage': CoverageFacts;
    readonly 'deck': DeckFacts;
    readonly 'hatch': HatchFacts;
    readonly 'portlight': PortlightFacts;
    readonly 'cockpit': CockpitFacts;
    readonly 'stanchion': StanchionFacts;
    readonly 'lifeline': LifelineFacts;
    readonly 'guardrail': GuardrailFacts;
    readonly 'ladder': LadderFacts;
    readonly 'swim-platform': SwimPlatformFacts;
    readonly 'anchor': AnchorFacts;
    readonly 'chain': ChainFacts;
    readonly 'rode': RodeFacts;
    readonly 'windlass': WindlassFacts;
    readonly 'bow-roller': BowRollerFacts;
    readonly 'cleat': CleatFacts;
    readonly 'davit': DavitFacts;
    readonly 'crane': CraneFacts;
    readonly 'tow-gear': TowGearFacts;
    readonly 'tender': TenderFacts;
    readonly 'inflatable-tube': InflatableTubeFacts;
    readonly 'trailer': TrailerFacts;
    readonly 'battery': BatteryFacts;
    readonly 'battery-switch': BatterySwitchFacts;
    readonly 'fuse': FuseFacts;
    readonly 'breaker': BreakerFacts;
    readonly 'main-breaker': MainBreakerFacts;
    readonly 'conductor': ConductorFacts;
    readonly 'panel': PanelFacts;
    readonly 'charger': ChargerFacts;
    readonly 'alternator': AlternatorFacts;
    readonly 'inverter': InverterFacts;
    readonly 'solar-panel': SolarPanelFacts;
    readonly 'shore-inlet': ShoreInletFacts;
    readonly 'shore-cord': ShoreCordFacts;
    readonly 'leakage-breaker': LeakageBreakerFacts;
    readonly 'outlet': OutletFacts;
    readonly 'galvanic-isolator': GalvanicIsolatorFacts;
    readonly 'transformer': TransformerFacts;
    readonly 'engine': EngineFacts;
    readonly 'main-engine': MainEngineFacts;
    readonly 'generator': GeneratorFacts;
    readonly 'gearbox': GearboxFacts;
    readonly 'engine-mount': EngineMountFacts;
    readonly 'coolant': CoolantFacts;
    readonly 'raw-water-pump': RawWaterPumpFacts;
    readonly 'heat-exchanger': HeatExchangerFacts;
    readonly 'keel-cooler': KeelCoolerFacts;
    readonly 'exhaust-riser': ExhaustRiserFacts;
    readonly 'hose': HoseFacts;
    readonly 'exhaust-hose': ExhaustHoseFacts;
    readonly 'muffler': MufflerFacts;
    readonly 'turbo': TurboFacts;
    readonly 'blower': BlowerFacts;
    readonly 'vent-duct': VentDuctFacts;
    readonly 'machinery-space': MachinerySpaceFacts;
    readonly 'electrical-part': ElectricalPartFacts;
    readonly 'cowl': CowlFacts;
    readonly 'pipe': PipeFacts;
    readonly 'exhaust-pipe': ExhaustPipeFacts;
    readonly 'extinguisher': ExtinguisherFacts;
    readonly 'fixed-extinguisher': FixedExtinguisherFacts;
    readonly 'fire-blanket': FireBlanketFacts;
    readonly 'smoke-alarm': SmokeAlarmFacts;
    readonly 'co-alarm': CoAlarmFacts;
    readonly 'gas-alarm': GasAlarmFacts;
    readonly 'escape': EscapeFacts;
    readonly 'lifejacket': LifejacketFacts;
    readonly 'throwable': ThrowableFacts;
    readonly 'liferaft': LiferaftFacts;
    readonly 'hydrostatic-release': HydrostaticReleaseFacts;
    readonly 'distress-signal': DistressSignalFacts;
    readonly 'beacon': BeaconFacts;
    readonly 'harness': HarnessFacts;
    readonly 'first-aid': FirstAidFacts;
    readonly 'navigation-light': NavigationLightFacts;
    readonly 'sound-device': SoundDeviceFacts;
    readonly 'compass': CompassFacts;
    readonly 'vhf': VhfFacts;
    readonly 'instrument': InstrumentFacts;
    readonly 'placard': PlacardFacts;
    readonly 'radar': RadarFacts;
    readonly 'ais': AisFacts;
    readonly 'plotter': PlotterFacts;
    readonly 'depth-sounder': DepthSounderFacts;
    readonly 'certificate': CertificateFacts;
    readonly 'radio-license': RadioLicenseFacts;
    readonly 'insurance': InsuranceFacts;
    readonly 'hull-number': HullNumberFacts;
    readonly 'official-number': OfficialNumberFacts;
    readonly 'capacity-label': CapacityLabelFacts;
    readonly 'marking': MarkingFacts;
    readonly 'manual': ManualFacts;
    readonly 'survey': SurveyFacts;
    readonly 'vessel': VesselFacts;
    readonly 'run': RunFacts;
    readonly 'joint': JointFacts;
    readonly 'contact': ContactFacts;
    readonly 'finding': FindingFacts;
    readonly 'valuation': ValuationFacts;
    readonly 'comparable': ComparableFacts;
    readonly 'person': PersonFacts;
    readonly 'firm': FirmFacts;
    readonly 'material': MaterialFacts;
    readonly 'standard': StandardFacts;
    readonly 'gas-locker': GasLockerFacts;
    readonly 'gas-cylinder': GasCylinderFacts;
    readonly 'regulator': RegulatorFacts;
    readonly 'gas-gauge': GasGaugeFacts;
    readonly 'gas-hose': GasHoseFacts;
    readonly 'gas-line': GasLineFacts;
    readonly 'gas-valve': GasValveFacts;
    readonly 'gas-test': GasTestFacts;
    readonly 'stove': StoveFacts;
    readonly 'oven': OvenFacts;
    readonly 'heater': HeaterFacts;
    readonly 'fireplace': FireplaceFacts;
    readonly 'refrigeration': RefrigerationFacts;
    readonly 'hull-shell': HullShellFacts;
    readonly 'plate': PlateFacts;
    readonly 'plank': PlankFacts;
    readonly 'timber': TimberFacts;
    readonly 'frame': FrameFacts;
    readonly 'fastening': FasteningFacts;
    readonly 'stringer': StringerFacts;
    readonly 'floor': FloorFacts;
    readonly 'bulkhead': BulkheadFacts;
    readonly 'transom': TransomFacts;
    readonly 'keel': KeelFacts;
    readonly 'keel-bolt': KeelBoltFacts;
    readonly 'hull-deck-joint': HullDeckJointFacts;
    readonly 'rubbing-strake': RubbingStrakeFacts;
    readonly 'crossbeam': CrossbeamFacts;
    readonly 'bridge-deck': BridgeDeckFacts;
    readonly 'pontoon': PontoonFacts;
    readonly 'blister': BlisterFacts;
    readonly 'rudder': RudderFacts;
    readonly 'coating': CoatingFacts;
    readonly 'anode': AnodeFacts;
    readonly 'bonding': BondingFacts;
    readonly 'impressed-current': ImpressedCurrentFacts;
    readonly 'strut': StrutFacts;
    readonly 'trim-tab': TrimTabFacts;
    readonly 'bow-thruster': BowThrusterFacts;
    readonly 'hull-potential': HullPotentialFacts;
    readonly 'bolts': BoltsFacts;
    readonly 'hull-opening': HullOpeningFacts;
    readonly 'through-hull': ThroughHullFacts;
    readonly 'skin-fitting': SkinFittingFacts;
    readonly 'sea-chest': SeaChestFacts;
    readonly 'scupper': ScupperFacts;
    readonly 'skin-fitting-above': SkinFittingAboveFacts;
    readonly 'transducer': TransducerFacts;
    readonly 'drain-plug': DrainPlugFacts;
    readonly 'valve': ValveFacts;
    readonly 'seacock': SeacockFacts;
    readonly 'check-valve': CheckValveFacts;
    readonly 'clamp': ClampFacts;
    readonly 'stepped-hose': SteppedHoseFacts;
    readonly 'hose-tail': HoseTailFacts;
    readonly 'adapter': AdapterFacts;
    readonly 'stepped-adapter': SteppedAdapterFacts;
    readonly 'reducer': ReducerFacts;
    readonly 'elbow': ElbowFacts;
    readonly 'tee': TeeFacts;
    readonly 'y-valve': YValveFacts;
    readonly 'diverter': DiverterFacts;
    readonly 'blank': BlankFacts;
    readonly 'cap': CapFacts;
    readonly 'bonded-plug': BondedPlugFacts;
    readonly 'welded-doubler': WeldedDoublerFacts;
    readonly 'strainer': StrainerFacts;
    readonly 'vented-loop': VentedLoopFacts;
    readonly 'toilet': ToiletFacts;
    readonly 'sink': SinkFacts;
    readonly 'shower': ShowerFacts;
    readonly 'holding-tank': HoldingTankFacts;
    readonly 'treatment-device': TreatmentDeviceFacts;
    readonly 'air-conditioner': AirConditionerFacts;
    readonly 'wash-down-pump': WashDownPumpFacts;
    readonly 'grating': GratingFacts;
    readonly 'shaft': ShaftFacts;
    readonly 'coupling': CouplingFacts;
    readonly 'shaft-seal': ShaftSealFacts;
    readonly 'packed-gland': PackedGlandFacts;
    readonly 'face-seal': FaceSealFacts;
    readonly 'lip-seal': LipSealFacts;
    readonly 'stern-bearing': SternBearingFacts;
    readonly 'propeller': PropellerFacts;
    readonly 'saildrive': SaildriveFacts;
    readonly 'outdrive': OutdriveFacts;
    readonly 'outboard': OutboardFacts;
    readonly 'jet-drive': JetDriveFacts;
    readonly 'pod': PodFacts;
    readonly 'steering': SteeringFacts;
    readonly 'reading': ReadingFacts;
    readonly 'reading-row': ReadingRowFacts;
    readonly 'moisture-row': MoistureRowFacts;
    readonly 'wood-moisture-row': WoodMoistureRowFacts;
    readonly 'percussion-row': PercussionRowFacts;
    readonly 'thickness-row': ThicknessRowFacts;
    readonly 'potential-row': PotentialRowFacts;
    readonly 'bonding-row': BondingRowFacts;
    readonly 'compression-row': CompressionRowFacts;
    readonly 'temperature-row': TemperatureRowFacts;
    readonly 'trial-row': TrialRowFacts;
    readonly 'oil-sample-row': OilSampleRowFacts;
    readonly 'battery-row': BatteryRowFacts;
    readonly 'charging-row': ChargingRowFacts;
    readonly 'voltage-drop-row': VoltageDropRowFacts;
    readonly 'insulation-row': InsulationRowFacts;
    readonly 'leakage-row': LeakageRowFacts;
    readonly 'polarity-row': PolarityRowFacts;
    readonly 'level-row': LevelRowFacts;
    readonly 'freeboard-row': FreeboardRowFacts;
    readonly 'play-row': PlayRowFacts;
    readonly 'tension-row': TensionRowFacts;
    readonly 'gas-test-row': GasTestRowFacts;
    readonly 'tube-pressure-row': TubePressureRowFacts;
    readonly 'pressure-row': PressureRowFacts;
    readonly 'contract-row': ContractRowFacts;
    readonly 'handover-row': HandoverRowFacts;
    readonly 'outline': OutlineFacts;
    readonly 'wording': WordingFacts;
    readonly 'spar': SparFacts;
    readonly 'mast': MastFacts;
    readonly 'boom': BoomFacts;
    readonly 'spreader': SpreaderFacts;
    readonly 'wire': WireFacts;
    readonly 'shroud': ShroudFacts;
    readonly 'stay': StayFacts;
    readonly 'terminal': TerminalFacts;
    readonly 'chainplate': ChainplateFacts;
    readonly 'turnbuckle': TurnbuckleFacts;
    readonly 'halyard': HalyardFacts;
    readonly 'furler': FurlerFacts;
    readonly 'sail': SailFacts;
    readonly 'winch': WinchFacts;
    readonly 'tank': TankFacts;
    readonly 'fuel-tank': FuelTankFacts;
    readonly 'water-tank': WaterTankFacts;
    readonly 'water-heater': WaterHeaterFacts;
    readonly 'fuel-filter': FuelFilterFacts;
    readonly 'fuel-fill': FuelFillFacts;
    readonly 'fuel-vent': FuelVentFacts;
    readonly 'fuel-line': FuelLineFacts;
    readonly 'fuel-pump': FuelPumpFacts;
    readonly 'carburetor': CarburetorFacts;
    readonly 'fuel-hose': FuelHoseFacts;
    readonly 'fuel-valve': FuelValveFacts;
    readonly 'anti-siphon-device': AntiSiphonDeviceFacts;
    readonly 'water-pump': WaterPumpFacts;
    readonly 'shower-sump': ShowerSumpFacts;
    readonly 'yardsticks': YardsticksFacts;
}

export type KindName = keyof KindFacts;
export type FactsOf<K extends KindName> = KindFacts[K];

/** Every property that some kind declares. */
export interface AnyFacts {
    readonly 'above-bilge-water': Word<'yes' | 'no'>;
    readonly 'above-sidelights': Quantity;
    readonly 'above-waterline': Quantity;
    readonly 'accepted-lead': Text;
    readonly 'access': Text;
    readonly 'acid': Word<'yes' | 'no'>;
    readonly 'acidity': Quantity;
    readonly 'active-potential': Quantity;
    readonly 'added': Word<'concentrate' | 'premix' | 'water'>;
    readonly 'address': Text;
    readonly 'adhesion': Word<'sound' | 'lifting' | 'bare' | 'not-tried'>;
    readonly 'adjusted': Quantity;
    readonly 'adjustment-left': Quantity;
    readonly 'agent': Word<'dry-chemical' | 'clean-agent' | 'carbon-dioxide' | 'foam' | 'other'> | Word<'clean-agent' | 'carbon-dioxide' | 'aerosol' | 'other'>;
    readonly 'agent-mass': Quantity;
    readonly 'agent-mass-now': Quantity;
    readonly 'agrees': Word<'yes' | 'no' | 'in-part' | 'not-yet' | 'not-seen'>;
    readonly 'air-beside': Quantity;
    readonly 'air-draft': Quantity;
    readonly 'air-end': Quantity;
    readonly 'air-start': Quantity;
    readonly 'air-temperature': Quantity;
    readonly 'altered': Word<'yes' | 'no'>;
    readonly 'angle': Quantity;
    readonly 'angle-even': Word<'yes' | 'no'>;
    readonly 'anode-left': Quantity;
    readonly 'answers': CheckRef;
    readonly 'appliances-shut': Word<'yes' | 'no'>;
    readonly 'approved': Word<'yes' | 'no'>;
    readonly 'arc': Quantity;
    readonly 'area': Quantity;
    readonly 'area-ratio': Quantity;
    readonly 'asking': Quantity;
    readonly 'assumptions': Text;
    readonly 'assumptions-lead': Text;
    readonly 'at-end': Quantity;
    readonly 'at-engine': Word<'yes' | 'no'>;
    readonly 'at-galley': Word<'yes' | 'no'>;
    readonly 'at-start': Quantity;
    readonly 'at-tank': Word<'yes' | 'no'>;
    readonly 'automatic': Word<'yes' | 'no'>;
    readonly 'axial': Quantity;
    readonly 'backing': Word<'plate' | 'washers' | 'none' | 'not-seen'> | Word<'bonded-block' | 'loose-block' | 'none'>;
    readonly 'bad': Quantity;
    readonly 'ballast': Quantity;
    readonly 'band': Quantity;
    readonly 'bank': Text;
    readonly 'bank-voltage': Quantity;
    readonly 'barrier-coat': Word<'yes' | 'no'>;
    readonly 'base-moves': Word<'yes' | 'no'>;
    readonly 'basis': Word<'seen' | 'stated' | 'measured' | 'operated'> | Text;
    readonly 'battery-expires': DateValue;
    readonly 'battery-left': Quantity;
    readonly 'beam': Quantity;
    readonly 'bearing-clearance': Quantity;
    readonly 'bearing-wear': Quantity;
    readonly 'bearing-wear-most': Quantity;
    readonly 'bearings': Word<'sound' | 'noisy' | 'loose' | 'not-tried'>;
    readonly 'because': Text;
    readonly 'behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    readonly 'bellows-cracked': Word<'yes' | 'no'>;
    readonly 'bellows-fitted': DateValue;
    readonly 'below-heeled-waterline': Word<'yes' | 'no'>;
    readonly 'below-tank-top': Word<'yes' | 'no'>;
    readonly 'below-waterline': Quantity;
    readonly 'bends': Text;
    readonly 'bent': Word<'yes' | 'no'>;
    readonly 'betterment': Quantity;
    readonly 'blades': Quantity;
    readonly 'blank-aboard': Word<'yes' | 'no'>;
    readonly 'block-original': Quantity;
    readonly 'block-reading': Quantity;
    readonly 'blocked': Word<'yes' | 'no'>;
    readonly 'body': Word<'metal' | 'plastic' | 'glass-bowl'>;
    readonly 'bolts': Word<'tight' | 'loose' | 'missing' | 'not-seen'>;
    readonly 'bond': Word<'sound' | 'parted' | 'not-seen'>;
    readonly 'bond-resistance': Quantity;
    readonly 'bonded': Word<'yes' | 'no'>;
    readonly 'boost': Quantity;
    readonly 'bore': Quantity;
    readonly 'bottom-seen': Word<'yes' | 'no'>;
    readonly 'bow-height': Quantity;
    readonly 'bowl': Word<'metal' | 'plastic' | 'heat-shielded'>;
    readonly 'bracket': Word<'yes' | 'no'>;
    readonly 'brackets': Word<'sound' | 'cracked' | 'loose' | 'not-seen'>;
    readonly 'brakes': Word<'works' | 'seized' | 'none' | 'not-tried'>;
    readonly 'branches': Quantity;
    readonly 'broken': Quantity | Word<'yes' | 'no'>;
    readonly 'broken-strands': Quantity;
    readonly 'browned': Word<'yes' | 'no'>;
    readonly 'bucket': Word<'works' | 'stiff' | 'stuck' | 'not-tried'>;
    readonly 'build': Word<'submersible' | 'diaphragm' | 'impeller' | 'other'> | Word<'mechanical' | 'electronic'> | Word<'chain' | 'mixed' | 'rope'> | Word<'sawn' | 'steamed' | 'laminated' | 'angle' | 'other'> | Word<'bolted' | 'encapsulated' | 'box' | 'lifting' | 'integral'> | Word<'bolted' | 'bonded' | 'laminated' | 'screwed' | 'unknown'> | Word<'one-by-nineteen' | 'seven-by-seven' | 'seven-by-nineteen' | 'compacted' | 'rod' | 'synthetic' | 'galvanized'> | Word<'swaged' | 'mechanical' | 'spliced' | 'other'> | Word<'fixed' | 'portable' | 'integral' | 'bladder'>;
    readonly 'builder': Text;
    readonly 'built': Quantity;
    readonly 'bundled': Quantity;
    readonly 'butts': Word<'sound' | 'parted' | 'not-seen'>;
    readonly 'bypasses-main-switch': Word<'yes' | 'no'>;
    readonly 'calibration': Text;
    readonly 'call-sign': Text;
    readonly 'cap-pressure': Quantity;
    readonly 'capacity': Quantity;
    readonly 'capacity-measured': Quantity;
    readonly 'cause-opinion': Text;
    readonly 'cause-stated': Text;
    readonly 'caution-computed': Text;
    readonly 'caution-day': Text;
    readonly 'caution-engines': Text;
    readonly 'caution-gauging': Text;
    readonly 'caution-mast': Text;
    readonly 'caution-moisture': Text;
    readonly 'caution-potentials': Text;
    readonly 'caution-reach': Text;
    readonly 'caution-reliance': Text;
    readonly 'caution-sails': Text;
    readonly 'caution-sounding': Text;
    readonly 'caution-standards': Text;
    readonly 'caution-stated': Text;
    readonly 'caution-tanks': Text;
    readonly 'caution-title': Text;
    readonly 'caution-value': Text;
    readonly 'caution-wiring': Text;
    readonly 'caution-work': Text;
    readonly 'cell': Word<'silver-chloride' | 'copper-sulfate' | 'zinc'>;
    readonly 'certified-type': Word<'type-i' | 'type-ii' | 'type-iii' | 'unlabeled'>;
    readonly 'chafed': Word<'yes' | 'no'>;
    readonly 'chambers': Quantity;
    readonly 'changed': DateValue;
    readonly 'charge-flooded': Quantity;
    readonly 'charge-gel-most': Quantity;
    readonly 'charges': ComponentRef;
    readonly 'charging-voltage': Quantity;
    readonly 'chemistry': Word<'flooded' | 'gel' | 'agm' | 'lithium'>;
    readonly 'child-sizes': Quantity;
    readonly 'children': Quantity;
    readonly 'circuit': ComponentRef;
    readonly 'cites': Citation;
    readonly 'clamp-band': Quantity;
    readonly 'clamp-condition': Word<'sound' | 'rusty' | 'cracked' | 'broken' | 'loose'>;
    readonly 'clamp-material': MaterialValue;
    readonly 'clamp-range': Quantity;
    readonly 'clamp-type': Word<'worm' | 'bolt' | 'spring' | 'swaged'>;
    readonly 'clamps': Quantity;
    readonly 'class': Word<'unmarked' | 'water' | 'sanitation' | 'wet-exhaust' | 'fuel-a1' | 'fuel-a2' | 'fuel-b1' | 'fuel-b2' | 'gas' | 'coolant' | 'clear-pvc' | 'ribbed-pvc'> | Word<'copper-alloy' | 'nickel-alloy' | 'stainless' | 'iron-or-steel' | 'aluminum' | 'zinc-anode' | 'magnesium-anode' | 'titanium' | 'carbon' | 'lead' | 'tin' | 'metal' | 'plastic' | 'reinforced-plastic' | 'rubber' | 'wood' | 'laminate' | 'other'>;
    readonly 'clear-least': Quantity;
    readonly 'clear-opening': Text;
    readonly 'clearance': Quantity;
    readonly 'client': Text;
    readonly 'closure': Word<'open' | 'capped' | 'blanked' | 'glassed-over' | 'welded' | 'plug-in-hose' | 'valve-shut'>;
    readonly 'coated': Word<'yes' | 'no'>;
    readonly 'coating': Quantity;
    readonly 'code': Text;
    readonly 'code-on-papers': Text;
    readonly 'cold-start': Word<'at-once' | 'slow' | 'no' | 'not-tried'>;
    readonly 'coldest-expected': Quantity;
    readonly 'color': Word<'white' | 'red' | 'green' | 'yellow'> | Text;
    readonly 'columns': Word | Text;
    readonly 'commercial': Word<'yes' | 'no'>;
    readonly 'comparables-least': Quantity;
    readonly 'comparables-spread': Quantity;
    readonly 'compliance-limits': Text;
    readonly 'compression': Quantity;
    readonly 'condition': Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen'> | Word<'sound' | 'serviceable' | 'worn' | 'defective' | 'failed' | 'not-proved' | 'not-seen' | 'perished' | 'cracked' | 'soft' | 'swollen' | 'chafed'> | Word<'better' | 'same' | 'worse'>;
    readonly 'condition-assumed': Text;
    readonly 'conditions': Text;
    readonly 'conductor': ComponentRef;
    readonly 'conducts': Word<'yes' | 'no'>;
    readonly 'construction': Text;
    readonly 'container': Word<'canister' | 'valise'>;
    readonly 'contains': Word<'salt-water' | 'fresh-water' | 'brackish-water' | 'fuel' | 'gas' | 'exhaust' | 'coolant' | 'air'>;
    readonly 'contents': Quantity;
    readonly 'contract': Text;
    readonly 'contract-lead': Text;
    readonly 'coolant': Quantity;
    readonly 'cord': ComponentRef;
    readonly 'core': MaterialValue;
    readonly 'core-reading': Quantity;
    readonly 'corrosion': Text;
    readonly 'cost': Quantity;
    readonly 'cost-approach': Text;
    readonly 'count': Quantity;
    readonly 'counted-on': Quantity;
    readonly 'counter': Quantity;
    readonly 'covered': Word<'yes' | 'no'>;
    readonly 'covers': Quantity;
    readonly 'cracked': Word<'yes' | 'no'>;
    readonly 'cracked-to-cord': Word<'yes' | 'no'>;
    readonly 'cranking': Quantity;
    readonly 'cranking-measured': Quantity;
    readonly 'crazed': Word<'yes' | 'no'>;
    readonly 'credentials': Text;
    readonly 'cruising-speed': Quantity;
    readonly 'current': Quantity;
    readonly 'cut-off': Word<'yes' | 'no'>;
    readonly 'cylinder-shut': Word<'yes' | 'no'>;
    readonly 'cylinders': Quantity;
    readonly 'damage': Text;
    readonly 'dash-rotation': Quantity;
    readonly 'day': Word<'yes' | 'no'>;
    readonly 'dc-off': Quantity;
    readonly 'dc-on': Quantity;
    readonly 'decayed': Word<'yes' | 'no'>;
    readonly 'deck-material': MaterialValue;
    readonly 'deepest-berth': Quantity;
    readonly 'definition-of-value': Text;
    readonly 'definitions': Text;
    readonly 'definitions-lead': Text;
    readonly 'deflection': Quantity;
    readonly 'density': Quantity;
    readonly 'depreciation': Quantity;
    readonly 'depth': Quantity;
    readonly 'design-category': Word<'a' | 'b' | 'c' | 'd'>;
    readonly 'designer': Text;
    readonly 'deviation-card': Word<'yes' | 'no'>;
    readonly 'device': Word<'horn' | 'whistle' | 'bell' | 'gong'>;
    readonly 'dezincification-resistant': Word<'yes' | 'no'>;
    readonly 'diameter': Quantity;
    readonly 'displacement': Quantity;
    readonly 'disposable': Word<'yes' | 'no'>;
    readonly 'distance': Quantity;
    readonly 'distance-from-inlet': Quantity;
    readonly 'distance-to-opening': Quantity;
    readonly 'distress-button': Word<'yes' | 'no'>;
    readonly 'documents-lead': Text;
    readonly 'dogs': Word<'sound' | 'stiff' | 'broken' | 'missing' | 'not-tried'>;
    readonly 'draft': Quantity;
    readonly 'drain-back-length': Quantity;
    readonly 'drain-bore': Quantity;
    readonly 'drain-plug': Word<'yes' | 'no'>;
    readonly 'drains': Quantity;
    readonly 'drawn': Quantity | DateValue;
    readonly 'drawn-port': Quantity;
    readonly 'drawn-starboard': Quantity;
    readonly 'drips-at-rest': Quantity;
    readonly 'drips-under-way': Quantity;
    readonly 'drive': Word<'electric' | 'engine' | 'hand'> | Word<'manual' | 'electric'> | Word<'manual' | 'electric' | 'vacuum'> | Word<'hydraulic' | 'cable' | 'rod' | 'tiller' | 'power'> | Word<'engine' | 'electric' | 'manual'> | Word<'spring' | 'electric'>;
    readonly 'drop': Quantity;
    readonly 'dry-reference': Quantity;
    readonly 'duration': Quantity;
    readonly 'earlier': Text;
    readonly 'earlier-date': DateValue;
    readonly 'earlier-hours': Quantity;
    readonly 'earlier-lead': Text;
    readonly 'earlier-source': Text;
    readonly 'earth': Quantity;
    readonly 'earth-resistance': Quantity;
    readonly 'edition': Text;
    readonly 'effective': DateValue;
    readonly 'electronics-disconnected': Word<'yes' | 'no'>;
    readonly 'email': Text;
    readonly 'emergency-tiller': Word<'fits' | 'does-not-fit' | 'none' | 'not-tried'>;
    readonly 'end': Quantity;
    readonly 'end-fittings': Word<'crimped' | 'screwed' | 'worm-clip'>;
    readonly 'end-pressure': Quantity;
    readonly 'ends': Quantity;
    readonly 'engaged': DateValue;
    readonly 'engine': ComponentRef;
    readonly 'engine-hours': Quantity;
    readonly 'engine-in-hull': Word<'yes' | 'no'>;
    readonly 'engine-power': Quantity;
    readonly 'engines': Quantity;
    readonly 'environment': Word<'weather' | 'indoors' | 'controlled'>;
    readonly 'evidence': Text;
    readonly 'exhaust': Quantity;
    readonly 'exhaust-hose-life': Quantity;
    readonly 'expires': DateValue;
    readonly 'explained': Text;
    readonly 'exposed-area': Quantity;
    readonly 'extent': Text;
    readonly 'external-regulator': Word<'yes' | 'no'>;
    readonly 'fabric': Word<'pvc' | 'chlorosulfonated-rubber' | 'polyurethane' | 'unknown'>;
    readonly 'faces': Word<'forward' | 'aft' | 'turning'>;
    readonly 'fastener-spacing': Quantity;
    readonly 'fasteners': Word<'tight' | 'loose' | 'wasted' | 'not-seen'>;
    readonly 'fee-basis': Text;
    readonly 'feeds': Text;
    readonly 'female-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'fill-bond': Word<'yes' | 'no'>;
    readonly 'filled': Word<'full' | 'low' | 'empty' | 'not-seen'> | Quantity;
    readonly 'findings-lead': Text;
    readonly 'fitted': DateValue;
    readonly 'fixed': Word<'yes' | 'no'>;
    readonly 'flag': Text;
    readonly 'flame-arrester': Word<'yes' | 'no'>;
    readonly 'flame-arrester-mark': Text;
    readonly 'flame-failure': Word<'yes' | 'no'>;
    readonly 'flame-screen': Word<'yes' | 'no'>;
    readonly 'flange': Word<'yes' | 'no'>;
    readonly 'flanged': Word<'yes' | 'no'>;
    readonly 'flat-bottom': Word<'yes' | 'no'>;
    readonly 'flexes': Word<'yes' | 'no'>;
    readonly 'floodable-volume': Quantity;
    readonly 'flow': Quantity;
    readonly 'flow-coefficient': Quantity;
    readonly 'flue': Word<'sound' | 'leaking' | 'none' | 'not-seen'>;
    readonly 'fluid': Word<'full' | 'low' | 'empty' | 'not-seen'>;
    readonly 'foamed-in': Word<'yes' | 'no'>;
    readonly 'follows': Text;
    readonly 'form': Word<'ring' | 'horseshoe' | 'cushion' | 'other'>;
    readonly 'fouled': Word<'yes' | 'no'>;
    readonly 'found': Text;
    readonly 'freeze-point': Quantity;
    readonly 'fresh-water': Word<'yes' | 'no'>;
    readonly 'from': Text;
    readonly 'from-bow': Quantity;
    readonly 'from-centerline': Quantity;
    readonly 'from-stern': Quantity;
    readonly 'fuel': Word<'diesel' | 'gasoline' | 'electric'> | Word<'diesel' | 'gasoline' | 'electric' | 'none'> | Word<'gas' | 'diesel' | 'alcohol' | 'electric'> | Word<'gas' | 'diesel' | 'solid' | 'electric'> | Word<'electric' | 'gas'> | Word<'diesel' | 'gasoline'>;
    readonly 'fuel-capacity': Quantity;
    readonly 'further-damage': Text;
    readonly 'fuse': Quantity;
    readonly 'fused': Word<'yes' | 'no'>;
    readonly 'gap': Quantity;
    readonly 'gas': Word<'propane' | 'butane' | 'natural-gas'>;
    readonly 'gas-cylinder-term': Quantity;
    readonly 'gas-hose-life': Quantity;
    readonly 'gas-regulator-life': Quantity;
    readonly 'gas-vent-bore': Quantity;
    readonly 'gas-vent-gap': Quantity;
    readonly 'gasoline': Word<'yes' | 'no'>;
    readonly 'gasoline-space': Word<'yes' | 'no'>;
    readonly 'gauge': Quantity | Word<'in-range' | 'out-of-range' | 'none'>;
    readonly 'gear': Word<'better' | 'same' | 'worse'> | Word<'fiberglass-bronze' | 'fiberglass-aluminum-drive' | 'aluminum' | 'steel' | 'wood'>;
    readonly 'gimbaled': Word<'yes' | 'no'>;
    readonly 'glycol': Quantity;
    readonly 'glycol-kind': Word<'ethylene' | 'propylene' | 'mixed' | 'unknown'>;
    readonly 'glycol-least': Quantity;
    readonly 'glycol-most': Quantity;
    readonly 'glycol-working': Quantity;
    readonly 'grating': Word<'yes' | 'no'>;
    readonly 'gross-adjustment': Quantity;
    readonly 'gross-tonnage': Quantity;
    readonly 'grounded': Word<'yes' | 'no'>;
    readonly 'hand': Word<'right' | 'left'>;
    readonly 'handle': Word<'fitted' | 'gone' | 'tied'>;
    readonly 'heads-wasted': Quantity;
    readonly 'heard-outside': Word<'yes' | 'no'>;
    readonly 'hearth': Word<'yes' | 'no'>;
    readonly 'height': Quantity;
    readonly 'held': Word<'yes' | 'no'>;
    readonly 'high': Quantity;
    readonly 'high-holding': Word<'yes' | 'no'>;
    readonly 'hoisted': Word<'yes' | 'no'>;
    readonly 'hollow-area': Quantity;
    readonly 'hose-life': Quantity;
    readonly 'hours': Quantity;
    readonly 'hours-before-meter': Quantity;
    readonly 'hours-lain': Quantity;
    readonly 'hours-since-charge': Quantity;
    readonly 'hours-since-lift': Quantity;
    readonly 'hours-since-wash': Quantity;
    readonly 'hours-source': Text;
    readonly 'hours-stated': Quantity;
    readonly 'hull-beam': Quantity;
    readonly 'hull-draft': Quantity;
    readonly 'hull-material': MaterialValue;
    readonly 'hull-number': Text;
    readonly 'hull-thickness': Quantity;
    readonly 'identity-number': Text;
    readonly 'ignition-protected': Word<'yes' | 'no'>;
    readonly 'ignition-space': Word<'yes' | 'no'>;
    readonly 'immersed': Word<'yes' | 'no'>;
    readonly 'impeller-fitted': DateValue;
    readonly 'in-engine-space': Word<'yes' | 'no'>;
    readonly 'in-line-with-battery': ComponentRef;
    readonly 'in-locker': Word<'yes' | 'no'>;
    readonly 'in-lower-third': Word<'yes' | 'no'>;
    readonly 'in-order': Quantity;
    readonly 'in-use': Word<'yes' | 'no'>;
    readonly 'income-approach': Text;
    readonly 'inhibitor': Word<'plain' | 'organic' | 'hybrid' | 'unknown'>;
    readonly 'injection-above-waterline': Quantity;
    readonly 'inlet-above-waterline': Quantity;
    readonly 'inspected': Word<'from-deck' | 'climbed' | 'unstepped'>;
    readonly 'instrument': Word<'hydrometer' | 'refractometer' | 'strip' | 'stated'> | Text;
    readonly 'instrument-range': Quantity | DateValue;
    readonly 'insulated': Word<'yes' | 'no'>;
    readonly 'insulation': Quantity;
    readonly 'insulation-resistance': Quantity;
    readonly 'insurer': Text;
    readonly 'insurers-term': Quantity;
    readonly 'intended-use': Text;
    readonly 'into-laminate': Word<'yes' | 'no'>;
    readonly 'isolated': Word<'yes' | 'no'>;
    readonly 'isolated-by': Word<'bulkhead' | 'deck' | 'open-air' | 'none'>;
    readonly 'issue': Quantity;
    readonly 'issued': DateValue;
    readonly 'joint-for-gimbal': Word<'yes' | 'no'>;
    readonly 'joint-gap': Quantity;
    readonly 'joints-inboard': Quantity;
    readonly 'keeper': Word<'yes' | 'no'>;
    readonly 'key': Word<'sound' | 'worn' | 'sheared' | 'not-seen'>;
    readonly 'label-pressure': Quantity;
    readonly 'labeled': Word<'yes' | 'no'>;
    readonly 'laboratory': Text;
    readonly 'lagged': Word<'yes' | 'no'>;
    readonly 'layup': Text;
    readonly 'leads-zeroed': Word<'yes' | 'no'>;
    readonly 'leak': Quantity;
    readonly 'leak-when-cut': Quantity;
    readonly 'leakage': Quantity;
    readonly 'leakage-guarded': Word<'yes' | 'no'>;
    readonly 'leakage-protected': Word<'yes' | 'no'>;
    readonly 'leaks': Word<'yes' | 'no'>;
    readonly 'leaks-seen': Text;
    readonly 'least-compression': Quantity;
    readonly 'least-thickness': Quantity;
    readonly 'left': Quantity;
    readonly 'length': Quantity;
    readonly 'length-on-deck': Quantity;
    readonly 'length-overall': Quantity;
    readonly 'length-waterline': Quantity;
    readonly 'letter': Text;
    readonly 'letter-height': Quantity;
    readonly 'level': Text;
    readonly 'lid': Word<'top' | 'side' | 'none'>;
    readonly 'lid-above-waterline': Quantity;
    readonly 'lies-in': Word<'garboard' | 'stem' | 'elsewhere'>;
    readonly 'lift': Quantity;
    readonly 'light': Word<'yes' | 'no'> | Word<'masthead' | 'side-port' | 'side-starboard' | 'stern' | 'all-round' | 'anchor' | 'tricolor' | 'sides-combined' | 'towing'>;
    readonly 'lightly-built': Word<'yes' | 'no'>;
    readonly 'lights-dim': Word<'yes' | 'no'>;
    readonly 'limit': Quantity;
    readonly 'limits': Text;
    readonly 'limits-lead': Text;
    readonly 'line-charged': Word<'yes' | 'no'>;
    readonly 'lining': Word<'rubber' | 'wood' | 'polymer' | 'white-metal' | 'bronze'>;
    readonly 'link-now': Quantity;
    readonly 'link-original': Quantity;
    readonly 'listed': Word<'yes' | 'no'>;
    readonly 'load': Quantity;
    readonly 'load-point': Word<'mast' | 'chainplate' | 'engine' | 'none'>;
    readonly 'load-tested': DateValue;
    readonly 'load-voltage': Quantity;
    readonly 'loads': Text;
    readonly 'loads-on': Text;
    readonly 'lone-pit': Quantity;
    readonly 'looked-at': DateValue;
    readonly 'loop': Word<'fitted' | 'none' | 'not-seen'>;
    readonly 'looped': Word<'yes' | 'no'>;
    readonly 'loose': Word<'yes' | 'no'>;
    readonly 'low': Quantity;
    readonly 'made': DateValue;
    readonly 'main': Word<'yes' | 'no'>;
    readonly 'maker': Text;
    readonly 'maker-high': Quantity;
    readonly 'maker-low': Quantity;
    readonly 'makers-fuse': Quantity;
    readonly 'makers-head': Quantity;
    readonly 'makers-least': Quantity;
    readonly 'makers-limit': Quantity;
    readonly 'makers-mass': Quantity;
    readonly 'makers-run-out': Quantity;
    readonly 'makers-term': Quantity;
    readonly 'male-thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'manual-for': Text;
    readonly 'mark': Word<'primary' | 'duplicate' | 'plate' | 'other'> | Text;
    readonly 'marked': Word<'yes' | 'no'> | Word<'name' | 'hailing-port' | 'name-and-port' | 'official-number' | 'state-number' | 'draft' | 'other'>;
    readonly 'marking': Text;
    readonly 'masked': Quantity;
    readonly 'mass': Quantity;
    readonly 'material': MaterialValue;
    readonly 'measured': Word<'afloat' | 'ashore'> | Quantity;
    readonly 'measured-capacity': Quantity;
    readonly 'measured-flow': Quantity;
    readonly 'measures': Word<'moisture' | 'wood-moisture' | 'percussion' | 'thickness' | 'potential' | 'bonding' | 'compression' | 'temperature' | 'trial' | 'oil-sample' | 'battery' | 'charging' | 'voltage-drop' | 'insulation' | 'leakage' | 'polarity' | 'level' | 'freeboard' | 'play' | 'tension' | 'gas-test' | 'tube-pressure' | 'pressure' | 'contract' | 'handover' | 'other'>;
    readonly 'metal': MaterialValue;
    readonly 'metal-tank-life': Quantity;
    readonly 'meter-behind': Word<'nothing' | 'tank' | 'metal' | 'wet-locker' | 'unknown'>;
    readonly 'meter-changed': DateValue;
    readonly 'method': Text;
    readonly 'mode': Word<'deep' | 'shallow'>;
    readonly 'model': Text;
    readonly 'model-year': Quantity;
    readonly 'moisture': Text | Quantity;
    readonly 'moisture-ratio': Quantity;
    readonly 'moisture-reading': Quantity;
    readonly 'months-to-haul-out': Quantity;
    readonly 'motto': Text;
    readonly 'mounted': Word<'clamped' | 'bolted'>;
    readonly 'movement': Quantity;
    readonly 'moves': Word<'yes' | 'no'> | Quantity;
    readonly 'names': Text;
    readonly 'needs-tools': Word<'yes' | 'no'>;
    readonly 'net-adjustment': Quantity;
    readonly 'net-tonnage': Quantity;
    readonly 'neutral-bonded': Word<'yes' | 'no'>;
    readonly 'neutral-joined': Word<'on-inverter' | 'always' | 'never' | 'not-tried'>;
    readonly 'neutral-joined-aboard': Word<'apart' | 'joined' | 'not-tried'>;
    readonly 'night': Word<'yes' | 'no'>;
    readonly 'no-contract': Text;
    readonly 'no-discharge-waters': Word<'yes' | 'no'>;
    readonly 'no-measurements': Text;
    readonly 'no-trial': Text;
    readonly 'no-value': Text;
    readonly 'noise': Text;
    readonly 'nominal-voltage': Quantity;
    readonly 'not-afloat': Text;
    readonly 'not-hauled': Text;
    readonly 'number': Text;
    readonly 'obsolescence': Quantity;
    readonly 'occurrence': Text;
    readonly 'occurrence-date': DateValue;
    readonly 'occurrence-place': Text;
    readonly 'occurrence-time': Quantity;
    readonly 'of': ComponentRef;
    readonly 'official-number': Text;
    readonly 'offshore': Word<'yes' | 'no'>;
    readonly 'oil': Word<'clear' | 'dark' | 'milky' | 'diluted' | 'not-seen'> | Word<'clear' | 'dark' | 'milky' | 'not-seen'>;
    readonly 'oil-hours': Quantity;
    readonly 'oil-milky': Word<'yes' | 'no'>;
    readonly 'oil-pressure': Quantity;
    readonly 'open-area': Quantity;
    readonly 'open-to-hull': Word<'yes' | 'no'>;
    readonly 'opened': DateValue;
    readonly 'openings-blanked': Quantity;
    readonly 'openings-inside': Quantity;
    readonly 'openings-outside': Quantity;
    readonly 'opens': Word<'yes' | 'no'>;
    readonly 'operator': Text;
    readonly 'opinion': Quantity;
    readonly 'opinion-words': Text;
    readonly 'original': Quantity;
    readonly 'original-basis': Word<'plan' | 'thickest-reading' | 'assumed'>;
    readonly 'original-mass': Quantity;
    readonly 'original-thickness': Quantity;
    readonly 'original-volume': Quantity;
    readonly 'outcome': Word<'done-and-seen' | 'done-as-stated' | 'in-part' | 'open' | 'declined'>;
    readonly 'outdrive-bellows-life': Quantity;
    readonly 'outlet': ComponentRef;
    readonly 'outlet-above-waterline': Quantity;
    readonly 'outlet-bore': Quantity;
    readonly 'output': Quantity;
    readonly 'outside-diameter': Quantity;
    readonly 'overflow-aboard': Word<'yes' | 'no'>;
    readonly 'own-potential': Quantity;
    readonly 'paint': Word<'copper-antifouling' | 'copper-free-antifouling' | 'none' | 'unknown'> | Word<'copper-antifouling' | 'copper-free-antifouling' | 'barrier' | 'topside' | 'none' | 'unknown'>;
    readonly 'painted': Word<'yes' | 'no'>;
    readonly 'painter-fast': Word<'yes' | 'no'>;
    readonly 'panel': Quantity;
    readonly 'panel-area': Quantity;
    readonly 'paper': Word<'title' | 'registration' | 'documentation' | 'builders-certificate' | 'bill-of-sale' | 'survey-report' | 'other'> | Word<'a4' | 'letter'>;
    readonly 'part': ComponentRef;
    readonly 'part-only': Text;
    readonly 'particulars': Text;
    readonly 'parts': Word<'hull' | 'deck' | 'openings' | 'metals' | 'propulsion' | 'cooling' | 'exhaust' | 'fuel' | 'steering' | 'dc' | 'ac' | 'bilge' | 'water' | 'sanitation' | 'gas' | 'galley' | 'ventilation' | 'fire' | 'lifesaving' | 'navigation' | 'rig' | 'deck-gear' | 'tender' | 'papers'>;
    readonly 'passes-shore-power': Word<'yes' | 'no'>;
    readonly 'pattern': Text | Word<'lift' | 'pot' | 'in-line' | 'separator'> | Word<'ball-valve' | 'flanged-seacock' | 'plug-cock' | 'gate-valve' | 'globe-valve' | 'check-valve' | 'diverter'> | Word<'worm' | 'bolt' | 'spring' | 'swaged'> | Word<'rigid' | 'flexible'>;
    readonly 'penetrations-sealed': Word<'yes' | 'no'>;
    readonly 'percussion': Text;
    readonly 'permanent': Word<'yes' | 'no'>;
    readonly 'persons': Quantity;
    readonly 'persons-load': Quantity;
    readonly 'photos': Text;
    readonly 'photos-lead': Text;
    readonly 'pin': Word<'in-place' | 'loose' | 'gone'>;
    readonly 'pinned': Word<'yes' | 'no'>;
    readonly 'pit': Quantity;
    readonly 'pit-depth': Quantity;
    readonly 'pitch': Quantity;
    readonly 'pits': Word<'none' | 'lone' | 'grouped'>;
    readonly 'pitted': Word<'yes' | 'no'>;
    readonly 'placard-for': Word<'oil' | 'garbage' | 'waste-plan' | 'other'>;
    readonly 'place': Text;
    readonly 'places-drawn': Quantity;
    readonly 'plate-plan': Quantity;
    readonly 'plate-plan-light': Quantity;
    readonly 'plate-renew': Quantity;
    readonly 'plate-watch': Quantity;
    readonly 'play': Quantity;
    readonly 'polarity': Word<'right' | 'reversed' | 'not-tried'>;
    readonly 'polarity-indicator': Word<'yes' | 'no'>;
    readonly 'poles': Quantity;
    readonly 'policy': Text;
    readonly 'port': Quantity | Text;
    readonly 'portable': Word<'yes' | 'no'>;
    readonly 'position': Word<'open' | 'shut'>;
    readonly 'posted': Word<'yes' | 'no'>;
    readonly 'potential': Quantity;
    readonly 'potential-aluminum': Quantity;
    readonly 'potential-dc-off': Quantity;
    readonly 'potential-dc-on': Quantity;
    readonly 'potential-fiberglass-aluminum-drive': Quantity;
    readonly 'potential-fiberglass-bronze': Quantity;
    readonly 'potential-shore-in': Quantity;
    readonly 'potential-shore-out': Quantity;
    readonly 'potential-steel': Quantity;
    readonly 'potential-wood': Quantity;
    readonly 'present': Text;
    readonly 'present-mass': Quantity;
    readonly 'present-volume': Quantity;
    readonly 'pressure': Quantity;
    readonly 'prior-services': Text;
    readonly 'probe': Quantity;
    readonly 'protects': ComponentRef;
    readonly 'provenance': Word<'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen'>;
    readonly 'pull': Quantity;
    readonly 'pump-duty': Quantity;
    readonly 'pump-endurance': Quantity;
    readonly 'pump-share': Quantity;
    readonly 'pump-starts': Quantity;
    readonly 'purpose': Word<'start' | 'house' | 'thruster' | 'other'> | Word<'panel-feed' | 'bilge-pump' | 'blower' | 'navigation-light' | 'electronics' | 'lighting' | 'cranking' | 'charging' | 'ignition' | 'power' | 'other'> | Text;
    readonly 'push-test': Quantity;
    readonly 'quantity': Quantity;
    readonly 'radial': Quantity;
    readonly 'range': Quantity;
    readonly 'rated': Quantity;
    readonly 'rated-capacity': Quantity;
    readonly 'rated-flow': Quantity;
    readonly 'rated-power': Quantity;
    readonly 'rated-rotation': Quantity;
    readonly 'rated-temperature': Quantity;
    readonly 'rating': Quantity | Word<'b-5' | 'b-10' | 'b-20' | 'b-i' | 'b-ii' | 'other'>;
    readonly 'ratio': Quantity;
    readonly 'reach-below-waterline': Quantity;
    readonly 'reached-rotation': Quantity;
    readonly 'reading': Quantity | DateValue | Quantity;
    readonly 'real-flow': Quantity;
    readonly 'reason-for-urgency': Text;
    readonly 'recommend': Text;
    readonly 'recommendations-lead': Text;
    readonly 'reconciled': Text;
    readonly 'reference': Quantity;
    readonly 'reference-fitted': DateValue;
    readonly 'registered': Word<'yes' | 'no'>;
    readonly 'registered-boat': Text;
    readonly 'registration': Text;
    readonly 'registration-expires': DateValue;
    readonly 'regulated': Word<'yes' | 'no'>;
    readonly 'reinforced': Word<'yes' | 'no'>;
    readonly 'reinforcement': Word<'none' | 'textile' | 'wire'>;
    readonly 'related': Text;
    readonly 'relation': Word<'new' | 'old' | 'related' | 'unrelated' | 'unknown'>;
    readonly 'release': Word<'works' | 'stiff' | 'none' | 'not-tried'> | Word<'float-free' | 'manual' | 'personal'>;
    readonly 'relief-valve': Word<'works' | 'seized' | 'none' | 'not-tried'>;
    readonly 'remark': Text;
    readonly 'remarks': Text;
    readonly 'remote': Word<'yes' | 'no'>;
    readonly 'remote-steering': Word<'yes' | 'no'>;
    readonly 'repair-method': Text;
    readonly 'repair-time': Quantity;
    readonly 'repairs': Text;
    readonly 'repairs-deducted': Quantity;
    readonly 'repairs-of': ComponentRef;
    readonly 'replace-by': DateValue;
    readonly 'replacement': Quantity;
    readonly 'requalified': DateValue;
    readonly 'requalify-by': DateValue;
    readonly 'requested-for': Text;
    readonly 'resistance': Quantity;
    readonly 'rest': Quantity;
    readonly 'rest-voltage': Quantity;
    readonly 'restraint': Word<'strap' | 'box' | 'clamp' | 'none'>;
    readonly 'result': Text;
    readonly 'reviewer': PersonRef;
    readonly 'rigger-report': DateValue;
    readonly 'rim-above-waterline': Quantity;
    readonly 'rim-below-waterline': Quantity;
    readonly 'riser-height': Quantity;
    readonly 'rod-rigging-life': Quantity;
    readonly 'role': Text;
    readonly 'rotation': Quantity;
    readonly 'rotation-shown': Quantity;
    readonly 'rubber': Word<'sound' | 'soft' | 'parted' | 'not-seen'>;
    readonly 'rubber-fitted': DateValue;
    readonly 'rudder-tip-play': Quantity;
    readonly 'rudder-wear': Quantity;
    readonly 'run-out': Quantity;
    readonly 'running': Word<'displacement' | 'semi-displacement' | 'planing'>;
    readonly 'running-temperature': Quantity;
    readonly 'runs-hot': Word<'yes' | 'no'>;
    readonly 'rust-streak': Word<'yes' | 'no'>;
    readonly 'sag': Quantity;
    readonly 'sail-kind': Text;
    readonly 'saildrive-seal-life': Quantity;
    readonly 'sale-age': Quantity;
    readonly 'sales-approach': Text;
    readonly 'sample': Text;
    readonly 'sampled': Quantity;
    readonly 'scale': Text;
    readonly 'scope': Text;
    readonly 'scrape-color': Word<'yellow' | 'pink' | 'red-brown' | 'gray'>;
    readonly 'sea': Text;
    readonly 'seal': Word<'sound' | 'hard' | 'torn' | 'missing' | 'not-seen'>;
    readonly 'seal-cracked': Word<'yes' | 'no'>;
    readonly 'seal-fitted': DateValue;
    readonly 'sealant': Text;
    readonly 'seams': Word<'sound' | 'lifting' | 'leaking' | 'not-seen'> | Word<'tight' | 'weeping' | 'open' | 'not-seen'>;
    readonly 'second-clamp-below-waterline': Word<'advise' | 'ignore'>;
    readonly 'section': Text;
    readonly 'sections': Word<'summary' | 'earlier' | 'changes' | 'scope' | 'limits' | 'definitions' | 'standards' | 'particulars' | 'damage' | 'contract' | 'systems' | 'measurements' | 'trial' | 'findings' | 'accepted' | 'recommendations' | 'value' | 'assumptions' | 'statement' | 'photos' | 'documents'>;
    readonly 'secured': Word<'yes' | 'no'>;
    readonly 'secured-by': Word<'handle-off' | 'padlock' | 'tie' | 'none' | 'not-seen'> | Word<'locked-door' | 'none' | 'not-seen'>;
    readonly 'seen': Text;
    readonly 'seen-whole': Word<'yes' | 'no'>;
    readonly 'serial': Text;
    readonly 'series': Text;
    readonly 'serves': ComponentRef;
    readonly 'service': Word<'raw-water-cooling' | 'toilet-intake' | 'toilet-discharge' | 'sink-drain' | 'shower-drain' | 'cockpit-drain' | 'deck-drain' | 'bilge-discharge' | 'wash-down' | 'generator-cooling' | 'air-conditioning' | 'exhaust' | 'fuel-feed' | 'fuel-return' | 'fuel-fill' | 'fuel-vent' | 'fresh-water' | 'hot-water' | 'coolant' | 'gas' | 'other'>;
    readonly 'service-due': DateValue;
    readonly 'serviced': DateValue;
    readonly 'set-for': Word<'flooded' | 'gel' | 'agm' | 'lithium'>;
    readonly 'set-point': Quantity;
    readonly 'set-to': Word<'holding-tank' | 'overboard'>;
    readonly 'shaft': Quantity;
    readonly 'shaft-bellows-life': Quantity;
    readonly 'shaft-diameter': Quantity;
    readonly 'shank-loss': Quantity;
    readonly 'sheathed': Word<'yes' | 'no'>;
    readonly 'sheathed-to-breaker': Word<'yes' | 'no'>;
    readonly 'sheathed-to-fuse': Word<'yes' | 'no'>;
    readonly 'shell': Word<'bronze' | 'brass' | 'composite' | 'stainless' | 'none'>;
    readonly 'shift': Word<'clean' | 'stiff' | 'slips' | 'not-tried'>;
    readonly 'shines': Word<'sail' | 'engine' | 'anchor'>;
    readonly 'shore-in': Quantity;
    readonly 'shore-out': Quantity;
    readonly 'short-by': Quantity;
    readonly 'shut-valve-on-unused': Word<'closed-if-capped' | 'never-closed' | 'closed'>;
    readonly 'shuts-off': Word<'yes' | 'no'>;
    readonly 'side': Word<'port' | 'starboard' | 'centerline' | 'both'>;
    readonly 'signal': Word<'red-hand' | 'red-parachute' | 'red-meteor' | 'orange-smoke' | 'flag' | 'electric-light'>;
    readonly 'sill-above-waterline': Quantity;
    readonly 'sill-height': Quantity;
    readonly 'sistered': Quantity;
    readonly 'size': Quantity;
    readonly 'sizes': Text;
    readonly 'slam-cracks': Word<'yes' | 'no'>;
    readonly 'sleeping-cabins': Quantity;
    readonly 'smoke': Word<'none' | 'white' | 'blue' | 'black' | 'gray'>;
    readonly 'sold': Quantity;
    readonly 'sold-on': DateValue;
    readonly 'sole-area': Quantity;
    readonly 'sound': Word<'clear' | 'dull' | 'hollow'>;
    readonly 'sounds': Word<'clear' | 'dull' | 'hollow'>;
    readonly 'source': Word<'battery' | 'bus' | 'switch' | 'charger' | 'other'> | Text | ComponentRef | Quantity;
    readonly 'source-voltage': Quantity;
    readonly 'space-open': Word<'yes' | 'no'>;
    readonly 'space-volume': Quantity;
    readonly 'spacing': Quantity;
    readonly 'species': MaterialValue;
    readonly 'speed': Quantity;
    readonly 'speed-against': Quantity;
    readonly 'spigot': Quantity;
    readonly 'spins': Word<'yes' | 'no'>;
    readonly 'spring-clips': Word<'yes' | 'no'>;
    readonly 'stage': Word<'bulk' | 'absorption' | 'float' | 'equalizing'>;
    readonly 'standards-lead': Text;
    readonly 'standing': Word<'law' | 'voluntary' | 'practice'>;
    readonly 'standpipe': Word<'yes' | 'no'>;
    readonly 'standpipe-above-waterline': Quantity;
    readonly 'starboard': Quantity;
    readonly 'start': Quantity;
    readonly 'start-pressure': Quantity;
    readonly 'started': Quantity;
    readonly 'starts': Quantity;
    readonly 'state': Word<'ashore' | 'afloat'> | Word<'cold' | 'hot'> | Word<'handed-over' | 'to-follow' | 'missing' | 'not-due'> | Word<'sound' | 'cracked' | 'bent' | 'rust-weeping'>;
    readonly 'statement': Text;
    readonly 'statement-attended': Text;
    readonly 'statement-damage': Text;
    readonly 'statement-not-attended': Text;
    readonly 'statement-value': Text;
    readonly 'status-shown': Word<'yes' | 'no'>;
    readonly 'steady-shore-load': Quantity;
    readonly 'stepped': Word<'keel' | 'deck' | 'unstepped'>;
    readonly 'stitching': Word<'sound' | 'worn' | 'parted' | 'not-seen'>;
    readonly 'stock-diameter': Quantity;
    readonly 'stops': Word<'yes' | 'no'>;
    readonly 'stops-engine': Word<'yes' | 'no'>;
    readonly 'strake': Text;
    readonly 'stranded': Word<'yes' | 'no'>;
    readonly 'strike-marks': Word<'yes' | 'no'>;
    readonly 'summary': Text;
    readonly 'sun-exposed': Word<'yes' | 'no'>;
    readonly 'supported': Word<'yes' | 'no'>;
    readonly 'supports': Text;
    readonly 'surveyor': PersonRef;
    readonly 'swollen': Word<'yes' | 'no'>;
    readonly 'swung': DateValue;
    readonly 'system': ComponentRef;
    readonly 'tabbing': Word<'sound' | 'parted' | 'not-seen'>;
    readonly 'tail-length': Quantity;
    readonly 'taken': DateValue;
    readonly 'tank': ComponentRef;
    readonly 'tanks': Quantity;
    readonly 'tanks-even': Word<'yes' | 'no'>;
    readonly 'telephone': Text;
    readonly 'temperature': Quantity;
    readonly 'temperature-rise': Text;
    readonly 'tension': Quantity;
    readonly 'terminal': Word<'sound' | 'cracked' | 'bent' | 'rust-weeping'>;
    readonly 'terminals-covered': Word<'yes' | 'no'>;
    readonly 'test-voltage': Quantity;
    readonly 'tested': Quantity;
    readonly 'text': Text;
    readonly 'thickness': Quantity;
    readonly 'thread': Word<'npt' | 'nps' | 'bspp' | 'bspt' | 'none'>;
    readonly 'tightness': Word<'tight' | 'loose' | 'not-tried'>;
    readonly 'tip-gap': Quantity;
    readonly 'tip-play': Quantity;
    readonly 'told-how': Text;
    readonly 'told-on': DateValue;
    readonly 'told-to': Text;
    readonly 'tonnage-form': Word<'ship' | 'sailing' | 'sailing-keel-in-depth' | 'box'>;
    readonly 'tonnage-system': Word<'simplified' | 'formal'>;
    readonly 'tools': Text;
    readonly 'top-above-heeled-waterline': Quantity;
    readonly 'top-above-waterline': Quantity;
    readonly 'top-below-engine-inlet': Word<'yes' | 'no'>;
    readonly 'top-speed': Quantity;
    readonly 'torque': Quantity;
    readonly 'transom-height': Quantity;
    readonly 'transom-width': Quantity;
    readonly 'treatment': Word<'none' | 'type-i' | 'type-ii' | 'type-iii'>;
    readonly 'trial': Text;
    readonly 'trial-lead': Text;
    readonly 'trim': Word<'works' | 'slow' | 'stuck' | 'not-tried'>;
    readonly 'trip-current': Quantity;
    readonly 'trip-time': Quantity;
    readonly 'tube-fall': Quantity;
    readonly 'tunnel-anode-left': Quantity;
    readonly 'turns': Quantity;
    readonly 'turns-engaged': Quantity;
    readonly 'type': Word<'motor-yacht' | 'sailing-yacht' | 'catamaran' | 'trimaran' | 'steel-vessel' | 'aluminum-workboat' | 'wooden-classic' | 'houseboat' | 'rigid-inflatable' | 'gasoline-cruiser'>;
    readonly 'underwriter': Text;
    readonly 'unit': ComponentRef;
    readonly 'unmarked-parts': ComponentRef;
    readonly 'urgency': Word<'at-once' | 'before-launch' | 'before-departure' | 'before-use' | 'before-completion' | 'within-days' | 'next-haul-out' | 'in-upkeep' | 'keep-watch' | 'note-only'>;
    readonly 'urgent-letter-limits': Text;
    readonly 'urgent-share': Quantity;
    readonly 'usable-lead': Quantity;
    readonly 'usable-lithium': Quantity;
    readonly 'used-on': Word<'inland' | 'coastal' | 'offshore'>;
    readonly 'value-lead': Text;
    readonly 'valves': Text;
    readonly 'vapor-tight': Word<'yes' | 'no'>;
    readonly 'vent-at-bottom': Word<'yes' | 'no'>;
    readonly 'vent-bore': Quantity;
    readonly 'vent-dips': Word<'yes' | 'no'>;
    readonly 'vent-outlet-above-waterline': Quantity;
    readonly 'vent-outlet-below-floor': Word<'yes' | 'no'>;
    readonly 'vent-shared': Word<'yes' | 'no'>;
    readonly 'vent-works': Word<'yes' | 'no'>;
    readonly 'vented': Word<'yes' | 'no'>;
    readonly 'vibration': Word<'none' | 'slight' | 'heavy'>;
    readonly 'voltage': Quantity;
    readonly 'volume': Quantity;
    readonly 'warmed-to': Quantity;
    readonly 'water': Word<'salt' | 'brackish' | 'fresh'>;
    readonly 'water-found': Word<'yes' | 'no'>;
    readonly 'water-in-cylinders': Word<'yes' | 'no'>;
    readonly 'water-inside': Word<'yes' | 'no'>;
    readonly 'water-on-top': Word<'yes' | 'no'>;
    readonly 'water-rising': Word<'yes' | 'no'>;
    readonly 'water-temperature': Quantity;
    readonly 'waters': Text;
    readonly 'watertight': Word<'yes' | 'no'>;
    readonly 'way': Word<'supply' | 'exhaust'>;
    readonly 'wear': Word<'foam' | 'inflatable'>;
    readonly 'wear-ring-gap': Quantity;
    readonly 'weather': Text;
    readonly 'website': Text;
    readonly 'weeps': Word<'yes' | 'no'>;
    readonly 'weight': Quantity;
    readonly 'weld': Word<'sound' | 'wasted' | 'cracked' | 'not-seen'>;
    readonly 'wet-core': Word<'yes' | 'no'>;
    readonly 'wet-pad': Word<'yes' | 'no'>;
    readonly 'wet-place': Word<'yes' | 'no'>;
    readonly 'wetted': Word<'yes' | 'no'>;
    readonly 'width': Quantity;
    readonly 'wind': Text;
    readonly 'wire': ComponentRef;
    readonly 'wire-rigging-life': Quantity;
    readonly 'within-reach': Word<'yes' | 'no'>;
    readonly 'without-prejudice': Text;
    readonly 'work-list-limits': Text;
    readonly 'works': Word<'yes' | 'no' | 'not-tried'> | Word<'free' | 'stiff' | 'seized' | 'not-tried'>;
    readonly 'works-by': Word<'mechanical' | 'hydraulic'>;
    readonly 'worn-side': Word<'even' | 'port' | 'starboard' | 'top' | 'bottom'>;
    readonly 'zinc': Quantity;
}
