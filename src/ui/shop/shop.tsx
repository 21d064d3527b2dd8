import '../parts/rows.css';
import './shop.css';
import type { ComponentType } from 'preact';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { shopWords as words } from './words.ts';

type Page = ComponentType<{ rest: readonly string[] }>;

/** The pages of Shop, each loaded when it is opened. */
const PAGES: Readonly<Record<keyof typeof words.pages, () => Promise<{ readonly default: Page }>>> = {
  rig: () => import('./rig/rig.tsx'),
  procedures: () => import('./procedures/procedures.tsx'),
  reading: () => import('./display/display.tsx'),
  backups: () => import('./backups/backups.tsx'),
  safety: () => import('./safety/safety.tsx'),
  sources: () => import('./sources/sources.tsx'),
};
type PageName = keyof typeof PAGES;

const isPage = (name: string | undefined): name is PageName => name !== undefined && name in PAGES;

const Shop = ({ rest }: { rest: readonly string[] }) => {
  const [name, ...further] = rest;
  if (isPage(name)) return <Lazy key={name} load={PAGES[name]} props={{ rest: further }} />;
  return (
    <main class="page shop">
      <h1>{words.title}</h1>
      <ul class="rows">
        {(Object.keys(PAGES) as PageName[]).map((page) => (
          <li key={page}>
            <a href={hrefTo('shop', page)}>
              <b>{words.pages[page].name}</b>
              <span class="soft">{words.pages[page].about}</span>
            </a>
          </li>
        ))}
      </ul>
    </main>
  );
};

export default Shop;
