import { Component, type ReactNode } from 'react';

type BrokenProps = { readonly children: ReactNode; readonly says: string; readonly again: string };

/** Where a page breaks or a part of it cannot be fetched: it says so, and offers to load again. Nothing kept is lost. */
export class Broken extends Component<BrokenProps, { readonly isBroken: boolean }> {
  override state = { isBroken: false };

  static getDerivedStateFromError() {
    return { isBroken: true };
  }

  override render() {
    const { children, says, again } = this.props;
    if (!this.state.isBroken) return children;
    return (
      <main className="page">
        <p className="notice" role="alert">
          {says}
        </p>
        <button type="button" className="button button-first" onClick={() => window.location.reload()}>
          {again}
        </button>
      </main>
    );
  }
}
