// The module that the extension host loads: it registers the tests and exports run().
import './suite.ts';
import './papers.ts';

export { run } from './harness.ts';
