/**
 * What a surveyor is told when a token stands where it cannot. The grammar lets nearly everything be half-typed, so
 * these are rare: a stray text, figure or sign.
 */
import type { IParserErrorMessageProvider, IToken, TokenType } from 'chevrotain';

function shown(token: IToken | undefined): string {
    if (!token || token.image === '') {
        return 'The file ends here, which';
    }
    const image = token.image.length > 40 ? `${token.image.slice(0, 37)}…` : token.image;
    switch (token.tokenType.name) {
        case 'TEXT': return `The text ${image}`;
        case 'FIGURE': return `The figure ${image}`;
        case 'PROPERTY': return `The property ${image}`;
        default: return `“${image}”`;
    }
}

/** What each token is called to a surveyor. */
function called(type: TokenType): string {
    switch (type.name) {
        case 'ID': return 'a name';
        case 'TEXT': return 'text in quotes';
        case 'FIGURE': return 'a figure';
        case 'PROPERTY': return 'a property';
        case 'EOF': return 'the end of the file';
        default: return type.name;
    }
}

const advice = 'A fact is written name: value inside the braces of its component; a statement begins on a line of its own.';

export class GarboardParserErrorMessageProvider implements IParserErrorMessageProvider {
    buildMismatchTokenMessage({ expected, actual }: { expected: TokenType; actual: IToken }): string {
        return `${shown(actual)} stands where ${called(expected)} should. ${advice}`;
    }

    buildNotAllInputParsedMessage({ firstRedundant }: { firstRedundant: IToken }): string {
        return `${shown(firstRedundant)} does not belong here. ${advice}`;
    }

    buildNoViableAltMessage({ actual }: { actual: IToken[] }): string {
        return `${shown(actual[0])} does not belong here. ${advice}`;
    }

    buildEarlyExitMessage({ actual }: { actual: IToken[] }): string {
        return `Something is missing before ${shown(actual[0]).toLowerCase()}. ${advice}`;
    }
}
