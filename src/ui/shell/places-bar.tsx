import { PlaceMark } from '../drawings/place-marks.tsx';
import { hrefTo } from './route.ts';
import { shellWords } from './words.ts';

const PLACES = ['bench', 'boxes', 'woods', 'findings', 'shop'] as const;

/** The five places, a word and a small drawing each. */
export const PlacesBar = ({ place }: { place: string }) => (
  <nav class="places" aria-label={shellWords.placesLabel}>
    {PLACES.map((name) => (
      <a key={name} href={hrefTo(name)} aria-current={name === place ? 'page' : undefined}>
        <PlaceMark place={name} />
        {shellWords.places[name]}
      </a>
    ))}
  </nav>
);
