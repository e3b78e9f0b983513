import { type ReactNode, Suspense, useSyncExternalStore } from 'react';
import { useApp } from '../app/context.js';
import { later, pageOf } from '../app/later.js';

const pages = later(() => import('./gatePages.js'));
const SignInPage = pageOf(pages, (all) => all.SignInPage);
const OwnPhrasePage = pageOf(pages, (all) => all.OwnPhrasePage);

/** The app, for whoever is signed in or need not; else nothing of it, and the way in. */
export function Gate({ children }: { readonly children: ReactNode }) {
  const { signIn } = useApp();
  const standing = useSyncExternalStore(signIn.subscribe, signIn.get);
  if (standing.is === 'asking') return null;
  if (standing.is === 'open' || (standing.is === 'in' && standing.who.isOwnPhrase)) return children;
  return (
    <Suspense fallback={null}>
      {standing.is === 'out' ? (
        <SignInPage here={standing.here} isUntold={standing.isUntold === true} />
      ) : (
        <OwnPhrasePage who={standing.who} />
      )}
    </Suspense>
  );
}
