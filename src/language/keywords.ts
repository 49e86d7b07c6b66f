/** The keywords of the grammar, from the generated data. */
import { GarboardGrammar } from './generated/grammar.js';
import { AstUtils, GrammarAST } from 'langium';

export const keywords: readonly string[] = [...new Set(
    AstUtils.streamAllContents(GarboardGrammar()).filter(GrammarAST.isKeyword).map(keyword => keyword.value)
)].sort();
