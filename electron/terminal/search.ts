import { wordSearchReason } from '../../core/wording/search-reason.ts'
import { type Command, libraryOption, printJson, UnusableInput } from './command.ts'
import { table } from './table.ts'

/** As the call takes them. */
const mostWords = 200

export const search: Command = {
  usage: 'search [--library FILE.sqlite] WORDS',
  does: 'Finds calibers as the search box does; status 1 where nothing is found.',
  options: libraryOption,
  run: async (input) => {
    const words = input.words.join(' ')
    if (words.trim() === '')
      throw new UnusableInput('Say what to search for: a designation, a maker, a size or a word.')
    if (words.length > mostWords) throw new UnusableInput(`Search for ${mostWords} characters at most.`)
    const { withLibrary } = await import('./with-library.ts')
    const { hits } = await withLibrary(input, { create: false }, (call) => call('calibers.search', { words }))
    const calibers = hits.map(({ maker, designation, why }) => ({ maker, designation, why: wordSearchReason(why) }))
    if (input.options.json) printJson(input.io, { calibers })
    else if (calibers.length === 0) input.io.out(`Nothing in the library answers to '${words}'.\n`)
    else input.io.out(`${table(calibers.map(({ maker, designation, why }) => [maker, designation, why]))}\n`)
    return calibers.length > 0 ? 0 : 1
  },
}
