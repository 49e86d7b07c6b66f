/** Documents that are parsed again only where they changed. */
import { DefaultLangiumDocumentFactory, type AstNode, type Cancellation, type LangiumDocument, type ParseResult, type LangiumSharedCoreServices } from 'langium';
import { isSurveyFile, type SurveyFile } from './generated/ast.js';
import { reparse } from './incremental.js';

export class SurveyDocumentFactory extends DefaultLangiumDocumentFactory {
    private pending: { readonly uri: string; readonly result: ParseResult<SurveyFile> } | undefined;

    constructor(services: LangiumSharedCoreServices) {
        super(services);
    }

    override async update<T extends AstNode = AstNode>(document: LangiumDocument<T>, token: Cancellation.CancellationToken): Promise<LangiumDocument<T>> {
        const { value } = document.parseResult;
        if (isSurveyFile(value) && value.$cstNode) {
            // Set before the base class parses, taken up by parseAsync below.
            this.pending = { uri: document.uri.toString(), result: document.parseResult as unknown as ParseResult<SurveyFile> };
        }
        try {
            return await super.update(document, token);
        } finally {
            this.pending = undefined;
        }
    }

    /** A file that has gone, or cannot be read, is empty: what it held is missed where it is used. */
    protected override async getUpdatedText(...args: Parameters<DefaultLangiumDocumentFactory['getUpdatedText']>): Promise<string> {
        try {
            return await super.getUpdatedText(...args);
        } catch {
            return '';
        }
    }

    protected override parseAsync<T extends AstNode>(uri: LangiumDocument['uri'], text: string, token: Cancellation.CancellationToken): Promise<ParseResult<T>> {
        const { pending } = this;
        if (pending && pending.uri === uri.toString()) {
            this.pending = undefined;
            const services = this.serviceRegistry.getServices(uri);
            const result = reparse(pending.result, text, services.parser.LangiumParser, services.parser.Lexer);
            if (result) {
                return Promise.resolve(result as unknown as ParseResult<T>);
            }
        }
        return super.parseAsync(uri, text, token);
    }
}
