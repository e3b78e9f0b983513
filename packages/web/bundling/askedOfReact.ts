import type { Plugin } from 'vite';

const HEADLESS = /node_modules.downshift/;
const COPY = '_extends({}, React)';

/**
 * The headless library copies all that is called `React` in order to ask whether there is a `useId`, which keeps every
 * export of it on the start page; asked for by name, the rest that nobody needs falls out of the bundle.
 */
export function askedOfReact(): Plugin {
  return {
    name: 'evenfall-asked-of-react',
    apply: 'build',
    transform(code, id) {
      if (!HEADLESS.test(id) || !code.includes(COPY)) return undefined;
      return { code: code.replaceAll(COPY, '{ useId: React.useId }'), map: null };
    },
  };
}
