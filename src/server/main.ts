/** The language server on Node, over whatever the client offers (stdio, IPC, socket). */
import { startLanguageServer } from 'langium/lsp';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { createGarboardLspServices } from '../editor/services.js';
import { nodePhotoSource } from './node-photos.js';
import { serveRequests, withoutByteOrderMark } from './features.js';

const connection = createConnection(ProposedFeatures.all);
const services = createGarboardLspServices({ connection, fileSystemProvider: () => withoutByteOrderMark(NodeFileSystem.fileSystemProvider()) });
serveRequests(connection, services, nodePhotoSource());
startLanguageServer(services.shared);
