import { hrefTo } from '../../shell/route.ts';
import { shopWords } from '../words.ts';
import { sourceWords as words } from './words.ts';

const Sources = () => (
  <main class="page shop">
    <a href={hrefTo('shop')}>{shopWords.back}</a>
    <h1>{words.title}</h1>
    <p>{words.lead}</p>
    {words.list.map(({ what, from }) => (
      <section key={what}>
        <h2>{what}</h2>
        <p>{from}</p>
      </section>
    ))}
    <p>
      <a class="act" href="licences.txt" target="_blank" rel="noopener">
        {words.licences}
      </a>
    </p>
  </main>
);

export default Sources;
