/** Garboard's editor features, each in a file of its own. */
import type { Module } from 'langium';
import type { PartialLangiumServices } from 'langium/lsp';
import { SurveyCodeActionProvider } from './actions.js';
import { SurveyCompletionProvider } from './completion.js';
import { SurveyFoldingRangeProvider } from './folding.js';
import { SurveyFormatter } from './formatter.js';
import { SurveyHoverProvider } from './hover.js';
import { SurveyInlayHintProvider } from './inlay-hints.js';
import { SurveyCodeLensProvider } from './lenses.js';
import { SurveyDocumentLinkProvider } from './links.js';
import { SurveyDefinitionProvider, SurveyDocumentHighlightProvider, SurveyReferencesProvider, SurveyRenameProvider } from './navigation.js';
import { SurveySemanticTokenProvider } from './semantic-tokens.js';
import type { GarboardServices } from './services.js';
import { SurveyDocumentSymbolProvider } from './symbols.js';

export const featureModule: Module<GarboardServices, PartialLangiumServices> = {
    lsp: {
        CodeActionProvider: services => new SurveyCodeActionProvider(services),
        CodeLensProvider: services => new SurveyCodeLensProvider(services),
        CompletionProvider: services => new SurveyCompletionProvider(services),
        DefinitionProvider: services => new SurveyDefinitionProvider(services),
        DocumentHighlightProvider: services => new SurveyDocumentHighlightProvider(services),
        DocumentLinkProvider: services => new SurveyDocumentLinkProvider(services),
        DocumentSymbolProvider: services => new SurveyDocumentSymbolProvider(services),
        FoldingRangeProvider: services => new SurveyFoldingRangeProvider(services),
        Formatter: services => new SurveyFormatter(() => services.parser.Lexer),
        HoverProvider: services => new SurveyHoverProvider(services),
        InlayHintProvider: services => new SurveyInlayHintProvider(services),
        ReferencesProvider: services => new SurveyReferencesProvider(services),
        RenameProvider: services => new SurveyRenameProvider(services),
        SemanticTokenProvider: services => new SurveySemanticTokenProvider(services),
    },
};
