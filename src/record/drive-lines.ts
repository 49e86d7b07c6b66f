/** Which gearbox and engine turn which propeller, as far as the record tells. */
import { isKind, ofKind, siOf, wordOf, type Component, type SurveyRecord } from './model.js';

export interface DriveLine {
    readonly propeller: Component<'propeller'>;
    /** Gearbox or drive leg between engine and propeller. */
    readonly reducer?: Component;
    readonly engine?: Component<'engine'>;
}

/** Engines that drive her: all but generators. */
export function drivingEngines(record: SurveyRecord): readonly Component<'engine'>[] {
    return ofKind(record, 'engine').filter(engine => !isKind(record, engine, 'generator'));
}

export function driveLines(record: SurveyRecord): DriveLine[] {
    const propellers = ofKind(record, 'propeller');
    const engines = drivingEngines(record);
    const reducers = (['gearbox', 'outdrive', 'saildrive', 'pod', 'outboard'] as const).flatMap(kind => [...ofKind(record, kind)] as Component[]);
    return propellers.map(propeller => {
        const reducer = partnerOf(propeller, propellers, reducers);
        const engine = (reducer && engines.find(e => e === reducer || serves(e, reducer))) ?? partnerOf(propeller, propellers, engines);
        return { propeller, ...(reducer ? { reducer } : {}), ...(engine ? { engine } : {}) };
    });
}

const serves = (a: Component, b: Component) => [[a, b], [b, a]].some(([from, to]) => {
    const value = from?.facts.get('serves')?.values[0];
    return value?.type === 'component' && value.id === to?.id;
});

/** Side of a part that has one. */
export function sideOf(part: Component): 'port' | 'starboard' | undefined {
    const side = wordOf(part, 'side');
    return side === 'port' || side === 'starboard' ? side : undefined;
}

/** The one candidate that belongs to a part: it serves it, or it alone lies on the same side, or there is but one of each. */
function partnerOf<C extends Component>(part: Component, likes: readonly Component[], candidates: readonly C[]): C | undefined {
    const serving = candidates.filter(candidate => serves(candidate, part));
    if (serving.length > 0) {
        return serving.length === 1 ? serving[0] : undefined;
    }
    const side = sideOf(part);
    const beside = side === undefined ? [] : candidates.filter(candidate => sideOf(candidate) === side);
    const [only] = candidates;
    const isForAll = only !== undefined && candidates.length === 1 && sideOf(only) === undefined && (likes.length === 1 || (siOf(only, 'quantity') ?? 1) >= likes.length);
    return beside.length === 1 ? beside[0] : isForAll ? only : undefined;
}

/** Pairs of components of opposite sides, port first. */
export function twinsOf<C extends Component>(components: readonly C[]): (readonly [C, C])[] {
    const port = components.filter(component => sideOf(component) === 'port');
    const starboard = components.filter(component => sideOf(component) === 'starboard');
    const [p, s] = [port[0], starboard[0]];
    return port.length === 1 && starboard.length === 1 && p && s ? [[p, s]] : [];
}
