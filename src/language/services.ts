/**
 * The language's services. Names are resolved by the record, not by Langium's linker: kinds, properties, words,
 * materials, ids and references inside prose follow one set of rules (see src/record), so linking, scoping and
 * reference indexing are switched off here and cost nothing.
 */
import {
    createDefaultCoreModule, createDefaultSharedCoreModule, DocumentState, inject,
    type DefaultSharedCoreModuleContext, type LangiumCoreServices, type LangiumDocument, type LangiumSharedCoreServices,
    type Linker, type Module, type PartialLangiumCoreServices, type ReferenceDescriptionProvider, type ScopeComputation,
    type ValueConverter, type LocalSymbols, MultiMap, type AstNodeDescription, type AstNode,
} from 'langium';
import { GarboardGeneratedModule, GarboardGeneratedSharedModule } from './generated/module.js';
import { GarboardLexer } from './lexer.js';
import { GarboardParserErrorMessageProvider } from './parser-messages.js';

const noSymbols: LocalSymbols = {
    has: () => false,
    getStream: () => new MultiMap<AstNode, AstNodeDescription>().values(),
} as unknown as LocalSymbols; // Only the linker reads it, and there is nothing to link.

const noLinker: Linker = {
    link: (document: LangiumDocument) => { document.state = DocumentState.Linked; return Promise.resolve(); },
    unlink: () => undefined,
    getCandidate: () => { throw new Error('Garboard resolves names in the record.'); },
    linkContent: () => undefined,
    buildReference: () => { throw new Error('Garboard resolves names in the record.'); },
} as unknown as Linker;

const noScopes: ScopeComputation = {
    collectExportedSymbols: () => Promise.resolve([]),
    collectLocalSymbols: () => Promise.resolve(noSymbols),
} as unknown as ScopeComputation;

const noReferences: ReferenceDescriptionProvider = { createDescriptions: () => Promise.resolve([]) };

/** Tokens are kept as written; the record interprets them. */
const asWritten: ValueConverter = { convert: input => input };

export const languageModule: Module<LangiumCoreServices, PartialLangiumCoreServices> = {
    parser: {
        Lexer: services => new GarboardLexer(services),
        ParserConfig: () => ({ maxLookahead: 2 }),
        ValueConverter: () => asWritten,
        ParserErrorMessageProvider: () => new GarboardParserErrorMessageProvider(),
    },
    references: {
        Linker: () => noLinker,
        ScopeComputation: () => noScopes,
    },
    workspace: {
        ReferenceDescriptionProvider: () => noReferences,
    },
};

export interface GarboardCoreServices {
    readonly shared: LangiumSharedCoreServices;
    readonly language: LangiumCoreServices;
}

/** Services without an editor: for the command line, the generator and tests. */
export function createGarboardServices(context: DefaultSharedCoreModuleContext): GarboardCoreServices {
    const shared = inject(createDefaultSharedCoreModule(context), GarboardGeneratedSharedModule);
    const language = inject(createDefaultCoreModule({ shared }), GarboardGeneratedModule, languageModule);
    shared.ServiceRegistry.register(language);
    return { shared, language };
}
