import { Link } from 'wouter'

/** What a tray is, while no spring is in the library. */
export const EmptyTray = ({ enter }: { readonly enter: () => void }) => (
  <div className="notice">
    <p>
      No spring is in the library yet. A tray is what lies in your drawer, each spring with its number, its sizes and
      how many there are; a supplier’s list stands beside it as a tray of its own. Once they are here, Lignebook can say
      which of them fit a caliber.
    </p>
    <p className="actions">
      <button type="button" className="plain-button chief" onClick={enter}>
        Enter a spring
      </button>
      <Link href="/springs/import" className="plain-button">
        Bring in a list
      </Link>
    </p>
  </div>
)
