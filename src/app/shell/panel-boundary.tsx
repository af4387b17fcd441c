import { Component, type ReactNode } from 'react';
import styles from './panel-boundary.module.css';

interface PanelBoundaryProps {
  /** The panel as the subject of a sentence: "The drawing". */
  readonly name: string;
  readonly children: ReactNode;
}

/** A fault of one panel stays in it; the others go on. */
export class PanelBoundary extends Component<PanelBoundaryProps, { readonly failed: string | null }> {
  override state: { readonly failed: string | null } = { failed: null };

  static getDerivedStateFromError(error: unknown) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.failed === null) return this.props.children;
    return (
      <div className={styles.failed} role="alert">
        <p>
          {this.props.name} cannot be shown: a fault in this program ({this.state.failed}). Your joint is not
          touched by it.
        </p>
        <button type="button" className="go" onClick={() => this.setState({ failed: null })}>
          Try again
        </button>
      </div>
    );
  }
}
