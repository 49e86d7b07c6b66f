/** Garboard's editor features, each in a file of its own. */
import type { Module } from 'langium';
import type { PartialLangiumServices } from 'langium/lsp';
import { SurveyCodeActionProvider } from './actions.js';
import type { GarboardServices } from './services.js';

export const featureModule: Module<GarboardServices, PartialLangiumServices> = {
    lsp: {
        CodeActionProvider: services => new SurveyCodeActionProvider(services),
    },
};
