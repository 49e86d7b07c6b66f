/** The language server on Node, over whatever the client offers (stdio, IPC, socket). */
import { startLanguageServer } from 'langium/lsp';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { createGarboardLspServices } from '../editor/services.js';
import { nodePhotoSource } from '../host/node-photos.js';
import { nodeShelf } from '../host/shelf.js';
import { servePapers } from './papers.js';
import { serveRequests, withoutByteOrderMark } from './features.js';

const connection = createConnection(ProposedFeatures.all);
// A fault of one request must not take the surveyor's problems away: it is told in the output, and the server goes on.
process.on('unhandledRejection', reason => connection.console.error(`Garboard: ${reason instanceof Error ? reason.stack ?? reason.message : String(reason)}`));
const services = createGarboardLspServices({ connection, fileSystemProvider: () => withoutByteOrderMark(NodeFileSystem.fileSystemProvider()) });
const [photos, shelf] = [nodePhotoSource(), nodeShelf()];
serveRequests(connection, services, photos, shelf);
servePapers(connection, services, photos, shelf);
startLanguageServer(services.shared);
