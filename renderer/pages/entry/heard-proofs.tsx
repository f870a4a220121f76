import { useEffect, useState } from 'react'
import type { ProofReport } from '../../../core/wording/proof-report.ts'
import { proofTitle } from '../../../core/wording/proof-title.ts'
import { proofSummary } from '../../components/proof-list.tsx'
import { shownAs } from '../../components/shown-as.ts'

const breathMs = 1200

/** How the proofs stand, said after a breath, so that a reader of the page hears that and not every key stroke. */
export const HeardProofs = ({ reports }: { readonly reports: readonly ProofReport[] }) => {
  const [heard, setHeard] = useState('')
  useEffect(() => {
    const disagreeing = reports
      .filter((report) => shownAs(report) === 'disagrees')
      .map(({ proof }) => proofTitle(proof))
    const text = disagreeing.length > 0 ? `Disagrees: ${disagreeing.join('; ')}.` : `${proofSummary(reports)}.`
    const timer = setTimeout(() => setHeard(text), breathMs)
    return () => clearTimeout(timer)
  }, [reports])
  return (
    <p className="out-of-sight" role="status">
      {heard}
    </p>
  )
}
