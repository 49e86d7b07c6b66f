/** Amounts that a sentence names as the value of the vessel surveyed. */
import { amountsInText, type AmountInText } from '../../trade/number-words.js';

/** What names the value, up to the amount: "the market value of the vessel is". */
const naming = /(?:\b(?:(?:[Ff]air\s+)?[Mm]arket\s+value|[Oo]pinion\s+of\s+(?:market\s+)?value|(?:[Ss]he|vessel)\s+(?:is|was)\s+valued)(?:\s+(?:of|for)\s+(?:the\s+vessel|her|[A-Z][\w'’-]+))?(?:\s+as\s+she\s+lies)?)\s*(?:,|:)?\s*(?:\b(?:is|was|being|at|of|as|to\s+be)\b\s*)*(?:about\s+|some\s+)?$/;

/** Words before it that make it another value than the one given. */
const another = /\b(?:replacement|insured|agreed|former|earlier|previous|asking|scrap|salvage|forced|liquidation|new|repaired|after\s+repairs?|weighted|comparable|sister)\b[^.;]*$/i;

/** The amounts of a text that are named as the value, each with where it stands. */
export function valueMentions(text: string): AmountInText[] {
    if (!/value/i.test(text)) {
        return [];
    }
    return amountsInText(text).filter(({ start, currencies, isInWords }) => {
        if (currencies === undefined && !isInWords) {
            return false;
        }
        const before = text.slice(Math.max(0, start - 160), start);
        const name = naming.exec(before);
        return name !== null && !another.test(before.slice(0, name.index + name[0].length));
    });
}
