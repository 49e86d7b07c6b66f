/** The language server's services: Langium's, with Garboard's own workspace rules and features. */
import {
    DefaultDocumentBuilder, DefaultIndexManager, DefaultServiceRegistry, inject,
    type FileSystemProvider, type LangiumDocument, type LangiumSharedCoreServices, type Module, URI,
} from 'langium';
import {
    createDefaultModule, createDefaultSharedModule, DefaultDocumentUpdateHandler, type DefaultSharedModuleContext, type LangiumServices,
    type LangiumSharedServices, type PartialLangiumServices,
} from 'langium/lsp';
import type { FileSystemWatcher, TextDocumentChangeEvent } from 'vscode-languageserver';
import type { TextDocument } from 'vscode-languageserver-textdocument';
import { GarboardGeneratedModule, GarboardGeneratedSharedModule } from '../language/generated/module.js';
import { SurveyDocumentFactory } from '../language/document-factory.js';
import { languageModule } from '../language/services.js';
import { SurveyAnalyser } from './analyser.js';
import { SurveyDocumentValidator } from './diagnostics.js';
import { featureModule } from './features.js';

export interface GarboardAddedServices {
    readonly editor: { readonly Analyser: SurveyAnalyser };
}

export type GarboardServices = LangiumServices & GarboardAddedServices;

/** Only files of surveys that are open are judged: an archive of a thousand others costs nothing. */
class SurveyDocumentBuilder extends DefaultDocumentBuilder {
    private wanted: Set<string> | undefined;

    constructor(services: LangiumSharedCoreServices, private readonly analyser: () => SurveyAnalyser, private readonly open: () => readonly string[]) {
        super(services);
        this.onUpdate(() => { this.wanted = undefined; return Promise.resolve(); });
    }

    protected override shouldLink(): boolean {
        return true;
    }

    protected override shouldValidate(document: LangiumDocument): boolean {
        if (!super.shouldValidate(document)) {
            return false;
        }
        this.wanted ??= this.analyser().surveyFilesOf(this.open());
        return this.wanted.has(document.uri.toString());
    }
}

/**
 * There is one language, so every document is of it: also one that was never saved and has no extension, in the moment
 * between its closing and its being forgotten.
 */
class SurveyServiceRegistry extends DefaultServiceRegistry {
    override getServices(uri: URI): LangiumServices {
        const [only] = this.all;
        return only ? only as LangiumServices : super.getServices(uri) as LangiumServices; // Only language servers are registered here.
    }

    override hasServices(uri: URI): boolean {
        return uri.path.endsWith('.survey') || this.textDocuments?.get(uri)?.languageId === 'garboard';
    }
}

/** A file is affected by another of its survey, house files included. */
class SurveyIndexManager extends DefaultIndexManager {
    constructor(services: LangiumSharedCoreServices, private readonly analyser: () => SurveyAnalyser) {
        super(services);
    }

    override isAffected(document: LangiumDocument, changedUris: Set<string>): boolean {
        return this.analyser().dependsOn(document.uri.toString(), changedUris);
    }

    override updateContent(): Promise<void> {
        return Promise.resolve();
    }

    override updateReferences(): Promise<void> {
        return Promise.resolve();
    }
}

class SurveyUpdateHandler extends DefaultDocumentUpdateHandler {
    private readonly files: FileSystemProvider;

    constructor(services: LangiumSharedServices) {
        super(services);
        this.files = services.workspace.FileSystemProvider;
    }

    protected override getWatchers(): FileSystemWatcher[] {
        return [{ globPattern: '**/*.survey' }];
    }

    /** Text closed without saving is forgotten: the file on disk counts again, or none where it was never saved. */
    didCloseDocument(event: TextDocumentChangeEvent<TextDocument>): void {
        const uri = URI.parse(event.document.uri);
// Asked at once: an update that came after that of the next document opened would cut that one short.
        if (uri.scheme !== 'untitled' && this.files.existsSync(uri)) {
            this.fireDocumentUpdate([uri], []);
        } else {
            this.fireDocumentUpdate([], [uri]);
        }
    }
}

export function createGarboardLspServices(context: DefaultSharedModuleContext): { shared: LangiumSharedServices; language: GarboardServices } {
    let analyser: SurveyAnalyser | undefined;
    const theAnalyser = (): SurveyAnalyser => analyser ??= new SurveyAnalyser(() => shared.workspace.LangiumDocuments);
    const sharedModule: Module<LangiumSharedServices, object> = {
        ServiceRegistry: (services: LangiumSharedServices) => new SurveyServiceRegistry(services),
        lsp: {
            DocumentUpdateHandler: (services: LangiumSharedServices) => new SurveyUpdateHandler(services),
        },
        workspace: {
            DocumentBuilder: (services: LangiumSharedServices) => new SurveyDocumentBuilder(services, theAnalyser, () => services.workspace.TextDocuments.keys()),
            IndexManager: (services: LangiumSharedServices) => new SurveyIndexManager(services, theAnalyser),
            LangiumDocumentFactory: (services: LangiumSharedServices) => new SurveyDocumentFactory(services),
        },
    };
    const shared: LangiumSharedServices = inject(createDefaultSharedModule(context), GarboardGeneratedSharedModule, sharedModule);
    const added: Module<GarboardServices, PartialLangiumServices & GarboardAddedServices> = {
        validation: {
            DocumentValidator: () => new SurveyDocumentValidator(theAnalyser, uri => shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))),
        },
        editor: { Analyser: theAnalyser },
    };
    const language: GarboardServices = inject(createDefaultModule({ shared }), GarboardGeneratedModule, languageModule, added, featureModule);
    shared.ServiceRegistry.register(language);
    if (!context.connection) {
        shared.workspace.ConfigurationProvider.initialized({});
    }
    return { shared, language };
}

