import { Component, type ReactNode } from 'react'

interface Props {
  readonly children: ReactNode
}

/** A fault in one screen leaves the window, the other screens and the documents standing. */
export class KeepsStanding extends Component<Props, { readonly fault: string | null }> {
  override state = { fault: null }

  static getDerivedStateFromError(error: unknown): { readonly fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) }
  }

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children
    return (
      <div className="page" role="alert">
        <h1>This screen has a fault</h1>
        <p>Your design is as it was. Undo the last change or go to another screen; save the file to be sure.</p>
        <p className="quiet small">{this.state.fault}</p>
        <button type="button" className="button" onClick={() => this.setState({ fault: null })}>
          Try it again
        </button>
      </div>
    )
  }
}
