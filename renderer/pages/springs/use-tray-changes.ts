import type { StockSpring } from '../../../core/springs/stock-spring.ts'
import { useChange } from '../../api/hooks.ts'
import { useBookOut } from '../../api/use-book-out.ts'
import { failureText } from '../../components/failure-text.ts'
import { say } from '../../components/say.ts'
import type { StoredSpring } from './spring-columns.ts'

/** What is done to a spring of the tray, each step said and open to be taken back. What is asked in a form answers why it was refused, or null. */
export const useTrayChanges = (done: (inHand: number | null) => void) => {
  const saving = useChange('spring.save')
  const removing = useChange('spring.remove')
  const booking = useBookOut()

  const save = async (id: number | null, spring: StockSpring): Promise<string | null> => {
    try {
      const saved = await saving.mutateAsync({ id, spring })
      say(`${id === null ? 'Entered' : 'Saved'} ${spring.supplierRef}. Ctrl Z takes it back.`)
      done(saved.id)
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  const bookOut = async ({ id, supplierRef }: StoredSpring, count: number, reason: string): Promise<string | null> => {
    try {
      const { left } = await booking.mutateAsync({ id, count, reason })
      say(`Booked out ${count} × ${supplierRef}; ${left} left. Ctrl Z takes it back.`)
      done(id)
      return null
    } catch (error) {
      return failureText(error)
    }
  }
  /** The spring beside it is then in hand. */
  const remove = ({ id, supplierRef }: StoredSpring, beside: number | null): void =>
    removing.mutate(
      { id },
      {
        onSuccess: () => {
          say(`Removed ${supplierRef}. Ctrl Z brings it back.`)
          done(beside)
        },
        onError: (error) => say(failureText(error)),
      },
    )
  return { save, bookOut, remove }
}
