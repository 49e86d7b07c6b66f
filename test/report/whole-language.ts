/**
 * A survey with a text in every place of the language that takes one: each kind of component, each property of type
 * text, each title, caption, reason, label. It is made from the vocabulary, so that a new property is in it at once.
 */
import { catalogueSources } from '../../src/record/catalogue.js';
import { vocabularyOf } from '../../src/record/vocabulary.js';

export interface WholeSurvey {
    readonly text: string;
    /** Where each text stands, by the mark it begins with. */
    readonly places: ReadonlyMap<string, string>;
}

/** The language's escape of a text within quotes. */
const quoted = (text: string) => `"${text.replace(/[\\"{}]/g, sign => `\\${sign}`).replaceAll('\r', '').replaceAll('\n', '\\n').replaceAll('\t', '\\t')}"`;

/** Properties whose text is a path, a number or a color by its meaning, which has rules of its own. */
const ruled = new Set(['survey.photos', 'survey.follows', 'vessel.hull-number', 'firm.mark', 'firm.color']);

/** Makes the survey; `payload` gives the text of a place, which then stands behind its mark. */
export function wholeSurvey(payload: (place: string) => string): WholeSurvey {
    const { vocabulary } = vocabularyOf(catalogueSources());
    const places = new Map<string, string>();
    const text = (place: string): string => {
        const mark = `Q${places.size + 1}q`;
        places.set(mark, place);
        return quoted(`${mark}${payload(place)}`);
    };
    const facts = (kind: string, except: readonly string[] = []): string => [...vocabulary.kinds.get(kind)?.properties ?? []]
        .filter(([name, type]) => type.type === 'text' && !except.includes(name) && !ruled.has(`${kind}.${name}`))
        .map(([name]) => `    ${name}: ${text(`${kind}.${name}`)}\n`).join('');
    const photo = (place: string) => `    photo ${text(`${place} photo file`)} ${text(`${place} photo caption`)} { mark ring ${text(`${place} mark`)}: 40 %, 40 % }\n`;
    const components = [...vocabulary.kinds.values()].filter(kind => !kind.isForm && kind.id !== 'component');
    return {
        places,
        text: `
firm ${text('firm')} {\n${facts('firm')}}
person P1 ${text('person')} {\n${facts('person')}}
standard "House rules" ${text('standard')} {\n${facts('standard')}}
material house-metal ${text('material')} { class: copper-alloy\n${facts('material')}}
phrase house-phrase ${text('phrase')}
kind house-kind ${text('kind')} is component { takes house-fact: text "A fact of the firm's own" }
yardsticks ${text('yardsticks')} { hose-life: 8 years }
outline part-survey ${text('outline')} { sections: ${[...vocabulary.wordLists.get('section')?.words.keys() ?? []].join(', ')} }
wording ${text('wording')} {\n${facts('wording')}}

survey ${text('survey number')} part-survey {
    surveyor: P1  reviewer: P1  issued: 2026-01-30
    attended 2026-01-20 ashore ${text('attendance')}
    unseen ${text('unseen')}: ${text('unseen reason')}
    absent ${text('absent')}: ${text('absent reason')}
${facts('survey')}${photo('survey')}}

vessel ${text('vessel')} {
    type: sailing-yacht  hull-material: grp  length-overall: 40 ft  beam: 12 ft
${facts('vessel')}${photo('vessel')}    note ${text('vessel note')}
}

system all ${text('system')} {
${components.map((kind, index) => `    ${kind.id} C${index + 1} ${text(`component ${kind.id}`)} {\n${facts(kind.id)}    note ${text(`${kind.id} note`)}\n    }\n`).join('')}
    house-kind HK1 { house-fact: ${text('house-kind.house-fact')} metal: house-metal }
    through-hull TH1 ${text('component in a run')} { size: 1-1/2 in  below-waterline: 6 in  metal: bronze  side: port\n${photo('component')}    }
    hose H1 ${text('hose in a run')} { bore: 1-1/4 in }
    run R1 ${text('run')} {\n${facts('run')}    }: TH1 -> {\n${facts('joint')}    } H1 -> open
    contact TH1, HK1 {\n${facts('contact')}    }
    unseen ${text('unseen in a system')}: ${text('unseen in a system, reason')}
    reading M1 ${text('reading')} on TH1 {
        measures: moisture
${facts('reading')}        columns: ${text('column')}, ${text('second column')}
        row ${text('row')}: 11, 14
    }
    reading M2 ${text('gauging')} { measures: thickness  columns: original, reading, reading, remark  row ${text('row of gauging')}: 6 mm, 5 mm, 5.2 mm, ${text('cell')} }
    reading M3 ${text('trial')} { measures: trial  row ${text('run of the trial')}: 1000 rpm, 4 kn }
    finding F1 ${text('finding')} on TH1, H1 {
        answers: hose-and-spigot-differ  urgency: before-launch
        cites: "House rules" ${text('clause')}
${facts('finding')}${photo('finding')}        note ${text('finding note')}
    }
    finding F2 ${text('second finding')} { urgency: in-upkeep  recommend: phrase house-phrase }
    accept other-boat-left-in because ${text('acceptance')}
}

valuation ${text('valuation')} {
    effective: 2026-01-20  opinion: 21000 USD
${facts('valuation')}    comparable A ${text('comparable')} { sold: 22000 USD  sold-on: 2025-06  adjust ${text('adjustment')}: -500 USD  weight: 1\n${facts('comparable')}    }
}
`,
    };
}
