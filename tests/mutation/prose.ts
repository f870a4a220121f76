import type { NodePath } from '@stryker-mutator/api/ignore'
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin'

/** The little of a syntax tree that is looked at. */
interface Place {
  readonly node: {
    readonly type: string
    readonly key?: { readonly name?: string }
    readonly callee?: { readonly name?: string }
  }
  readonly parentPath: Place | null
}

/** What a definition says for people alone; no outcome rests on a word of it. Its id and its reasons are not among these. */
const proseKeys: readonly string[] = ['title', 'meaning', 'source', 'validity', 'tolerance']

/** Leaves the prose of a proof's definition unmutated: the sentences are read, never run. Every other text is mutated. */
const shouldIgnore = (path: NodePath): string | undefined => {
  const { node, parentPath } = path as Place
  if (node.type !== 'ObjectProperty' || !proseKeys.includes(node.key?.name ?? '')) return undefined
  return parentPath?.parentPath?.node.callee?.name === 'defineProof' ? 'prose of a definition' : undefined
}

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'prose', { shouldIgnore })]
