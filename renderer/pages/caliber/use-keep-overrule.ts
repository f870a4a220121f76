import { useCallback } from 'react'
import { withOverrule } from '../../../core/record/with-overrule.ts'
import { wordFailure } from '../../../core/wording/failure.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { call, useChange } from '../../api/hooks.ts'
import { failureText } from '../../components/failure-text.ts'
import type { KeepOverrule } from '../../components/overrule.tsx'
import { say } from '../../components/say.ts'
import { draftMirror } from '../entry/draft-mirror.ts'

/** Overrules a finding of a caliber as it stands in the library, as one step that undo takes back. */
export const useKeepOverrule = (id: number): KeepOverrule => {
  const { mutateAsync: save } = useChange('caliber.save')
  return useCallback(
    async (proof, overrule) => {
      try {
        const [{ entry }, { draft }] = await Promise.all([
          call('caliber.read', { id }),
          call('draft.read', { caliberId: id }),
        ])
        // The draft would be let go by the saving, or would undo it unseen when it is saved itself.
        if (draft !== null || draftMirror.read(id) !== null)
          return wordFailure({ code: 'draft-not-saved', details: { name: `${entry.maker} ${entry.designation}` } })
        await save({ caliberId: id, entry: withOverrule(entry, proof, overrule) })
        say(`${overrule === null ? 'Took the overrule back' : 'Overruled'}: ${proofTitle(proof)}. Ctrl Z undoes it.`)
        return null
      } catch (error) {
        return failureText(error)
      }
    },
    [id, save],
  )
}
