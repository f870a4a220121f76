import type { PlayVerdict } from '../../../core/bench/judge-play.ts'
import { playVerdictWords } from '../../../core/wording/play-sentence.ts'

interface ToldVerdictProps {
  readonly verdict: PlayVerdict
  readonly measured: string
  readonly says: string
}

/** A verdict with its mark and word, what was measured, and what it means. */
export const ToldVerdict = ({ verdict, measured, says }: ToldVerdictProps) => {
  const { mark, word } = playVerdictWords[verdict]
  return (
    <>
      <p className={`play-verdict verdict-${verdict}`}>
        <span aria-hidden="true">{mark}</span> <strong>{word}</strong> <span className="play-measured">{measured}</span>
      </p>
      <p className="play-says">{says}</p>
    </>
  )
}
