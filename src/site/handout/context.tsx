import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Handout } from '../../handout/index.js';
import type { Links } from '../../write/index.js';
import { relativeLink } from '../page.js';
import { handoutLinks } from './links.js';

/** What every part of a handout's page may ask for. It holds no Book: what a handout does not hold, no page can show. */
interface HandoutContext {
  readonly handout: Handout;
  /** Path of the page in the handout's folder. */
  readonly path: string;
}

const Context = createContext<HandoutContext | undefined>(undefined);

export const HandoutProvider = Context.Provider;

export function useHandout(): Handout {
  return useContextOrThrow().handout;
}

/** Turns a path in the handout's folder into a link that works from this page. */
export function useHandoutLink(): (to: string) => string {
  const { path } = useContextOrThrow();
  return (to) => relativeLink(path, to);
}

/** Where places in cells lead from this page. */
export function usePlaceLinks(): Links {
  const { handout, path } = useContextOrThrow();
  return handoutLinks(handout, path);
}

function useContextOrThrow(): HandoutContext {
  const context = useContext(Context);
  if (!context) throw new Error('a part of a handout was rendered outside a handout');
  return context;
}
