import { Component, type ReactNode } from 'react'

interface Props {
  /** What the page is asked for; another place is a new start. */
  readonly place: string
  readonly children: ReactNode
}
interface State {
  readonly failed: boolean
}

/** Holds a page that fails, so that the rest of the frame stays and nothing typed in the library is lost. */
export class PageBoundary extends Component<Props, State> {
  override state: State = { failed: false }

  static getDerivedStateFromError(): State {
    return { failed: true }
  }

  override componentDidUpdate(before: Props): void {
    if (this.state.failed && before.place !== this.props.place) this.setState({ failed: false })
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children
    return (
      <div className="notice" role="alert">
        <p>This page could not be shown. What is saved in the library is as it was; drafts are kept.</p>
        <p className="actions">
          <button type="button" className="plain-button chief" onClick={() => this.setState({ failed: false })}>
            Show it again
          </button>
        </p>
      </div>
    )
  }
}
